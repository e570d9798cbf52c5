/** Where the details of Stillroom's own failures go. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.faults;

/** The core as a module for browsers. */
@org.jspecify.annotations.NullMarked
package org.stillroom.page;

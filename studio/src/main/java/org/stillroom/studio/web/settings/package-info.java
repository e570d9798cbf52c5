/** Settings of the studio, its backup and its history. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.settings;

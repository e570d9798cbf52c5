/** What the studio says, by language, and how it shows numbers. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.wording;

/** The day sheet of a worked plan: one page to work from, for a screen and for paper. It states figures and computes none. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.sheet;

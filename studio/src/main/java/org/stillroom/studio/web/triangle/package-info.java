/** The mixing triangle of a page: its drawing, its words and the numbers that a hand needs to move it. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.triangle;

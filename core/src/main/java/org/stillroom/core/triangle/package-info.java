/** The mixing triangle: where a liquid lies between water, spirit and sugar by mass, with lines of equal strength and sugar. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.triangle;

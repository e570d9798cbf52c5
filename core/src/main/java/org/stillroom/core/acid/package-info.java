/** Acids of the kitchen: equivalents, solutions by mass and by volume. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.acid;

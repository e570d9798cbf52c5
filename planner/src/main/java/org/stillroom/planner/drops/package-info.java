/** Whole drops: essences of several oils in which each is a whole number of drops. */
@org.jspecify.annotations.NullMarked
package org.stillroom.planner.drops;

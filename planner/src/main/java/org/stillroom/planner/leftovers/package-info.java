/** Leftovers: a liqueur that uses several extracts up together. */
@org.jspecify.annotations.NullMarked
package org.stillroom.planner.leftovers;

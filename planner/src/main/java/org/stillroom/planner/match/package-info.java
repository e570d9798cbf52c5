/** Matching: which oils of a shelf come nearest to one that is not there. */
@org.jspecify.annotations.NullMarked
package org.stillroom.planner.match;

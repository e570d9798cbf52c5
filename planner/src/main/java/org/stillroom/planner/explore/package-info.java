/** What if: a recipe planned again with something changed, as a table. */
@org.jspecify.annotations.NullMarked
package org.stillroom.planner.explore;

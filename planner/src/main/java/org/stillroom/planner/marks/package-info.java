/** Amounts as the maker's instruments show them, rounded together so that the result stays closest to the plan. */
@org.jspecify.annotations.NullMarked
package org.stillroom.planner.marks;

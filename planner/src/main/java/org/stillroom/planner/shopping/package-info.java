/** What to buy for a plan, in the packs that shops sell, and what it costs. */
@org.jspecify.annotations.NullMarked
package org.stillroom.planner.shopping;

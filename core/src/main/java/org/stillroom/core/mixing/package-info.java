/** What a recipe's liquid goes through while it is mixed, and how clear it is on the way. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.mixing;

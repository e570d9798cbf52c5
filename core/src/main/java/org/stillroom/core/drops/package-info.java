/** Drops: what one weighs where the maker's own dropper is not known. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.drops;

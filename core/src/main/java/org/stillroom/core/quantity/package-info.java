/** Physical quantities, one type each, and how people write them. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.quantity;

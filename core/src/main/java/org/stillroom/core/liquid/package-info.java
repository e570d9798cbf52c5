/** Any liquid as grams of each substance, and every figure that follows from them. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.liquid;

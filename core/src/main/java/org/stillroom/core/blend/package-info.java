/** Grams added together: contraction, warming, the order of mixing. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.blend;

/** Sugars in water: density, degrees Brix, restatement as invert or as sucrose, solubility. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.sugar;

/** Ethanol with water: density, strength on its bases, bringing spirits down. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.alcohol;

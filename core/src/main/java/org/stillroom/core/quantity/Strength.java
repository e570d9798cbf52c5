package org.stillroom.core.quantity;

/** How strong a liquid is, on one of the scales that labels and instruments use. */
public sealed interface Strength permits AlcoholByVolume, AlcoholByMass, Proof {}

package org.stillroom.core.quantity;

/** How much of a substance is in an ingredient: by mass of the whole, or per litre of it at 20 °C. */
public sealed interface Share permits MassFraction, MassConcentration {}

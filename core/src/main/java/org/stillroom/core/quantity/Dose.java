package org.stillroom.core.quantity;

/** An amount per litre of the finished liquid at 20 °C, such as 24 drops/L or 0.4 g/L. */
public record Dose(Amount perLitre) {}

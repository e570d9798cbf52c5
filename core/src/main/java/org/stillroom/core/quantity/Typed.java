package org.stillroom.core.quantity;

/**
 * A quantity together with the text a person typed for it; the text is what they get back.
 *
 * @param text as typed, never reformatted
 * @param value what it was understood as
 */
public record Typed<Q>(String text, Q value) {}

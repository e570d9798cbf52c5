package org.stillroom.core.quantity;

/** How much of an ingredient: by mass, by volume, or in drops. */
public sealed interface Amount permits Mass, Volume, Drops {}

package org.stillroom.core.recipe;

import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Typed;

/** How much of an ingredient a line asks for. */
public sealed interface LineAmount {
    /** Just this much. */
    record Fixed(Typed<Amount> amount) implements LineAmount {}

    /** So much per litre of finished liquid. */
    record PerLitre(Typed<Dose> dose) implements LineAmount {}

    /** As much as the target takes. */
    record Free() implements LineAmount {}

    /** All of what there is. */
    record All() implements LineAmount {}

    /** Up to the mark of a measured volume: the volume is read, not the amount. */
    record MakeUp() implements LineAmount {}
}

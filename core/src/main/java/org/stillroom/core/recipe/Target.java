package org.stillroom.core.recipe;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Bottles;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;

/**
 * What the finished liquid is to be; what is null is open.
 *
 * @param volume mL at 20 °C
 * @param bottles in place of a volume
 * @param strength % vol at 20 °C
 * @param sugar g/L at 20 °C on {@code sugarBasis}
 * @param sugarBasis what the sugar figure counts
 * @param acidity g/L at 20 °C as anhydrous citric acid
 */
public record Target(
        @Nullable Typed<Span> volume,
        @Nullable Typed<Bottles> bottles,
        @Nullable Typed<Span> strength,
        @Nullable Typed<Span> sugar,
        SugarBasis sugarBasis,
        @Nullable Typed<Span> acidity) {

    /** Nothing asked for: whatever the lines come to. */
    public static final Target OPEN = new Target(null, null, null, null, SugarBasis.AS_DISSOLVED, null);

    /** Returns the wanted volume in mL at 20 °C, from the bottles where those were named, or null when it is open. */
    public @Nullable Span millilitres() {
        if (bottles != null) {
            return Span.exactly(bottles.value().together().millilitres());
        }
        return volume == null ? null : volume.value();
    }
}

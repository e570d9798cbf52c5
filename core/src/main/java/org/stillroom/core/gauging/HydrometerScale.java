package org.stillroom.core.gauging;

import java.util.Locale;
import java.util.Optional;
import org.stillroom.core.quantity.VolumeBasis;

/** The scales of hydrometers as people write them. */
public final class HydrometerScale {
    private HydrometerScale() {}

    /**
     * Returns the scale that is meant, or empty where none is.
     *
     * @param written such as "SG", "Bx", "Plato", "Baumé", "% vol" or "proof"; empty is specific gravity
     * @param basis temperature that one of % vol is marked for
     */
    public static Optional<Shown> of(String written, VolumeBasis basis) {
        return Optional.ofNullable(
                switch (written.strip().toLowerCase(Locale.ROOT)) {
                    case "", "sg", "20/20", "sg 20/20" -> Shown.GRAVITY;
                    case "bx", "°bx", "brix", "°brix", "p", "°p", "plato", "°plato" -> Shown.SACCHAROMETER;
                    case "be", "bé", "°be", "°bé", "baume", "baumé" -> Shown.BAUME;
                    case "proof", "°proof" -> Shown.PROOF;
                    case "%", "% vol", "%vol", "% abv" ->
                        basis == VolumeBasis.AT_15C ? Shown.SPIRIT_15C : Shown.SPIRIT_20C;
                    default -> null;
                });
    }
}

package org.stillroom.studio.answer.desk;

import java.util.List;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.BlendSpirits.Found;

/** How a blend of spirits is told. */
final class Blended {
    /** Keys of its figures; the first two only where something was to be added. */
    static final List<String> FIGURES = List.of(
            "added_ml", "added_g", "final_volume_ml", "mass_g", "strength_vol_percent", "contraction_ml", "warming_c");

    private Blended() {}

    static Told told(String heading, VolumeBasis basis, Found found) {
        String millilitres = "mL at " + basis.label();
        Told told = new Told(heading);
        found.addedVolume().ifPresent(added -> told.put(new Name("added_ml", "to add", millilitres, 1), added));
        found.added().ifPresent(added -> told.put(new Name("added_g", "the same by weight", "g", 1), added));
        return told.put(new Name("final_volume_ml", "gives", millilitres, 1), found.volume())
                .put(new Name("mass_g", "mass", "g", 1), found.mass())
                .putStrength(
                        new Name("strength_vol_percent", "strength", "% vol at " + basis.label(), 2), found.strength())
                .putDifference(
                        new Name("contraction_ml", "contraction", millilitres, 1), found.contraction(), found.volume())
                .put(new Name("warming_c", "warms by", "°C, if no heat is lost", 1), found.warming());
    }
}

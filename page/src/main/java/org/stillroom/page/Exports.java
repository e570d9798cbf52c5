package org.stillroom.page;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.teavm.jso.JSExport;

/** What a page may ask of the core. */
public final class Exports {
    private Exports() {}

    /** Returns the volume of a mixture, mL at 20 °C, of its grams. */
    @JSExport
    public static double millilitres(double ethanolGrams, double waterGrams, double sucroseGrams) {
        Contents contents = Contents.of(Substance.ETHANOL, ethanolGrams)
                .with(Substance.WATER, waterGrams)
                .with(Substance.SUCROSE, sucroseGrams);
        return VolumeModel.atTwenty().millilitres(contents.toGrams());
    }

    /** The module has no program of its own; the compiler wants a place to begin. */
    public static void main(String[] args) {}
}

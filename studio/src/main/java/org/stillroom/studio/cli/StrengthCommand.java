package org.stillroom.studio.cli;

import static org.stillroom.core.liquid.Figure.DENSITY;
import static org.stillroom.core.liquid.Figure.PROOF_US;
import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.STRENGTH_BY_MASS;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.StrengthFromDensity.Weighed;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.MeasureStrength;
import org.stillroom.studio.usecase.MeasureStrength.Found;
import picocli.CommandLine.Option;

/** Finds the strength of a liquid from a density, a hydrometer, or the weight of a known volume. */
final class StrengthCommand extends DeskCommand {
    @Option(names = "--density", description = "measured, such as 948.05kg/m3 or \"SG 0.9498\"")
    private @Nullable String density;

    @Option(names = "--hydrometer", description = "what a spirit hydrometer shows, such as 80proof or 40%%")
    private @Nullable String hydrometer;

    @Option(
            names = "--reference",
            description = "temperature that the hydrometer is marked for: 20C, 15C or 60F (default: 20C; proof 60F)")
    private @Nullable String reference;

    @Option(names = "--mass", description = "weight of the liquid alone, such as 474g; needs --flask")
    private @Nullable String mass;

    @Option(names = "--flask", description = "volume that was weighed, such as 500ml")
    private @Nullable String flask;

    @Option(names = "--in-air", description = "the weight is as a scale shows it: put it right for the air")
    private boolean inAir;

    @Option(names = "--temperature", description = "of the liquid when measured, −20 to 40 °C")
    private @Nullable String temperature;

    @Option(names = "--sugar", defaultValue = "0g/L", description = "sucrose in it (default: ${DEFAULT-VALUE})")
    private String sugar = "";

    @Override
    protected Told tell(Workings workings) {
        Optional<MeasureStrength.Reading> reading = reading();
        Optional<Temperature> at = temperature(temperature);
        if (temperature == null) {
            object("--temperature", "the temperature of the liquid is missing.", "Give it, such as --temperature 20C.");
        }
        Optional<MassConcentration> sweetened = sugar(sugar);
        refuseIfAnyWrong();
        Found found = MeasureStrength.answer(
                new MeasureStrength.Asked(reading.orElseThrow(), at.orElseThrow(), sweetened.orElseThrow()), workings);
        return new Told("Strength, measured at "
                        + QuantityWords.plain(at.orElseThrow().celsius()) + " °C")
                .put(STRENGTH, found.strength())
                .put(STRENGTH_BY_MASS, found.byMass())
                .put(PROOF_US, found.proof())
                .put(DENSITY, found.figures())
                .findings(found.figures().findings());
    }

    private Optional<MeasureStrength.Reading> reading() {
        long ways = Stream.of(density, hydrometer, mass == null ? flask : mass)
                .filter(Objects::nonNull)
                .count();
        if (ways != 1) {
            object(
                    "",
                    ways == 0 ? "nothing was measured." : "there is more than one measurement.",
                    "Give one: --density, --hydrometer, or --mass with --flask.");
        }
        Optional<MeasureStrength.Reading> byDensity =
                read("--density", density, TEXT::density).map(MeasureStrength.ByDensity::new);
        Optional<MeasureStrength.Reading> byHydrometer = stem().map(MeasureStrength.ByHydrometer::new);
        Optional<MeasureStrength.Reading> byWeight = weighing();
        return byDensity.or(() -> byHydrometer).or(() -> byWeight);
    }

    private Optional<Strength> stem() {
        Optional<VolumeBasis> marked = basis("--reference", reference);
        if (reference != null && hydrometer == null) {
            object("--reference", "only a hydrometer has one.", "Leave --reference out.");
        }
        Optional<Strength> stem = strength("--hydrometer", hydrometer, marked.orElse(VolumeBasis.AT_20C));
        stem.ifPresent(strength -> marked.ifPresent(basis -> refuseOtherBasis(strength, basis)));
        return stem;
    }

    private void refuseOtherBasis(Strength stem, VolumeBasis marked) {
        VolumeBasis own = stem instanceof AlcoholByVolume byVolume
                ? byVolume.basis()
                : stem instanceof org.stillroom.core.quantity.Proof ? VolumeBasis.AT_60F : VolumeBasis.AT_20C;
        if (own != marked) {
            object(
                    "--reference",
                    "a scale such as that of \"" + hydrometer + "\" is for " + own.label() + ", not for "
                            + marked.label() + ".",
                    "Leave --reference out.");
        }
    }

    private Optional<MeasureStrength.Reading> weighing() {
        if ((mass == null) != (flask == null)) {
            object(
                    mass == null ? "--mass" : "--flask",
                    "a weight needs its volume, and a volume its weight.",
                    "Give both, such as --mass 474g --flask 500ml.");
        }
        if (inAir && mass == null) {
            object("--in-air", "only a weight is put right for the air.", "Leave --in-air out.");
        }
        Optional<Mass> weight = read("--mass", mass, TEXT::mass);
        Optional<Volume> volume = read("--flask", flask, TEXT::volume);
        Weighed how = inAir ? Weighed.IN_AIR : Weighed.IN_VACUUM;
        return weight.flatMap(w -> volume.map(v -> new MeasureStrength.ByWeight(new Weighing(w, v, how))));
    }
}

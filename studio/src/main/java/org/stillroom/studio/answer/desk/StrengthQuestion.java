package org.stillroom.studio.answer.desk;

import static org.stillroom.core.liquid.Figure.DENSITY;
import static org.stillroom.core.liquid.Figure.PROOF_US;
import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.STRENGTH_BY_MASS;
import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.core.liquid.StrengthFromDensity.Weighed;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Proof;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.MeasureStrength;
import org.stillroom.studio.usecase.MeasureStrength.Found;

/** Finds the strength of a liquid from a density, a hydrometer, or the weight of a known volume. */
final class StrengthQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "strength";
    }

    @Override
    public String summary() {
        return "Strength from a density, a spirit hydrometer, or the weight of a known volume.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.text("density", "measured, such as 948.05kg/m3 or \"SG 0.9498\""),
                Part.text("hydrometer", "what a spirit hydrometer shows, such as 80proof or 40%"),
                Part.text(
                        "reference",
                        "temperature that the hydrometer is marked for: 20C, 15C or 60F (default: 20C; proof 60F)"),
                Part.text("mass", "weight of the liquid alone, such as 474g; needs the volume of its flask"),
                Part.text("flask", "volume that was weighed, such as 500ml"),
                new Part("in-air", "the weight is as a scale shows it: put it right for the air", null, Part.Form.FLAG),
                Part.text("temperature", "of the liquid when measured, −20 to 40 °C"),
                Part.usual("sugar", "0g/L", "sucrose in it"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(new Manner.Given("density", "948.05kg/m3"), new Manner.Given("temperature", "20C"));
    }

    @Override
    public List<String> figures() {
        return List.of(STRENGTH.key(), STRENGTH_BY_MASS.key(), PROOF_US.key(), DENSITY.key());
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<MeasureStrength.Reading> reading = reading(asked);
        Optional<Temperature> at = asked.temperature();
        if (!asked.has("temperature")) {
            asked.object(
                    "temperature",
                    "the temperature of the liquid is missing.",
                    "Give it, such as " + asked.write("temperature", "20C") + ".");
        }
        Optional<MassConcentration> sweetened = asked.sugar();
        asked.refuseIfAnyWrong();
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

    private static Optional<MeasureStrength.Reading> reading(AskedTexts asked) {
        String weighed = asked.has("mass") ? "mass" : "flask";
        long ways =
                Stream.of("density", "hydrometer", weighed).filter(asked::has).count();
        if (ways != 1) {
            asked.object(
                    "",
                    ways == 0 ? "nothing was measured." : "there is more than one measurement.",
                    "Give one: " + asked.name("density") + ", " + asked.name("hydrometer") + ", or "
                            + asked.name("mass") + " with " + asked.name("flask") + ".");
        }
        Optional<MeasureStrength.Reading> byDensity =
                asked.read("density", TEXT::density).map(MeasureStrength.ByDensity::new);
        Optional<MeasureStrength.Reading> byHydrometer = stem(asked).map(MeasureStrength.ByHydrometer::new);
        Optional<MeasureStrength.Reading> byWeight = weighing(asked);
        return byDensity.or(() -> byHydrometer).or(() -> byWeight);
    }

    private static Optional<Strength> stem(AskedTexts asked) {
        Optional<VolumeBasis> marked = asked.read("reference", AskedTexts::basisOf);
        if (asked.has("reference") && !asked.has("hydrometer")) {
            asked.object("reference", "only a hydrometer has one.", "Leave " + asked.name("reference") + " out.");
        }
        Optional<Strength> stem = asked.strength("hydrometer", marked.orElse(VolumeBasis.AT_20C));
        stem.ifPresent(strength -> marked.ifPresent(basis -> refuseOtherBasis(asked, strength, basis)));
        return stem;
    }

    private static void refuseOtherBasis(AskedTexts asked, Strength stem, VolumeBasis marked) {
        VolumeBasis own = stem instanceof AlcoholByVolume byVolume
                ? byVolume.basis()
                : stem instanceof Proof ? VolumeBasis.AT_60F : VolumeBasis.AT_20C;
        if (own != marked) {
            asked.object(
                    "reference",
                    "a scale such as that of \"" + asked.text("hydrometer") + "\" is for " + own.label() + ", not for "
                            + marked.label() + ".",
                    "Leave " + asked.name("reference") + " out.");
        }
    }

    private static Optional<MeasureStrength.Reading> weighing(AskedTexts asked) {
        if (asked.has("mass") != asked.has("flask")) {
            asked.object(
                    asked.has("mass") ? "flask" : "mass",
                    "a weight needs its volume, and a volume its weight.",
                    "Give both, such as " + asked.write("mass", "474g", "flask", "500ml") + ".");
        }
        if (asked.has("in-air") && !asked.has("mass")) {
            asked.object(
                    "in-air", "only a weight is put right for the air.", "Leave " + asked.name("in-air") + " out.");
        }
        Optional<Mass> weight = asked.read("mass", TEXT::mass);
        Optional<Volume> volume = asked.read("flask", TEXT::volume);
        Weighed how = asked.has("in-air") ? Weighed.IN_AIR : Weighed.IN_VACUUM;
        return weight.flatMap(w -> volume.map(v -> new MeasureStrength.ByWeight(new Weighing(w, v, how))));
    }
}

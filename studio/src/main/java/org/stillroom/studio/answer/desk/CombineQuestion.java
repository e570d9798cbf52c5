package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.CombineMacerates;
import org.stillroom.studio.usecase.CombineMacerates.Found;
import org.stillroom.studio.usecase.CombineMacerates.Macerate;

/** Brings several macerates to one strength. */
final class CombineQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "combine";
    }

    @Override
    public String summary() {
        return "Several macerates brought to one strength: how much of each, and what spirit and water to add.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                new Part(
                        "macerate",
                        "VOLUME@STRENGTH@RATIO, plant to extract, such as 300ml@62%@1:5; once per macerate",
                        null,
                        Part.Form.REQUIRED_TEXTS),
                Part.required("ratio", "that all of it is to have, such as 1:8, or 125g/L"),
                Part.required("to", "strength that it is to have, such as 60%"),
                Part.usual("with", "96%", "spirit to fortify with"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("macerate", "300ml@62%@1:5"),
                new Manner.Given("macerate", "500ml@55%@1:10"),
                new Manner.Given("ratio", "1:8"),
                new Manner.Given("to", "58%"));
    }

    @Override
    public List<String> figures() {
        return List.of("spirit_ml", "water_g", "volume_ml", "strength_vol_percent");
    }

    @Override
    public List<String> tables() {
        return List.of("take");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        List<Macerate> macerates = new ArrayList<>();
        for (String text : asked.texts("macerate")) {
            macerate(asked, text).ifPresent(macerates::add);
        }
        Optional<PlantRatio> ratio = asked.read("ratio", MacerateAsked::plantRatio);
        ratio.ifPresent(wanted -> objectToMoreThanThereIs(asked, wanted, macerates));
        Optional<Strength> to = asked.strength("to", VolumeBasis.AT_20C);
        Optional<Strength> with = asked.strength("with", VolumeBasis.AT_20C);
        to.filter(each -> percent(each) == 0.0)
                .ifPresent(none -> asked.object(
                        "to",
                        "no water brings a macerate down to 0 % vol.",
                        "Give the strength that it is to have, such as 30%."));
        asked.refuseIfAnyWrong();
        double percent = percent(to.orElseThrow());
        Found found = CombineMacerates.answer(
                new CombineMacerates.Asked(
                        macerates, ratio.orElseThrow().gramsPerMillilitre(), percent, with.orElseThrow()),
                workings);
        Told told = new Told("Macerates combined, at 20 °C");
        macerates.stream()
                .filter(each -> isMorePlantThanExtract(each.content()))
                .forEach(each -> told.before(turnedRound(asked, each)));
        return told.doubtingReadings()
                .put(new Name("spirit_ml", "add of the strong spirit", "mL at 20 °C", 0), found.spirit())
                .put(new Name("water_g", "add water", "g", 0), found.water())
                .put(new Name("volume_ml", "makes", "mL at 20 °C", 0), found.volume())
                .putStrength(new Name("strength_vol_percent", "strength", "% vol at 20 °C", 1), found.strength())
                .table(new Told.Series(
                        "take",
                        "Take",
                        List.of(new Name("ml", "amount", "mL", 1), new Name("left_ml", "left", "mL", 1)),
                        found.taken().stream()
                                .map(each ->
                                        new Told.Series.Line(each.name(), List.of(each.millilitres(), each.left())))
                                .toList()))
                .findings(found.findings());
    }

    private static double percent(Strength strength) {
        return Essentials.of(MadeUp.spirit(strength).toGrams()).strength();
    }

    /** Of a gram of plant comes a millilitre of extract and more; less where it was boiled down. */
    private static boolean isMorePlantThanExtract(double gramsPerMillilitre) {
        return gramsPerMillilitre > 1.0;
    }

    /** A ratio that is hardly meant, and that nothing reaches, is refused with the way it is mostly meant. */
    private static void objectToMoreThanThereIs(AskedTexts asked, PlantRatio wanted, List<Macerate> macerates) {
        double most = macerates.stream().mapToDouble(Macerate::content).max().orElse(Double.POSITIVE_INFINITY);
        if (wanted.gramsPerMillilitre() <= most) {
            return;
        }
        if (!isMorePlantThanExtract(wanted.gramsPerMillilitre())) {
            asked.object(
                    "ratio",
                    "none of the macerates holds so much: the strongest has " + QuantityWords.figures(1000.0 * most)
                            + " g/L of plant, and " + QuantityWords.figures(wanted.gramsPerLitre())
                            + " g/L are asked for.",
                    "Ask for " + round(1.0 / most) + " or less plant.");
        } else {
            asked.object(
                    "ratio",
                    "that is more plant than extract, " + QuantityWords.figures(wanted.gramsPerMillilitre())
                            + " g to each mL, and none of the macerates holds so much.",
                    "The plant comes first: write " + round(wanted.gramsPerMillilitre()) + " where that was meant.");
        }
    }

    private static Finding turnedRound(AskedTexts asked, Macerate macerate) {
        return new Finding(
                "ratio-turned-round",
                Severity.CAUTION,
                asked.name("macerate"),
                "",
                "is this meant?",
                macerate.name() + " says that it holds more plant than there is of it, "
                        + QuantityWords.figures(macerate.content()) + " g to each mL.",
                "Beyond 1 g to the mL an extract was boiled down; common practice, no source.",
                "The plant comes first: write " + round(macerate.content()) + " where that was meant.",
                "1:1",
                Source.TRADE);
    }

    private static String round(double gramsPerMillilitre) {
        return "1:" + QuantityWords.plain(Math.round(1000.0 * gramsPerMillilitre) / 1000.0);
    }

    private static Optional<Macerate> macerate(AskedTexts asked, String text) {
        String[] sides = text.split("@", -1);
        if (sides.length != 3) {
            asked.object(
                    "macerate",
                    "\"" + text + "\" is not volume, strength and ratio.",
                    "Write it such as 300ml@62%@1:5.");
            return Optional.empty();
        }
        Optional<Volume> volume = asked.read("macerate", sides[0], TEXT::volume);
        Optional<Strength> strength = asked.strength("macerate", sides[1], VolumeBasis.AT_20C);
        Optional<PlantRatio> ratio = asked.read("macerate", sides[2], MacerateAsked::plantRatio);
        if (volume.isPresent() && volume.get().millilitres() == 0.0) {
            asked.object("macerate", "0 mL of a macerate are nothing.", "Leave it out.");
            return Optional.empty();
        }
        return volume.isPresent() && strength.isPresent() && ratio.isPresent()
                ? Optional.of(new Macerate(
                        text,
                        volume.get().millilitres(),
                        strength.get(),
                        ratio.get().gramsPerMillilitre()))
                : Optional.empty();
    }
}

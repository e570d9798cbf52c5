package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.Ratio;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
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
                Part.required("ratio", "that all of it is to have, such as 1:8"),
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
        Optional<Ratio> ratio = asked.read("ratio", TEXT::ratio);
        Optional<Strength> to = asked.strength("to", VolumeBasis.AT_20C);
        Optional<Strength> with = asked.strength("with", VolumeBasis.AT_20C);
        asked.refuseIfAnyWrong();
        double percent =
                Essentials.of(MadeUp.spirit(to.orElseThrow()).toGrams()).strength();
        Found found = CombineMacerates.answer(
                new CombineMacerates.Asked(macerates, ratio.orElseThrow().leftPerRight(), percent, with.orElseThrow()),
                workings);
        return new Told("Macerates combined, at 20 °C")
                .doubtingReadings()
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
        Optional<Ratio> ratio = asked.read("macerate", sides[2], TEXT::ratio);
        if (volume.isPresent() && volume.get().millilitres() == 0.0) {
            asked.object("macerate", "0 mL of a macerate are nothing.", "Leave it out.");
            return Optional.empty();
        }
        return volume.isPresent() && strength.isPresent() && ratio.isPresent()
                ? Optional.of(new Macerate(
                        text,
                        volume.get().millilitres(),
                        strength.get(),
                        ratio.get().leftPerRight()))
                : Optional.empty();
    }
}

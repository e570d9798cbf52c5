package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Finishing;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Maceration.Pressing;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.extraction.SteepingFit;
import org.stillroom.core.extraction.Tincture;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.usecase.Macerate;

/** Reads what is asked of plants in spirit. */
final class MacerateAsked {
    /** What a warm bath usually is, °C. Common practice, no source. */
    private static final double BATH = 50.0;

    private MacerateAsked() {}

    /**
     * Returns the question.
     *
     * @param grounds what the plants are judged on
     * @throws WrongInput when it cannot be asked so
     */
    static Macerate.Asked read(AskedTexts asked, Optional<Tincture> tincture, Grounds grounds) {
        Optional<Strength> strength = asked.strength("strength", VolumeBasis.AT_20C)
                .or(() -> tincture.map(each -> AlcoholByVolume.at20(each.solvent())));
        if (strength.isEmpty() && !asked.has("strength")) {
            asked.object(
                    "strength",
                    "it is missing.",
                    "Give the strength of the spirit, such as " + asked.write("strength", "70%") + ".");
        }
        OptionalDouble perMillilitre = perMillilitre(asked, tincture);
        if (asked.has("yield") && (perMillilitre.isEmpty() || asked.has("mass") || asked.has("solvent"))) {
            asked.object(
                    "yield",
                    perMillilitre.isEmpty()
                            ? "how much plant goes to how much spirit is not said."
                            : "it says how much there is to be, and so does the mass or the solvent.",
                    perMillilitre.isEmpty()
                            ? "Write for instance " + asked.write("ratio", "1:5", "yield", "1L")
                                    + ", or name a tincture of the pharmacopoeias."
                            : "Leave out the yield, or else mass and solvent.");
        }
        if (asked.has("ratio") && asked.has("solvent")) {
            asked.object(
                    "ratio",
                    "the ratio says how much spirit there is, and so does the volume.",
                    "Leave one of the two out.");
        }
        List<Charge> charges = MacerateCharges.read(asked, tincture, grounds);
        Optional<Double> solvent = solvent(asked, perMillilitre, charges);
        OptionalDouble held = held(asked);
        List<Macerate.Again> again = again(asked, strength);
        OptionalDouble through = millilitres(asked, "percolate");
        if (!again.isEmpty() && through.isPresent()) {
            asked.object(
                    "percolate", "solvent runs through the marc or is left on it again.", "Leave one of the two out.");
        }
        Macerate.Sugaring sugaring = sugaring(asked, solvent);
        SteepingFit samples = samples(asked);
        Macerate.Way way = way(asked);
        Optional<Temperature> temperature = way == Macerate.Way.BATH && !asked.isTyped("temperature")
                ? Optional.of(new Temperature(BATH))
                : asked.temperature();
        Macerate.End end = end(asked).orElse(madeUp(asked, tincture, charges));
        asked.refuseIfAnyWrong();
        return new Macerate.Asked(
                charges,
                solvent.orElseThrow(),
                strength.orElseThrow(),
                held,
                asked.has("pressed") ? Pressing.PRESSED : Pressing.BY_HAND,
                again,
                through,
                sugaring,
                way,
                temperature.orElseThrow().celsius(),
                samples,
                end,
                grounds);
    }

    private static Macerate.Way way(AskedTexts asked) {
        String text = String.valueOf(asked.text("way")).strip();
        for (Macerate.Way way : Macerate.Way.values()) {
            if (way.label().equalsIgnoreCase(text)) {
                return way;
            }
        }
        asked.object("way", "\"" + text + "\" is none that is known.", "Write jar, bath or siphon.");
        return Macerate.Way.JAR;
    }

    /**
     * Returns the tincture that was named.
     *
     * @throws WrongInput when it is none: strength, ratio and plant, which it would say, are not asked for then
     */
    static Optional<Tincture> tincture(AskedTexts asked) {
        String text = asked.text("tincture");
        if (text == null) {
            return Optional.empty();
        }
        Tincture tincture = Tincture.find(text);
        if (tincture == null) {
            List<String> near = near(text);
            asked.object(
                    "tincture",
                    "\"" + text + "\" is not known here.",
                    (near.isEmpty() ? "Known are: " : "Near it are: ")
                            + String.join(
                                    ", ",
                                    near.isEmpty()
                                            ? Tincture.list().stream()
                                                    .map(Tincture::name)
                                                    .toList()
                                            : near)
                            + ".");
            asked.refuseIfAnyWrong();
        }
        return Optional.ofNullable(tincture);
    }

    /** Returns the tinctures of the plant that a text names, such as "dried gentian root" or "Enziantinktur". */
    private static List<String> near(String text) {
        String plant = text.strip().replaceFirst("(?i)[\\s-]*(?:tincture|tinktur)$", "");
        return Stream.concat(
                        Stream.ofNullable(Plants.find(plant)),
                        Plants.like(plant).stream().map(Plants::find))
                .filter(Objects::nonNull)
                .flatMap(each -> Tincture.of(each).stream())
                .map(Tincture::name)
                .distinct()
                .toList();
    }

    /** Reads plant to solvent or to extract: "1:5", or "200 g/L". */
    static Understanding<PlantRatio> plantRatio(String text) {
        return PlantRatio.read(text, TEXT);
    }

    private static OptionalDouble perMillilitre(AskedTexts asked, Optional<Tincture> tincture) {
        Optional<PlantRatio> ratio = asked.read("ratio", MacerateAsked::plantRatio);
        if (ratio.isPresent()) {
            return OptionalDouble.of(ratio.get().gramsPerMillilitre());
        }
        return tincture.isPresent() ? OptionalDouble.of(tincture.get().plantPerMillilitre()) : OptionalDouble.empty();
    }

    private static Macerate.@Nullable Sugaring sugaring(AskedTexts asked, Optional<Double> solvent) {
        Optional<Mass> mass = asked.read("sugar-on-fruit", TEXT::mass);
        OptionalDouble first = millilitres(asked, "first-spirit");
        Optional<Macerate.Order> order = asked.choice("order", List.of(Macerate.Order.values()), Macerate.Order::label);
        if (!asked.has("sugar-on-fruit")) {
            boolean ordered = order.isPresent() && order.get() != Macerate.Order.TOGETHER;
            if (ordered || asked.has("first-spirit")) {
                asked.object(
                        ordered ? "order" : "first-spirit",
                        "it is about sugar on the plants.",
                        "Give " + asked.write("sugar-on-fruit", "400g") + " too.");
            }
            return null;
        }
        if (asked.has("percolate")) {
            asked.object("percolate", "nothing runs through fruit that lies in sugar.", "Leave one of the two out.");
        }
        if (first.isPresent() && order.isPresent() && order.get() != Macerate.Order.SUGAR_FIRST) {
            asked.object(
                    "first-spirit",
                    "a part of the spirit goes on first where the sugar does.",
                    "Write " + asked.write("order", Macerate.Order.SUGAR_FIRST.label()) + ", or leave it out.");
        }
        if (first.isPresent() && solvent.isPresent() && first.getAsDouble() > solvent.get()) {
            asked.object("first-spirit", "that is more than all of the spirit.", "Give a part of it.");
        }
        if (mass.isEmpty() || order.isEmpty()) {
            return null;
        }
        return mass.get().grams() == 0.0
                ? null
                : new Macerate.Sugaring(mass.get().grams(), order.get(), first.orElse(0.0));
    }

    private static Optional<Double> solvent(AskedTexts asked, OptionalDouble perMillilitre, List<Charge> charges) {
        OptionalDouble volume = millilitres(asked, "solvent");
        if (volume.isPresent()) {
            return Optional.of(volume.getAsDouble());
        }
        if (perMillilitre.isPresent()) {
            return Optional.of(charges.stream().mapToDouble(Charge::grams).sum() / perMillilitre.getAsDouble());
        }
        if (!asked.has("solvent") && !asked.has("yield") && !asked.has("ratio")) {
            asked.object(
                    "solvent",
                    "how much spirit is missing.",
                    "Give " + asked.write("solvent", "900ml") + " or " + asked.write("ratio", "1:5") + ".");
        }
        return Optional.empty();
    }

    /** Returns the volume of a part, mL; empty when it was left out or, noted, cannot be. */
    static OptionalDouble millilitres(AskedTexts asked, String part) {
        Optional<Volume> volume = asked.read(part, TEXT::volume);
        volume.filter(each -> each.millilitres() == 0.0)
                .ifPresent(none -> asked.object(part, "0 mL are nothing.", "Give a volume, or leave it out."));
        return volume.map(each -> OptionalDouble.of(each.millilitres())).orElse(OptionalDouble.empty());
    }

    /** Reads what goes on the marc once more: a volume of the same spirit, or a volume and its own strength. */
    private static List<Macerate.Again> again(AskedTexts asked, Optional<Strength> same) {
        List<Macerate.Again> again = new ArrayList<>();
        for (String text : asked.texts("again")) {
            int at = text.indexOf('@');
            if (at < 0 && text.contains("%")) {
                asked.object(
                        "again",
                        "\"" + text + "\" is not a volume alone.",
                        "Join volume and strength by @, such as " + asked.write("again", "300ml@40%")
                                + "; @0% is water.");
                continue;
            }
            Optional<Volume> volume = asked.read("again", at < 0 ? text : text.substring(0, at), TEXT::volume);
            Optional<Strength> strength =
                    at < 0 ? same : asked.strength("again", text.substring(at + 1), VolumeBasis.AT_20C);
            if (volume.isPresent() && volume.get().millilitres() == 0.0) {
                asked.object("again", "0 mL are nothing.", "Give a volume, or leave it out.");
            } else if (volume.isPresent() && strength.isPresent()) {
                again.add(new Macerate.Again(volume.get().millilitres(), strength.get()));
            }
        }
        return again;
    }

    private static OptionalDouble held(AskedTexts asked) {
        return asked.read("held", TEXT::volume)
                .map(each -> OptionalDouble.of(each.millilitres()))
                .orElse(OptionalDouble.empty());
    }

    private static Optional<Macerate.End> end(AskedTexts asked) {
        Optional<Volume> mark = asked.read("make-up-to", TEXT::volume);
        mark.filter(each -> each.millilitres() == 0.0)
                .ifPresent(none -> asked.object("make-up-to", "0 mL are nothing.", "Give a volume, or leave it out."));
        boolean liqueur = asked.has("to") || asked.has("sugar");
        if (liqueur && !(asked.has("to") && asked.has("make-up-to"))) {
            asked.object(
                    "to",
                    "a liqueur is wanted with its volume and its strength.",
                    "Write for instance " + asked.write("make-up-to", "3L", "to", "28%") + ".");
        }
        Optional<Strength> to = asked.strength("to", VolumeBasis.AT_20C);
        Optional<MassConcentration> sugar = asked.sugar();
        Optional<Strength> with = asked.strength("with", VolumeBasis.AT_20C);
        if (mark.isEmpty()) {
            return Optional.empty();
        }
        if (!liqueur || to.isEmpty() || with.isEmpty()) {
            return Optional.of(new Macerate.UpTo(mark.get().millilitres()));
        }
        double percent = Essentials.of(MadeUp.spirit(to.get()).toGrams()).strength();
        OptionalDouble gramsPerLitre =
                sugar.map(each -> OptionalDouble.of(each.gramsPerLitre())).orElse(OptionalDouble.empty());
        return Optional.of(new Macerate.Liqueur(
                new Finishing.Wanted(mark.get().millilitres(), percent, gramsPerLitre), with.get()));
    }

    /** Returns to how much a tincture is made up as its book says, where nothing else is asked for; null where its book says nothing. */
    private static Macerate.@Nullable End madeUp(AskedTexts asked, Optional<Tincture> tincture, List<Charge> charges) {
        OptionalDouble perGram = tincture.map(Tincture::madeUpPerGram).orElse(OptionalDouble.empty());
        double grams = charges.stream().mapToDouble(Charge::grams).sum();
        return perGram.isPresent() && grams > 0.0 && !asked.has("make-up-to")
                ? new Macerate.UpTo(perGram.getAsDouble() * grams)
                : null;
    }

    private static @Nullable SteepingFit samples(AskedTexts asked) {
        List<SteepingFit.Sample> samples = new ArrayList<>();
        for (String text : asked.texts("sample")) {
            asked.read("sample", text, MacerateAsked::sample).ifPresent(samples::add);
        }
        if (samples.size() < asked.texts("sample").size() || samples.isEmpty()) {
            return null;
        }
        try {
            return SteepingFit.of(samples);
        } catch (IllegalArgumentException unfit) {
            asked.object(
                    "sample",
                    unfit.getMessage() + ".",
                    "Taste on more days; leave out a sample that slipped, and ask whether some was diluted, kept warm or "
                            + "left open: oils escape and fade.");
            return null;
        }
    }

    private static Understanding<SteepingFit.Sample> sample(String text) {
        if (text.strip().matches("\\d{1,4}([.,]\\d{1,3})?=\\d{1,6}([.,]\\d{1,6})?")) {
            String[] sides = text.strip().replace(',', '.').split("=", -1);
            double days = Double.parseDouble(sides[0]);
            double found = Double.parseDouble(sides[1]);
            if (days > 0.0 && found > 0.0) {
                return new Understanding.Understood<>(new Typed<>(text, new SteepingFit.Sample(days, found)));
            }
        }
        return new Understanding.Refused<>(text, "a sample is a day and what was found, such as 3=41");
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Kit;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.AdviseReadings;
import org.stillroom.studio.usecase.CorrectBatch;

/** Tells which readings serve best here, how sure they would make it, and what they cost. */
public final class ReadingsQuestion extends DeskQuestion {
    public static final String STRENGTH = "strength";
    public static final String SUGAR = "sugar";
    public static final String VOLUME = "volume";
    public static final String HAVE = "have";
    public static final String KIT = "kit";

    /** So many choices are told; the others are worse. */
    private static final int TOLD = 6;

    private static final Told.Name HIDDEN = new Told.Name(
            "hidden_vol_percent", "strength that sugar hides from a spirit hydrometer", "% vol at 20 °C", 1);

    private static final Told.Name STRENGTH_BEFORE =
            new Told.Name("poured_strength_doubt_vol_percent", "what was poured leaves strength open by", "± % vol", 2);
    private static final Told.Name SUGAR_BEFORE =
            new Told.Name("poured_sugar_doubt_g_per_l", "and sugar by", "± g/L", 1);
    private static final Told.Name STRENGTH_DOUBT =
            new Told.Name("strength_doubt_vol_percent", "all of it together leaves strength open by", "± % vol", 2);
    private static final Told.Name SUGAR_DOUBT = new Told.Name("sugar_doubt_g_per_l", "and sugar by", "± g/L", 1);

    private final @Nullable Poured poured;

    /** @param poured what is known of it before it is read, or null */
    public ReadingsQuestion(@Nullable Poured poured) {
        this.poured = poured;
    }

    @Override
    public String name() {
        return "readings";
    }

    @Override
    public String summary() {
        return "Which readings serve best for a liqueur of about this strength and sugar, or what was poured.";
    }

    @Override
    public List<Part> parts() {
        String methods = String.join(
                ", ", Arrays.stream(Method.values()).map(Method::label).toList());
        return List.of(
                Part.text(STRENGTH, "about, such as 27%; what was poured tells it too"),
                Part.usual(SUGAR, "0g/L", "about, such as 165g/L"),
                Part.text(VOLUME, "of the batch, such as 700ml: large samples of small batches come last"),
                new Part(HAVE, "what you can do, of: " + methods + " (default: all)", null, Part.Form.TEXTS),
                Part.text(KIT, "only what these can do: " + kits()));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given(STRENGTH, "27%"),
                new Manner.Given(SUGAR, "165g/L"),
                new Manner.Given(HAVE, "hydrometer"),
                new Manner.Given(HAVE, "refractometer"));
    }

    @Override
    public List<String> figures() {
        return List.of(
                HIDDEN.key(), STRENGTH_BEFORE.key(), SUGAR_BEFORE.key(), STRENGTH_DOUBT.key(), SUGAR_DOUBT.key());
    }

    @Override
    public List<Shape.Key> further() {
        return List.of(
                new Shape.Key(
                        "choices",
                        new Shape.ListOf(Shape.group(
                                new Shape.Key("readings", new Shape.ListOf(new Shape.Text("a way to measure"))),
                                Shape.number("strength_doubt_vol_percent", "half-width of the central 90 %, % vol"),
                                Shape.number("sugar_doubt_g_per_l", "half-width of the central 90 %, g/L"),
                                Shape.number("sample_ml", "mL out of the vessel at once"),
                                Shape.number("lost_ml", "mL that do not go back")))),
                new Shape.Key(
                        "traps",
                        new Shape.ListOf(Shape.group(
                                Shape.text("reading", "a way to measure"),
                                Shape.text("how", "what is done"),
                                Shape.number("sample_ml", "mL"),
                                Shape.text("sample", "what becomes of it"),
                                Shape.text("conditions", "temperature, and without bubbles"),
                                Shape.text("trap", "what spoils it, and what to mind")))));
    }

    /** What is known before anything is measured, and how that was asked. */
    public record Found(
            AdviseReadings.Advice advice,
            List<Method> have,
            @Nullable Volume batch) {
        public Found {
            have = List.copyOf(have);
        }
    }

    /**
     * Returns what would serve.
     *
     * @param typed texts by the names of the parts
     * @throws WrongInput when it cannot be told because of what was typed
     */
    public Found found(Map<String, List<String>> typed, Manner manner) {
        AskedTexts asked = new AskedTexts(parts(), typed, manner, new Objections());
        return ask(asked, () -> found(asked, Workings.NONE));
    }

    private Found found(AskedTexts asked, Workings workings) {
        List<Method> have = have(asked);
        AdviseReadings.Asked known = poured == null ? about(asked, have) : ofPoured(asked, poured, have);
        return new Found(AdviseReadings.answer(known, workings), have, known.batch());
    }

    private static AdviseReadings.Asked about(AskedTexts asked, List<Method> have) {
        if (!asked.has(STRENGTH)) {
            asked.object(STRENGTH, "it is missing.", "Give it about, such as 27%, or the recipe that was poured.");
        }
        Map<Asked, Double> figures = new EnumMap<>(Asked.class);
        asked.read(STRENGTH, TEXT::percent).ifPresent(percent -> figures.put(Asked.STRENGTH, percent));
        asked.sugar().map(MassConcentration::gramsPerLitre).ifPresent(grams -> figures.put(Asked.SUGAR, grams));
        Volume volume = asked.read(VOLUME, TEXT::volume).orElse(null);
        asked.refuseIfAnyWrong();
        return AdviseReadings.Asked.about(CorrectBatch.batch(Volume.litres(1.0), figures, Map.of()), have, volume);
    }

    private static AdviseReadings.Asked ofPoured(AskedTexts asked, Poured poured, List<Method> have) {
        Stream.of(STRENGTH, SUGAR, VOLUME)
                .filter(asked::isTyped)
                .forEach(part -> asked.object(part, "what was poured tells it already.", "Leave it out."));
        asked.refuseIfAnyWrong();
        return AdviseReadings.Asked.ofPoured(poured, have);
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Found found = found(asked, workings);
        List<Guide.Choice> choices = found.advice().choices();
        Told told = told(choices.subList(0, Math.min(TOLD, choices.size())), found)
                .put(HIDDEN, new Estimate(found.advice().hidden(), 0.0), DoubtWord.NONE);
        if (poured != null) {
            doubt(told, STRENGTH_BEFORE, SUGAR_BEFORE, found.advice().before());
        }
        if (found.advice().onlyChecks()) {
            told.finding(
                    Finding.of(
                            "readings-only-check",
                            Severity.NOTE,
                            "",
                            "hardly surer",
                            "What was poured tells the figures nearly as well as all of this would.",
                            "Measure to find a slip: a bottle of another strength than its label, a line left out or poured twice."));
        }
        return doubt(told, STRENGTH_DOUBT, SUGAR_DOUBT, found.advice().together());
    }

    private static Told doubt(Told told, Told.Name strength, Told.Name sugar, Optional<Guide.Choice> choice) {
        return told.putOrNone(
                        strength,
                        choice.map(each -> new Estimate(each.strength(), 0.0)).orElse(null))
                .putOrNone(
                        sugar,
                        choice.map(each -> new Estimate(each.sugar(), 0.0)).orElse(null));
    }

    private static String kits() {
        return String.join(", ", Arrays.stream(Kit.values()).map(Kit::label).toList());
    }

    private static List<Method> have(AskedTexts asked) {
        List<Method> have = new ArrayList<>();
        for (String text : asked.texts(HAVE)) {
            Arrays.stream(Method.values())
                    .filter(method -> method.label().equalsIgnoreCase(text.strip()))
                    .findFirst()
                    .ifPresentOrElse(
                            have::add,
                            () -> asked.object(
                                    HAVE,
                                    "\"" + text + "\" is not known here.",
                                    "Write any of: "
                                            + String.join(
                                                    ", ",
                                                    Arrays.stream(Method.values())
                                                            .map(Method::label)
                                                            .toList())
                                            + "."));
        }
        if (asked.has(KIT)) {
            asked.choice(KIT, List.of(Kit.values()), Kit::label)
                    .map(Kit::methods)
                    .ifPresent(have::addAll);
        }
        return asked.has(HAVE) || asked.has(KIT) ? have : List.of(Method.values());
    }

    private static Told told(List<Guide.Choice> choices, Found found) {
        List<Method> have = found.have();
        Volume batch = found.batch();
        Double millilitres = batch == null ? null : batch.millilitres();
        Told told = new Told("Which readings serve best here")
                .put("choices", choices.stream().map(ReadingsQuestion::fields).toList())
                .put("traps", have.stream().map(ReadingsQuestion::fields).toList())
                .section(
                        "Best first, with what they would leave in doubt",
                        choices.stream()
                                .map(choice -> sentence(choice)
                                        + (choice.isDear(millilitres) ? " That is much of so small a batch." : ""))
                                .toList())
                .section(
                        "What to mind",
                        have.stream().map(ReadingsQuestion::sentence).toList());
        if (choices.isEmpty()) {
            told.finding(Finding.of(
                    "readings-cannot-tell",
                    Severity.CAUTION,
                    "have",
                    "cannot be told",
                    "Nothing of this tells strength from sugar: alcohol makes a liqueur lighter, sugar makes it heavier.",
                    "Add a refractometer, or boil down a sample and weigh it made up again."));
        }
        return told;
    }

    private static Fields fields(Guide.Choice choice) {
        return new Fields()
                .putTexts(
                        "readings", choice.methods().stream().map(Method::label).toList())
                .put("strength_doubt_vol_percent", choice.strength())
                .put("sugar_doubt_g_per_l", choice.sugar())
                .put("sample_ml", choice.sampleMillilitres())
                .put("lost_ml", choice.lostMillilitres());
    }

    private static Fields fields(Method method) {
        return new Fields()
                .put("reading", method.label())
                .put("how", method.means())
                .put("sample_ml", method.sampleMillilitres())
                .put("sample", method.sample().label())
                .put("conditions", method.conditions())
                .put("trap", method.trap());
    }

    private static String sentence(Guide.Choice choice) {
        return String.join(" and ", choice.methods().stream().map(Method::label).toList()) + ": ± "
                + QuantityWords.fixed(choice.strength(), 2) + " % vol, ± " + QuantityWords.fixed(choice.sugar(), 1)
                + " g/L; takes " + QuantityWords.fixed(choice.sampleMillilitres(), 0) + " mL at once, "
                + QuantityWords.fixed(choice.lostMillilitres(), 1) + " mL are lost.";
    }

    private static String sentence(Method method) {
        return method.label() + " (" + method.means() + "; " + QuantityWords.fixed(method.sampleMillilitres(), 0)
                + " mL, which " + method.sample().label() + "): " + method.conditions() + " " + method.trap();
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction.Batch;
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
final class ReadingsQuestion extends DeskQuestion {
    /** So many choices are told; the others are worse. */
    private static final int TOLD = 6;

    private static final Told.Name HIDDEN = new Told.Name(
            "hidden_vol_percent", "strength that sugar hides from a spirit hydrometer", "% vol at 20 °C", 1);

    @Override
    public String name() {
        return "readings";
    }

    @Override
    public String summary() {
        return "Which readings serve best for a liqueur of about this strength and sugar.";
    }

    @Override
    public List<Part> parts() {
        String methods = String.join(
                ", ", Arrays.stream(Method.values()).map(Method::label).toList());
        return List.of(
                Part.required("strength", "about, such as 27%"),
                Part.usual("sugar", "0g/L", "about, such as 165g/L"),
                Part.text("volume", "of the batch, such as 700ml: large samples of small batches come last"),
                new Part("have", "what you can do, of: " + methods + " (default: all)", null, Part.Form.TEXTS));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("strength", "27%"),
                new Manner.Given("sugar", "165g/L"),
                new Manner.Given("have", "hydrometer"),
                new Manner.Given("have", "refractometer"));
    }

    @Override
    public List<String> figures() {
        return List.of(HIDDEN.key());
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
                                Shape.text("trap", "what spoils it, and what to mind")))));
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Map<Asked, Double> figures = new EnumMap<>(Asked.class);
        asked.read("strength", TEXT::percent).ifPresent(percent -> figures.put(Asked.STRENGTH, percent));
        asked.sugar().map(MassConcentration::gramsPerLitre).ifPresent(grams -> figures.put(Asked.SUGAR, grams));
        Optional<Volume> volume = asked.read("volume", TEXT::volume);
        List<Method> have = have(asked);
        asked.refuseIfAnyWrong();
        Batch likely = CorrectBatch.batch(Volume.litres(1.0), figures, Map.of());
        List<Guide.Choice> choices =
                AdviseReadings.answer(new AdviseReadings.Asked(likely, have, volume.orElse(null)), workings);
        return told(choices.subList(0, Math.min(TOLD, choices.size())), have)
                .put(HIDDEN, new Estimate(Gauging.hidden(likely.contents()), 0.0), DoubtWord.NONE);
    }

    private static List<Method> have(AskedTexts asked) {
        List<Method> have = new ArrayList<>();
        for (String text : asked.texts("have")) {
            Arrays.stream(Method.values())
                    .filter(method -> method.label().equalsIgnoreCase(text.strip()))
                    .findFirst()
                    .ifPresentOrElse(
                            have::add,
                            () -> asked.object(
                                    "have",
                                    "\"" + text + "\" is not known here.",
                                    "Write any of: "
                                            + String.join(
                                                    ", ",
                                                    Arrays.stream(Method.values())
                                                            .map(Method::label)
                                                            .toList())
                                            + "."));
        }
        return asked.has("have") ? have : List.of(Method.values());
    }

    private static Told told(List<Guide.Choice> choices, List<Method> have) {
        Told told = new Told("Which readings serve best here")
                .put("choices", choices.stream().map(ReadingsQuestion::fields).toList())
                .put("traps", have.stream().map(ReadingsQuestion::fields).toList())
                .section(
                        "Best first, with what they would leave in doubt",
                        choices.stream().map(ReadingsQuestion::sentence).toList())
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
                + " mL, which " + method.sample().label() + "): " + method.trap();
    }
}

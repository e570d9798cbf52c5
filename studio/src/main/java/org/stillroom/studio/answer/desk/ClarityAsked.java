package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.clarity.GlassAddition;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellClarity;
import org.stillroom.studio.usecase.WorkedPlan;

/** A question whether oils stay dissolved, of a liquid by its figures or of a recipe that was planned. */
public final class ClarityAsked {
    /** How warm the liquid is. */
    private static final Part TEMPERATURE = Part.usual("temperature", "20C", "of the liquid");

    /** What it takes. */
    public static final List<Part> PARTS = List.of(
            Part.text("strength", "of the liquid, % vol at 20 °C"),
            Part.text("sugar", "of the liquid, such as 200g/L; 0 when left out"),
            TEMPERATURE,
            new Part("oil", "an essential oil, such as lemon=1.2g/L; may be repeated", null, Part.Form.NAMED_TEXTS),
            new Part(
                    "constituent",
                    "a single constituent, such as limonene=1g/L; may be repeated",
                    null,
                    Part.Form.NAMED_TEXTS),
            Part.usual(
                    "with",
                    "water",
                    "what comes to it in the glass: ice, a drink by name, or its figures as \"12%, 5g/L\""),
            Part.text("glass", "temperature in the glass, with ice before it comes; that of the liquid when left out"));

    private final AskedTexts asked;
    private final Temperature temperature;
    private final TellClarity.InGlass glass;

    private ClarityAsked(AskedTexts asked) {
        this.asked = asked;
        this.temperature = asked.temperature().orElse(Temperature.TWENTY_CELSIUS);
        this.glass = new TellClarity.InGlass(
                addition(), asked.read("glass", TEXT::temperature).orElse(null));
    }

    /**
     * Takes what was typed.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @param objections what is wrong already with the rest that was typed
     */
    public static ClarityAsked of(Map<String, List<String>> typed, Manner manner, Objections objections) {
        return new ClarityAsked(new AskedTexts(PARTS, typed, manner, objections));
    }

    /**
     * Returns the forecast for the liquid of these figures.
     *
     * @throws WrongInput when something is not understood, or the liquid cannot be
     */
    public TellClarity.Found answer(Workings workings) {
        Optional<AlcoholByVolume> strength = strength();
        Optional<MassConcentration> sugar = asked.has("sugar") ? asked.sugar() : Optional.of(new MassConcentration(0));
        Map<String, Double> oils = doses("oil");
        Map<String, Double> constituents = doses("constituent");
        asked.refuseIfAnyWrong();
        return told(() -> TellClarity.answer(
                new TellClarity.Asked(strength.orElseThrow(), sugar.orElseThrow(), temperature, oils, constituents),
                glass,
                workings));
    }

    /**
     * Returns the forecast for what a recipe makes.
     *
     * @throws WrongInput when strength or oils were given besides, or no line says how much oil it holds
     */
    public TellClarity.Found answer(WorkedPlan worked, Workings workings) {
        refuseBesidesRecipe();
        return told(() -> TellClarity.answer(worked, temperature, glass, workings));
    }

    /**
     * Refuses what a recipe has of its own.
     *
     * @throws WrongInput when strength, sugar or oils were given, or anything was not understood
     */
    public void refuseBesidesRecipe() {
        for (String part : List.of("strength", "sugar", "oil", "constituent")) {
            if (asked.has(part)) {
                asked.object(part, "a recipe has its own.", "Leave it out, or leave the recipe out.");
            }
        }
        asked.refuseIfAnyWrong();
    }

    private TellClarity.Found told(java.util.function.Supplier<TellClarity.Found> question) {
        try {
            return question.get();
        } catch (Impossible impossible) {
            asked.object(impossible.part(), impossible.reason(), impossible.remedy());
            asked.refuseIfAnyWrong();
            throw impossible;
        }
    }

    /** Returns what comes to it in the glass: a name, or strength and sugar with a comma or a semicolon between. */
    private GlassAddition addition() {
        String text = String.valueOf(asked.text("with"));
        GlassAddition named = GlassAddition.find(text);
        String[] figures = text.split("[;,](?!\\d)", -1);
        if (named != null) {
            return named;
        }
        Optional<AlcoholByVolume> strength = Optional.empty();
        Optional<MassConcentration> sugar = Optional.of(new MassConcentration(0));
        if (figures.length <= 2 && figures[0].contains("%")) {
            strength = asked.strength("with", figures[0].strip(), VolumeBasis.AT_20C)
                    .filter(AlcoholByVolume.class::isInstance)
                    .map(AlcoholByVolume.class::cast);
            sugar = figures.length == 1 ? sugar : concentration("with", figures[1].strip());
            if (strength.isPresent() && sugar.isPresent()) {
                return drink(text, strength.get(), sugar.get());
            }
        }
        asked.object(
                "with",
                "\"" + text + "\" is no drink that is known here.",
                "Write one of " + String.join(", ", GlassAddition.list().keySet())
                        + ", or strength and sugar as \"12%, 5g/L\".");
        return GlassAddition.WATER;
    }

    private GlassAddition drink(String text, AlcoholByVolume strength, MassConcentration sugar) {
        GlassAddition drink = GlassAddition.drink(text, strength, sugar);
        try {
            drink.litre();
            return drink;
        } catch (IllegalArgumentException noRoom) {
            asked.object("with", text + " does not fit into a litre.", "Give less sugar or less strength.");
            return GlassAddition.WATER;
        }
    }

    private Optional<AlcoholByVolume> strength() {
        if (!asked.has("strength")) {
            asked.object("strength", "it is not said how strong the liquid is.", "Give it in % vol, such as 40%.");
            return Optional.empty();
        }
        Optional<Strength> typed = asked.strength("strength", VolumeBasis.AT_20C);
        if (typed.isPresent() && !(typed.get() instanceof AlcoholByVolume)) {
            asked.object("strength", asked.text("strength") + " is not by volume.", "Write % vol, such as 40%.");
        }
        return typed.filter(AlcoholByVolume.class::isInstance).map(AlcoholByVolume.class::cast);
    }

    private Map<String, Double> doses(String part) {
        Map<String, Double> doses = new LinkedHashMap<>();
        for (String text : asked.texts(part)) {
            int sign = text.indexOf('=');
            String name = sign < 0 ? "" : text.substring(0, sign).strip();
            if (name.isEmpty()) {
                asked.object(part, "\"" + text + "\" does not say what it is.", "Write it as lemon=1.2g/L.");
            } else if (doses.containsKey(name)) {
                asked.object(part, name + " is given twice.", "Give it once, with the whole amount.");
            } else {
                dose(part, text.substring(sign + 1).strip()).ifPresent(grams -> doses.put(name, grams));
            }
        }
        return doses;
    }

    private Optional<Double> dose(String part, String text) {
        return concentration(part, text).map(MassConcentration::gramsPerLitre);
    }

    private Optional<MassConcentration> concentration(String part, String text) {
        Optional<Share> share = asked.read(part, text, TEXT::share);
        if (share.isPresent() && !(share.get() instanceof MassConcentration)) {
            asked.object(part, text + " is not per litre.", "Write g/L, such as 1.2g/L.");
        }
        return share.filter(MassConcentration.class::isInstance).map(MassConcentration.class::cast);
    }
}

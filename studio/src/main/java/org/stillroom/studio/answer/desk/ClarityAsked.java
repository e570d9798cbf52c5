package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
                    Part.Form.NAMED_TEXTS));

    private final AskedTexts asked;
    private final Temperature temperature;

    private ClarityAsked(AskedTexts asked) {
        this.asked = asked;
        this.temperature = asked.temperature().orElse(Temperature.TWENTY_CELSIUS);
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
                workings));
    }

    /**
     * Returns the forecast for what a recipe makes.
     *
     * @throws WrongInput when strength or oils were given besides, or no line says how much oil it holds
     */
    public TellClarity.Found answer(WorkedPlan worked, Workings workings) {
        for (String part : List.of("strength", "sugar", "oil", "constituent")) {
            if (asked.has(part)) {
                asked.object(part, "a recipe has its own.", "Leave it out, or leave the recipe out.");
            }
        }
        asked.refuseIfAnyWrong();
        return told(() -> TellClarity.answer(worked, temperature, workings));
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
        Optional<Share> share = asked.read(part, text, TEXT::share);
        if (share.isPresent() && !(share.get() instanceof MassConcentration)) {
            asked.object(part, text + " is not per litre.", "Write g/L, such as 1.2g/L.");
        }
        return share.filter(MassConcentration.class::isInstance)
                .map(concentration -> ((MassConcentration) concentration).gramsPerLitre());
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Clarified;
import org.stillroom.core.clarity.Cream;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellHaze;
import org.stillroom.studio.usecase.WorkedPlan;

/** A question what a haze is, whether cream keeps, and what clarifying takes. */
public final class HazeAsked {
    /** What it takes. */
    public static final List<Part> PARTS = List.of(
            new Part(
                    "seen",
                    "what is true of it, such as fruit,boiled; without it the questions are shown",
                    null,
                    Part.Form.TEXTS),
            Part.text("fat", "of a liquid with cream, % of its mass: tells whether it keeps"),
            Part.text("strength", "of the liquid, % vol at 20 °C"),
            Part.text("acid", "in it beside the milk's own, such as 1g/L as citric; 0 when left out"),
            Part.text("clarify", "a way to clarify, such as bentonite, worked out for a volume"),
            Part.text("volume", "of the liquid to clarify, such as 5L"));

    private final AskedTexts asked;

    private HazeAsked(AskedTexts asked) {
        this.asked = asked;
    }

    /**
     * Takes what was typed.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @param objections what is wrong already with the rest that was typed
     */
    public static HazeAsked of(Map<String, List<String>> typed, Manner manner, Objections objections) {
        return new HazeAsked(new AskedTexts(PARTS, typed, manner, objections));
    }

    /**
     * Returns the answer.
     *
     * @param worked a recipe with cream, or null
     * @throws WrongInput when something is not understood, or the recipe holds no cream
     */
    public TellHaze.Found answer(@Nullable WorkedPlan worked) {
        Set<String> seen = seen();
        Optional<AlcoholByVolume> strength = strength();
        Cream cream = worked == null ? cream(strength) : creamOf(worked);
        Clarified clarified = clarified(strength);
        asked.refuseIfAnyWrong();
        return TellHaze.answer(seen, cream, clarified);
    }

    private Set<String> seen() {
        Set<String> seen = new LinkedHashSet<>(asked.texts("seen"));
        Set<String> known = OtherHazes.asked().keySet();
        seen.stream()
                .filter(sign -> !known.contains(sign))
                .forEach(sign -> asked.object(
                        "seen",
                        "\"" + sign + "\" is no sign that is asked for.",
                        "Write one or more of: " + String.join(", ", known) + "."));
        return seen;
    }

    private Optional<AlcoholByVolume> strength() {
        return asked.strength("strength", VolumeBasis.AT_20C)
                .filter(AlcoholByVolume.class::isInstance)
                .map(AlcoholByVolume.class::cast);
    }

    private @Nullable Cream cream(Optional<AlcoholByVolume> strength) {
        if (!asked.has("fat")) {
            return null;
        }
        Optional<Double> fat = asked.read("fat", TEXT::percent);
        Optional<Share> acid = asked.read("acid", TEXT::share);
        if (acid.isPresent() && !(acid.get() instanceof MassConcentration)) {
            asked.object("acid", asked.text("acid") + " is not per litre.", "Write g/L as citric, such as 1g/L.");
        }
        if (strength.isEmpty()) {
            asked.object("strength", "it is not said how strong the liquid is.", "Give it in % vol, such as 17%.");
        }
        double grams = acid.orElse(null) instanceof MassConcentration perLitre ? perLitre.gramsPerLitre() : 0.0;
        return fat.isPresent() && strength.isPresent()
                ? Cream.of(new Cream.Figures(fat.get(), strength.get().percent(), grams))
                : null;
    }

    private @Nullable Cream creamOf(WorkedPlan worked) {
        for (String part : List.of("fat", "acid")) {
            if (asked.has(part)) {
                asked.object(part, "a recipe has its own.", "Leave it out, or leave the recipe out.");
            }
        }
        try {
            return TellHaze.cream(worked);
        } catch (Impossible impossible) {
            asked.object(impossible.part(), impossible.reason(), impossible.remedy());
            return null;
        }
    }

    private @Nullable Clarified clarified(Optional<AlcoholByVolume> strength) {
        String name = asked.text("clarify");
        if (name == null) {
            return null;
        }
        OtherHazes.Way way = OtherHazes.clarifying().get(name.strip());
        if (way == null) {
            asked.object(
                    "clarify",
                    "\"" + name + "\" is no way to clarify that is known here.",
                    "Write one of: " + String.join(", ", OtherHazes.clarifying().keySet()) + ".");
        }
        Optional<Volume> volume = asked.read("volume", TEXT::volume);
        if (!asked.has("volume")) {
            asked.object("volume", "it is not said how much is to be clarified.", "Give it, such as 5L.");
        }
        return way == null || volume.isEmpty() ? null : TellHaze.clarified(way, volume.get(), strength.orElse(null));
    }
}

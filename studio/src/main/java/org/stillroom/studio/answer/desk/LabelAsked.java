package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Condition;
import org.stillroom.core.safety.Assay;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.LabelLink;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.WorkedPlan;

/** Which bottle is labelled, and what a serving of it is. */
public final class LabelAsked {
    /** What it takes. */
    public static final List<Part> PARTS = List.of(
            SafetyAsked.SERVING,
            Part.usual("bottle", "700ml", "one bottle"),
            new Part("fruit-left-in", "fruit, herbs or other parts of plants stay in the bottle", null, Part.Form.FLAG),
            Part.text("link", "address of a page that the label leads to, as a code for cameras"),
            Part.text("called", "lawful name that is wanted, such as creme de cassis, with what would get there"),
            Part.text(
                    "place",
                    "where the label is read, with the law of that place alone: EU or US (default: EU, law of both)"),
            Part.text("duty", "country whose duty counts into what a bottle costs, such as United Kingdom"),
            SafetyAsked.PH,
            SafetyAsked.PASTEURISED,
            SafetyAsked.ANALYSED);

    private final AskedTexts asked;
    private final double serving;
    private final double bottle;
    private final Condition condition;
    private final Assay analysed;
    private final @Nullable String link;
    private final @Nullable Market place;

    private LabelAsked(AskedTexts asked) {
        this.asked = asked;
        this.serving = volume("serving", "30ml");
        this.bottle = volume("bottle", "500ml");
        this.condition = SafetyAsked.condition(asked);
        this.analysed = SafetyAsked.analysed(asked);
        this.link = link(asked);
        this.place = asked.has("place")
                ? asked.choice("place", List.of(Market.values()), Market::name).orElse(null)
                : null;
        asked.refuseIfAnyWrong();
    }

    /**
     * Returns what was typed.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @throws WrongInput when something is not understood
     */
    public static LabelAsked of(Map<String, List<String>> typed, Manner manner, Objections objections) {
        return new LabelAsked(new AskedTexts(PARTS, typed, manner, objections));
    }

    private static @Nullable String link(AskedTexts asked) {
        String typed = asked.text("link");
        try {
            return typed == null ? null : LabelLink.of(typed);
        } catch (Impossible none) {
            asked.object(none.part(), none.reason(), none.remedy());
            return null;
        }
    }

    private double volume(String part, String example) {
        return SafetyAsked.above(
                asked,
                part,
                asked.read(part, TEXT::volume).map(Volume::millilitres).orElse(1.0),
                "Write a volume above 0, such as " + example + ".");
    }

    /**
     * Returns the label of what a recipe makes.
     *
     * @throws WrongInput when it makes nothing
     */
    public TellLabel.Found answer(WorkedPlan worked) {
        StatedStrength.LeftIn leftIn =
                asked.has("fruit-left-in") ? StatedStrength.LeftIn.FRUIT_OR_PLANTS : StatedStrength.LeftIn.NOTHING;
        try {
            Market read = place == null ? Market.EU : place;
            TellLabel.Asking asking = new TellLabel.Asking(read, leftIn, serving, bottle);
            TellLabel.Found all = TellLabel.answer(
                    worked,
                    place == null ? asking.byBothLaws() : asking,
                    worked.grounds()
                            .with(condition.or(worked.plan().recipe().condition()))
                            .with(worked.grounds().analyses().ofDrink(analysed)));
            TellLabel.Found found = place == null ? all : all.only(place);
            String duty = asked.text("duty");
            String name = asked.text("called");
            TellLabel.Found called = name == null ? found : found.calling(name);
            TellLabel.Found dutiable = duty == null ? called : called.bearing(duty);
            return link == null ? dutiable : dutiable.leadingTo(link);
        } catch (Impossible impossible) {
            asked.object(impossible.part(), impossible.reason(), impossible.remedy());
            asked.refuseIfAnyWrong();
            throw impossible;
        }
    }
}

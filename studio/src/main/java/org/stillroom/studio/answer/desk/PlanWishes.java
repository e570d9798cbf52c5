package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.explore.Explorations;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.studio.answer.PlanTold;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;

/** What is wished for with the plan of a recipe, and the plan that answers it. */
public final class PlanWishes {
    /** Another size. */
    public static final Part MAKES =
            Part.text("makes", "how much to make in place of the recipe's own size, such as 3L");

    /** What can be wished for. */
    public static final List<Part> PARTS = List.of(
            MAKES,
            new Part(
                    "what-if-spirit",
                    "plan it with spirits of other strengths too, such as 40%,50%,96%",
                    null,
                    Part.Form.TEXTS),
            new Part("shopping", "add a shopping list in saleable packs", null, Part.Form.FLAG));

    private final AskedTexts asked;
    private final @Nullable Volume makes;
    private final List<AlcoholByVolume> strengths;

    private PlanWishes(AskedTexts asked) {
        this.asked = asked;
        Optional<Volume> volume = asked.read("makes", TEXT::volume);
        volume.filter(wanted -> wanted.millilitres() == 0.0)
                .ifPresent(
                        none -> asked.object("makes", "nothing is to be made.", "Write a volume above 0, such as 3L."));
        this.makes = volume.orElse(null);
        this.strengths = strengths(asked);
        asked.refuseIfAnyWrong();
    }

    /**
     * Returns what is wished for.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @param objections what is wrong already with the rest that was typed
     * @throws WrongInput when it cannot be understood, or anything else was wrong
     */
    public static PlanWishes of(Map<String, List<String>> typed, Manner manner, Objections objections) {
        return new PlanWishes(new AskedTexts(PARTS, typed, manner, objections));
    }

    private static List<AlcoholByVolume> strengths(AskedTexts asked) {
        List<AlcoholByVolume> strengths = new ArrayList<>();
        for (String text : asked.texts("what-if-spirit")) {
            String percent = text.contains("%") ? text : text + "%";
            Optional<Strength> strength = asked.read("what-if-spirit", percent, TEXT::strength);
            strength.ifPresent(value -> {
                if (value instanceof AlcoholByVolume byVolume) {
                    strengths.add(byVolume);
                } else {
                    asked.object("what-if-spirit", text + " is not by volume.", "Write % vol, such as 40%.");
                }
            });
        }
        return strengths;
    }

    /**
     * Returns the plan of a recipe with what is wished for.
     *
     * @param notes what was taken for granted in reading the recipe
     * @param grounds what it is judged on as a drink
     * @throws WrongInput when the recipe does not say enough, or asks for what cannot be
     */
    public PlanTold answer(Making making, List<Finding> notes, Grounds grounds, Workings workings) {
        WorkedPlan plan = worked(making, grounds, workings);
        return new PlanTold(
                plan,
                notes,
                strengths.isEmpty() ? null : Explorations.spirits(making, strengths),
                asked.has("shopping") ? Shopping.of(plan.plan()) : null);
    }

    /**
     * Returns a recipe worked out in the size that is wished for.
     *
     * @throws WrongInput when the recipe does not say enough, or asks for what cannot be
     */
    public WorkedPlan worked(Making making, Grounds grounds, Workings workings) {
        PlanRecipe.Outcome outcome = PlanRecipe.answer(making, makes, grounds, workings);
        if (outcome instanceof PlanRecipe.Outcome.Refused refused) {
            throw new WrongInput(refused.problems().stream().map(this::named).toList());
        }
        return ((PlanRecipe.Outcome.Worked) outcome).plan();
    }

    /** Names the size as whoever asks writes it. */
    private Finding named(Finding finding) {
        return finding.where().equals("makes")
                ? Finding.of(
                        finding.rule(),
                        finding.severity(),
                        asked.name("makes"),
                        finding.verdict(),
                        finding.message(),
                        finding.remedy())
                : finding;
    }
}

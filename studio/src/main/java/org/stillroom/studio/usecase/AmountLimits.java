package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.HouseRule;
import org.stillroom.core.safety.HouseRules;
import org.stillroom.core.safety.Safety;

/** Holds oils at the dose in which they go into a litre of drink to the amounts that law and the rules of the house allow. */
public final class AmountLimits {
    /** Strength of a drink of which nothing is said, % vol; amounts per litre do not depend on it. */
    private static final double STRENGTH = 30.0;

    private AmountLimits() {}

    /** What law says of amounts. */
    private static final Set<String> OF_LAW = Set.of("eu-maximum", "eu-use-limit", "us-limit");

    /**
     * Returns which limits are passed, by the worst that the oils may hold, what the house's rules of amounts find, and those that cannot
     * be read; what must not go in at all is told by its name alone, elsewhere.
     *
     * @param gramsPerLitre of each oil in the drink
     */
    public static List<Finding> of(Map<String, Double> gramsPerLitre, Grounds grounds) {
        Planning planning = Planner.plan(Making.alone(drink(gramsPerLitre)));
        if (!(planning instanceof Planning.Planned planned) || !planned.plan().reached()) {
            return List.of(
                    Finding.of(
                            "limits-not-judged",
                            Severity.CAUTION,
                            "",
                            "not judged",
                            "Whether the drink keeps the limits of law and the house's rules of amounts could not be judged: no drink of "
                                    + QuantityWords.plain(STRENGTH) + " % vol takes so much oil.",
                            "Look at the dose and its unit first. If it is meant, write a recipe of it and ask for its safety."));
        }
        return of(planned.plan(), grounds).stream()
                .map(finding -> finding.at(finding.where().replaceAll("line \\d+, ", "")))
                .toList();
    }

    /** Returns the same of what a plan makes, at its lines. */
    public static List<Finding> of(Plan plan, Grounds grounds) {
        List<HouseRule> amounts = grounds.house().rules().stream()
                .filter(rule -> !(rule instanceof HouseRule.LeaveOut))
                .toList();
        return Safety.ofPlan(plan, grounds.with(new HouseRules(amounts))).stream()
                .filter(finding -> finding.rule().equals(HouseRule.NAME) || OF_LAW.contains(finding.rule()))
                .toList();
    }

    private static Recipe drink(Map<String, Double> gramsPerLitre) {
        List<Ingredient> ingredients = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        gramsPerLitre.forEach((oil, grams) -> {
            ingredients.add(Ingredient.named(oil, Kind.ESSENTIAL_OIL));
            Dose dose = new Dose(new Mass(grams));
            String typed = QuantityWords.plain(grams) + " g/L";
            lines.add(new Line(oil, new LineAmount.PerLitre(new Typed<>(typed, dose)), null, null));
        });
        lines.add(new Line("spirit 96 %", new LineAmount.Free(), null, null));
        lines.add(new Line("water", new LineAmount.Free(), null, null));
        Target target = new Target(
                new Typed<>("1 L", Span.exactly(1000.0)),
                null,
                new Typed<>(QuantityWords.plain(STRENGTH) + " %", Span.exactly(STRENGTH)),
                null,
                SugarBasis.AS_DISSOLVED,
                null);
        return Recipe.plain("drink", target, ingredients, lines);
    }
}

package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Safety;
import org.stillroom.core.safety.Serving;
import org.stillroom.studio.usecase.Macerate.Asked;

/**
 * What stops plants, or is to be minded of them, before they go into spirit: what safety says of a recipe of the same plants and spirit.
 *
 * <p>How much a day somebody drinks is a matter of the drink that is made of the macerate, so that guidance for a day is left to it.
 */
final class MacerateSafety {
    private static final String SPIRIT = "spirit";

    /** Rules that judge what is drunk a day, which no macerate tells. */
    private static final List<String> OF_A_DAY = List.of("intake", "alcohol", "alcohol-guidance");

    private MacerateSafety() {}

    static List<Finding> of(Asked asked) {
        Planning planning = Planner.plan(Making.alone(recipe(asked)));
        if (!(planning instanceof Planning.Planned planned)) {
            return List.of(notJudged());
        }
        Plan plan = planned.plan();
        return Safety.of(plan, Serving.USUAL, asked.grounds()).findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE || isOfAllThatIsInIt(finding))
                .filter(finding -> !OF_A_DAY.contains(finding.rule()))
                .filter(finding -> asked.charges().stream()
                        .anyMatch(each -> finding.where().contains(each.plant().name())))
                .toList();
    }

    /** Whether it says that of a plant no table knows anything; that an amount is not known is left to the drink. */
    private static boolean isOfAllThatIsInIt(Finding finding) {
        return finding.rule().equals("not-known") && !finding.where().contains("(");
    }

    private static Recipe recipe(Asked asked) {
        List<Ingredient> ingredients = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (Charge charge : asked.charges()) {
            ingredients.add(ingredient(charge.plant()));
            lines.add(
                    line(charge.plant().name(), new Mass(charge.grams()), QuantityWords.plain(charge.grams()) + " g"));
        }
        ingredients.add(Ingredient.named(SPIRIT, Kind.SPIRIT).ofStrength(new Typed<>("", asked.strength())));
        lines.add(line(SPIRIT, new Volume(asked.solvent()), QuantityWords.plain(asked.solvent()) + " ml"));
        return Recipe.plain("macerate", Target.OPEN, ingredients, lines);
    }

    private static Ingredient ingredient(Plant plant) {
        if (!plant.sort().fresh()) {
            return Ingredient.named(plant.name(), Kind.DRIED_PLANT);
        }
        Typed<org.stillroom.core.quantity.Share> water =
                new Typed<>(QuantityWords.fixed(100.0 * plant.water(), 1) + " %", new MassFraction(plant.water()));
        return Ingredient.named(plant.name(), Kind.FRESH_PLANT).containing(Map.of(Substance.WATER, water));
    }

    private static Line line(String name, Amount amount, String typed) {
        return new Line(name, new LineAmount.Fixed(new Typed<>(typed, amount)), null, null);
    }

    private static Finding notJudged() {
        return Finding.of(
                "not-known",
                Severity.CAUTION,
                "plant",
                "not judged",
                "Whether these plants may be drunk could not be judged.",
                "Write a recipe of them, and ask for its safety.");
    }
}

package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.explore.Explorations;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a recipe file: amounts that land on its target, with their doubt, and how to make it. */
final class PlanCommand extends Subcommand {
    private static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    @Parameters(index = "0", paramLabel = "FILE", description = "the recipe file")
    private Path file = Path.of("");

    @Option(names = "--makes", description = "how much to make in place of the recipe's own size, such as 3L")
    private @Nullable String makes;

    @Option(names = "--units", defaultValue = "metric", description = "metric or us (default: ${DEFAULT-VALUE})")
    private String units = "";

    @Option(
            names = "--what-if-spirit",
            split = ",",
            description = "plan it with spirits of other strengths too, such as 40%%,50%%,96%%")
    private List<String> whatIfSpirit = new ArrayList<>();

    @Option(names = "--shopping", description = "add a shopping list in saleable packs")
    private boolean shopping;

    private final Objections objections = new Objections();

    @Override
    protected Answer answer(Workings workings) {
        Units shown = units();
        Optional<Volume> volume = makes == null ? Optional.empty() : objections.take("--makes", TEXT.volume(makes));
        volume.filter(asked -> asked.millilitres() == 0.0)
                .ifPresent(none -> object("--makes", "Nothing is to be made.", "Write a volume above 0, such as 3L."));
        List<AlcoholByVolume> strengths = strengths();
        objections.refuseIfAny();
        OpenRecipe.Outcome.Opened opened = open();
        Making making = PlanRecipe.making(opened.recipe());
        PlanRecipe.Outcome outcome = PlanRecipe.answer(making, volume.orElse(null), workings);
        if (outcome instanceof PlanRecipe.Outcome.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        WorkedPlan plan = ((PlanRecipe.Outcome.Worked) outcome).plan();
        Exploration exploration = strengths.isEmpty() ? null : Explorations.spirits(making, strengths);
        ShoppingList list = shopping ? Shopping.of(plan.plan()) : null;
        return new PlanAnswer(plan, opened.notes(), shown, exploration, list);
    }

    private OpenRecipe.Outcome.Opened open() {
        OpenRecipe.Outcome outcome = OpenRecipe.at(file);
        if (outcome instanceof OpenRecipe.Outcome.NotFound none) {
            throw new Refusal(Exit.NOT_FOUND, none.problems());
        }
        if (outcome instanceof OpenRecipe.Outcome.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        return (OpenRecipe.Outcome.Opened) outcome;
    }

    private Units units() {
        for (Units each : Units.values()) {
            if (each.name().equals(units.toUpperCase(Locale.ROOT))) {
                return each;
            }
        }
        object("--units", "\"" + units + "\" is not known here.", "Write metric or us.");
        return Units.METRIC;
    }

    private List<AlcoholByVolume> strengths() {
        List<AlcoholByVolume> strengths = new ArrayList<>();
        for (String text : whatIfSpirit) {
            String percent = text.contains("%") ? text : text + "%";
            Optional<Strength> strength = objections.take("--what-if-spirit", TEXT.strength(percent));
            strength.ifPresent(value -> {
                if (value instanceof AlcoholByVolume byVolume) {
                    strengths.add(byVolume);
                } else {
                    object("--what-if-spirit", text + " is not by volume.", "Write % vol, such as 40%.");
                }
            });
        }
        return strengths;
    }

    private void object(String option, String message, String remedy) {
        objections.raise(Finding.of("wrong-input", Severity.STOP, option, "not understood", message, remedy));
    }
}

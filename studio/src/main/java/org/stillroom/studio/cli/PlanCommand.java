package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.Locale;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.PlanWishes;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a recipe file: amounts that land on its target, with their doubt, and how to make it. */
final class PlanCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the recipe file")
    private Path file = Path.of("");

    @Option(names = "--units", defaultValue = "metric", description = "metric or us (default: ${DEFAULT-VALUE})")
    private String units = "";

    @Mixin
    private GroundsOptions grounds = new GroundsOptions();

    private final PartOptions wishes = new PartOptions(PlanWishes.PARTS);

    @Override
    protected void declare(CommandSpec command) {
        wishes.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        Objections objections = new Objections();
        Units shown = units(objections);
        PlanWishes wished = PlanWishes.of(wishes.typed(), Dashes.TWO, objections);
        return new PlanAnswer(grounds.planned(RecipeArgument.open(file), wished, workings), shown);
    }

    private Units units(Objections objections) {
        for (Units each : Units.values()) {
            if (each.name().equals(units.toUpperCase(Locale.ROOT))) {
                return each;
            }
        }
        objections.object("--units", "\"" + units + "\" is not known here.", "Write metric or us.");
        return Units.METRIC;
    }
}

package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.List;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.SafetyAsked;
import org.stillroom.studio.usecase.TellLabel;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what a recipe's drink may be called and what its label says. */
final class LabelCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the recipe file")
    private Path file = Path.of("");

    @Option(names = "--bottle", defaultValue = "700ml", description = "one bottle (default: ${DEFAULT-VALUE})")
    private String bottle = "";

    @Option(names = "--fruit-left-in", description = "fruit, herbs or other parts of plants stay in the bottle")
    private boolean fruitLeftIn;

    private final PartOptions options = new PartOptions(List.of(SafetyAsked.servingPart()));

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        Objections objections = new Objections();
        double bottled = objections
                .take("--bottle", new QuantityText(OunceMeaning.US_FLUID).volume(bottle))
                .map(Volume::millilitres)
                .orElse(1.0);
        if (bottled == 0.0) {
            objections.object("--bottle", "it holds nothing.", "Write a volume above 0, such as 500ml.");
        }
        Volume serving = SafetyAsked.serving(options.typed(), Dashes.TWO, objections);
        StatedStrength.LeftIn leftIn =
                fruitLeftIn ? StatedStrength.LeftIn.FRUIT_OR_PLANTS : StatedStrength.LeftIn.NOTHING;
        return new LabelAnswer(
                TellLabel.answer(RecipeArgument.worked(file, workings), leftIn, serving.millilitres(), bottled));
    }
}

package org.stillroom.studio.cli;

import java.util.List;

/** The commands in force, in the order in which help shows them. */
public final class Commands {
    private Commands() {}

    public static List<Entry> all() {
        return List.of(
                new Entry(
                        "open",
                        "The studio in the browser: shelf, recipes, makes. The same as stillroom alone.",
                        "stillroom open --try",
                        OpenCommand::new),
                new Entry(
                        "backup",
                        "The whole studio in one file, also while it is open.",
                        "stillroom backup --help",
                        BackupCommand::new),
                new Entry("restore", "A studio back from its backup.", "stillroom restore --help", RestoreCommand::new),
                new Entry(
                        "plan",
                        "Amounts that land on a recipe's target, how sure they are, and how to make it.",
                        "stillroom plan examples/quince-and-bay.yaml",
                        PlanCommand::new),
                new Entry(
                        "liquid",
                        "Every figure of a liquid from what is in it: volume, density, strength, sugar, and more.",
                        "stillroom liquid --ethanol 300g --water 600g --sucrose 200g",
                        LiquidCommand::new),
                new Entry(
                        "clarity",
                        "Whether oils stay dissolved: clear, hazy or cloudy, how likely, and what would help.",
                        "stillroom clarity --strength 40% --sugar 200g/L --oil lemon=1.2g/L",
                        ClarityCommand::new),
                new Entry(
                        "haze",
                        "What a haze most likely is by what is seen of it, and what to try first.",
                        "stillroom haze --seen fruit,boiled",
                        HazeCommand::new),
                new Entry(
                        "strength",
                        "Strength from a density, a spirit hydrometer, or the weight of a known volume.",
                        "stillroom strength --density 948.05kg/m3 --temperature 20C",
                        StrengthCommand::new),
                new Entry(
                        "density",
                        "Density of a spirit or liqueur of known strength and sugar.",
                        "stillroom density --strength 28% --sugar 180g/L",
                        DensityCommand::new),
                new Entry(
                        "reduce",
                        "Water that brings a spirit down to strength.",
                        "stillroom reduce --from 95% --to 40% --volume 1000ml",
                        ReduceCommand::new),
                new Entry(
                        "blend",
                        "What comes of several spirits together, or what brings them to one strength.",
                        "stillroom blend --add 500ml@40% --add 200ml@96% --to 45%",
                        BlendCommand::new),
                new Entry(
                        "fortify",
                        "How much of a second spirit brings a first one to a strength.",
                        "stillroom fortify --volume 1L --from 30% --with 96% --to 40%",
                        FortifyCommand::new),
                new Entry(
                        "syrup",
                        "What syrup comes of sugar and water, or what a wanted syrup takes.",
                        "stillroom syrup --sugar 500g --water 500g",
                        SyrupCommand::new),
                new Entry(
                        "acid",
                        "What to weigh for an acid solution.",
                        "stillroom acid --acid citric --percent 5% --make 250g",
                        AcidCommand::new),
                new Entry(
                        "guide",
                        "Figures to start from: sugar, strength and acid of usual liqueurs.",
                        "stillroom guide",
                        GuideCommand::new),
                new Entry(
                        "sheet",
                        "The day sheet of a recipe, as a page or a PDF to print.",
                        "stillroom sheet examples/caraway-brought-down.yaml --paper letter",
                        SheetCommand::new));
    }
}

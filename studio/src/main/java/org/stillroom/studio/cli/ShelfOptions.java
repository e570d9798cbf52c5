package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.left.Candidate;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ReadShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import picocli.CommandLine.Option;

/** Where a command takes its shelf from: a table, or the folder of a studio. */
final class ShelfOptions {
    @Option(names = "--shelf", paramLabel = "FILE", description = "a table of bottles, see docs/shelf-csv.md")
    private @Nullable Path table;

    @Option(names = "--data", paramLabel = "DIR", description = "folder of a studio, in place of a table")
    private @Nullable Path data;

    /**
     * A shelf.
     *
     * @param lots what stands on it
     * @param recipes of the studio; none where it comes from a table
     * @param ounce what "oz" means
     * @param grounds what drinks are judged on, the analyses of its lots among them
     */
    record Shelf(List<LotOnShelf> lots, List<Candidate> recipes, OunceMeaning ounce, Grounds grounds) {
        /** Nothing at all. */
        static final Shelf NONE = new Shelf(List.of(), List.of(), OunceMeaning.US_FLUID, Grounds.SHIPPED);

        /** Returns the shelf with recipes from files besides. */
        Shelf with(List<Path> files) {
            List<Candidate> all = new ArrayList<>(recipes);
            for (Path file : files) {
                all.add(Candidate.of(
                        file.toString(),
                        PlanRecipe.making(RecipeArgument.open(file).recipe())));
            }
            return new Shelf(lots, all, ounce, grounds);
        }
    }

    /** Returns whether a shelf was named. */
    boolean isNamed() {
        return table != null || data != null;
    }

    /**
     * Opens the shelf that was named.
     *
     * @throws Refusal when none was named, or it is not there, or not understood
     */
    Shelf open() {
        if ((table == null) == (data == null)) {
            throw Refusal.wrongInput(
                    "--shelf",
                    "a shelf is wanted, and just one.",
                    "Name a table with --shelf FILE, or the folder of a studio with --data DIR.");
        }
        return table == null ? ofStudio(DataFolder.chosenOr(data)) : ofTable(table);
    }

    private static Shelf ofTable(Path file) {
        ReadShelf.Outcome read = ReadShelf.answer(InFile.text("--shelf", file), OunceMeaning.US_FLUID);
        if (!read.problems().isEmpty()) {
            throw new Refusal(
                    Exit.WRONG_INPUT,
                    read.problems().stream()
                            .map(each -> each.at(each.where().isEmpty() ? "--shelf " + file : each.where()))
                            .toList());
        }
        return new Shelf(
                read.lots(),
                List.of(),
                OunceMeaning.US_FLUID,
                MakersGrounds.of(read.lots().stream().map(LotOnShelf::lot).toList()));
    }

    private static Shelf ofStudio(DataFolder folder) {
        return StudioFolder.ask(folder, store -> {
            OunceMeaning ounce = MakersOunce.of(store.settings());
            return new Shelf(
                    new ShelfLots(ounce).of(store.lots().all()),
                    Candidate.all(store.recipes(), ounce),
                    ounce,
                    MakersGrounds.of(store));
        });
    }
}

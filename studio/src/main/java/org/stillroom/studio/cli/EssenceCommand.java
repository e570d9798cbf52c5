package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.planner.drops.PreDilution;
import org.stillroom.studio.answer.EssenceFields;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.recipefile.EssenceReading;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.essence.OpenEssence;
import org.stillroom.studio.usecase.essence.PlanEssence;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Plans an essence file in whole drops. */
final class EssenceCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the essence file")
    private Path file = Path.of("");

    @Mixin
    private HouseOptions house = new HouseOptions();

    @Override
    protected Answer answer(Workings workings) {
        InFile.requireFile("FILE", file);
        EssenceReading reading = OpenEssence.at(file);
        if (reading instanceof EssenceReading.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        EssenceSheet sheet = ((EssenceReading.Understood) reading).sheet();
        try {
            return new Planned(PlanEssence.answer(sheet, house.grounds(), workings));
        } catch (Impossible impossible) {
            throw new Refusal(
                    Exit.WRONG_INPUT,
                    List.of(Finding.of(
                            "essence-impossible",
                            Severity.STOP,
                            impossible.part(),
                            "cannot be",
                            impossible.reason(),
                            impossible.remedy())));
        }
    }

    private record Planned(PlanEssence.Found found) implements Answer {
        @Override
        public Fields fields() {
            return EssenceFields.of(found);
        }

        @Override
        public Exit exit() {
            return found.isStopped() ? Exit.OUT_OF_REACH : Exit.DONE;
        }

        @Override
        public void print(Page page) {
            page.heading(found.title());
            found.before().forEach(finding -> told(page, finding));
            page.blank();
            page.paragraph("Drops for " + Figure.decimals(found.batch() / 1000.0, 2) + " L at a time; each takes "
                    + Figure.decimals(found.asked().dose(), 2) + " mL of the essence.");
            if (!found.choices().isEmpty()) {
                page.paragraph(order());
                page.table(table());
                page.blank();
                page.heading("In the first of them, g/L");
                page.table(contents(found.choices().get(0)));
                page.paragraph("Constituents as the typical composition of each oil has them; your lot may differ.");
            }
            Choice manifold = found.manifold();
            if (manifold != null) {
                page.blank();
                page.heading("For the fewest batches at once");
                page.paragraph(drops(manifold) + " drops are an essence for " + manifold.batches() + " batches, "
                        + Figure.decimals(found.asked().dose(), 2) + " mL for each.");
            }
            PlanEssence.Dilutions diluted = found.preDilution();
            if (diluted != null) {
                page.blank();
                page.heading("For a single batch, with a dilution first");
                diluted.how().dilutions().forEach(each -> page.paragraph(words(each, diluted)));
                page.paragraph("Then " + drops(diluted.how().choice()) + " drops.");
            }
            found.after().forEach(finding -> told(page, finding));
        }

        private static void told(Page page, Finding finding) {
            page.blank();
            page.finding(finding);
        }

        /** Returns the choices side by side, so that however many oils there are it fits the screen. */
        private Table table() {
            Table table = new Table().text("drops (off by)");
            for (int i = 0; i < found.choices().size(); i++) {
                table.figure(i == 0 ? "best" : (i + 1) + ".");
            }
            List<OilDrop> oils = found.asked().oils();
            for (int oil = 0; oil < oils.size(); oil++) {
                int its = oil;
                row(table, oils.get(oil).name(), made -> counted(made.choice(), its));
            }
            row(table, "batches", made -> Integer.toString(made.choice().batches()));
            row(table, "carrier, mL", made -> Figure.decimals(made.carrier(), 2));
            row(table, "% vol with oils", made -> Figure.decimals(made.strength(), 1));
            row(
                    table,
                    "worst off, %",
                    made -> Figure.decimals(100.0 * made.choice().worstError(), 1));
            row(table, "left over, mL", made -> Figure.decimals(made.choice().leftOver(), 2));
            return table;
        }

        private void row(Table table, String name, Function<PlanEssence.Made, String> cell) {
            List<String> cells = new ArrayList<>(List.of(name));
            found.choices().forEach(made -> cells.add(cell.apply(made)));
            table.row(cells.toArray(String[]::new));
        }

        private String order() {
            String tolerance = Figure.decimals(100.0 * found.asked().tolerance(), 1) + " %";
            return found.choices().get(0).choice().toleranceKept()
                    ? "Best first: each oil within " + tolerance
                            + ", then least left over by tenths of a mark, then fewest" + " batches."
                    : "None keeps each oil within " + tolerance + ": the nearest to it first.";
        }

        private Table contents(PlanEssence.Made made) {
            Table table = new Table().text("").figure("g/L");
            for (int i = 0; i < made.oils().size(); i++) {
                table.row(
                        found.asked().oils().get(i).name(),
                        Figure.decimals(made.oils().get(i), 2));
            }
            EssenceFields.listed(made)
                    .forEach((name, gramsPerLitre) -> table.row("  " + name, Figure.decimals(gramsPerLitre, 2)));
            return table;
        }

        private String words(PreDilution.Dilution each, PlanEssence.Dilutions diluted) {
            String name = found.asked().oils().get(each.oil()).name();
            return name + " 1 in " + each.oneIn() + ": " + each.drops() + (each.drops() == 1 ? " drop" : " drops")
                    + " and " + Figure.decimals(each.spirit(), 2)
                    + " g (" + Figure.decimals(each.spirit() / diluted.density(), 2) + " mL) of "
                    + (diluted.isCarrier() ? "the carrier" : "spirit " + Figure.decimals(diluted.strength(), 0) + " %")
                    + ", "
                    + Figure.decimals(each.total(), 2) + " g in all; count its drops below from this.";
        }

        private static String drops(Choice choice) {
            return IntStream.range(0, choice.drops().size())
                    .mapToObj(oil -> counted(choice, oil))
                    .collect(Collectors.joining(" : "));
        }

        /** Returns the drops of an oil and how far its part of the essence is off, such as "7 (-0.6 %)". */
        private static String counted(Choice choice, int oil) {
            String off = Figure.decimals(100.0 * choice.errors().get(oil), 1);
            return choice.drops().get(oil) + " (" + (off.startsWith("-") || off.equals("0.0") ? "" : "+") + off + " %)";
        }
    }
}

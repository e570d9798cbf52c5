package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.drops.Choice;
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
        if (!OpenEssence.isThere(file)) {
            throw Refusal.notFound("FILE", "there is no file " + file + ".", "Check the name and the folder.");
        }
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
            found.findings().stream()
                    .filter(finding -> finding.severity() == Severity.STOP)
                    .forEach(finding -> told(page, finding));
            page.blank();
            page.paragraph("Drops for " + Figure.decimals(found.batch() / 1000.0, 2) + " L at a time; each takes "
                    + Figure.decimals(found.asked().dose(), 2) + " mL of the essence.");
            if (!found.choices().isEmpty()) {
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
                        + Figure.decimals(found.asked().dose(), 2) + " mL for each; worst off by "
                        + Figure.decimals(100.0 * manifold.worstError(), 1) + " %.");
            }
            PreDilution diluted = found.preDilution();
            if (diluted != null) {
                page.blank();
                page.heading("For a single batch, with a dilution first");
                diluted.dilutions().forEach(each -> page.paragraph(words(each)));
                page.paragraph("Then " + drops(diluted.choice()) + " drops; worst off by "
                        + Figure.decimals(100.0 * diluted.choice().worstError(), 1) + " %.");
            }
            found.findings().stream()
                    .filter(finding -> finding.severity() != Severity.STOP)
                    .forEach(finding -> told(page, finding));
        }

        private static void told(Page page, Finding finding) {
            page.blank();
            page.finding(finding);
        }

        private Table table() {
            Table table = new Table();
            found.asked().oils().forEach(oil -> table.figure(oil.name()));
            table.figure("batches")
                    .figure("carrier mL")
                    .figure("% vol with oils")
                    .figure("worst off %")
                    .figure("left over mL");
            for (PlanEssence.Made made : found.choices()) {
                Choice choice = made.choice();
                String[] cells = new String[found.asked().oils().size() + 5];
                int at = 0;
                for (int count : choice.drops()) {
                    cells[at++] = Integer.toString(count);
                }
                cells[at++] = Integer.toString(choice.batches());
                cells[at++] = Figure.decimals(made.carrier(), 2);
                cells[at++] = Figure.decimals(made.strength(), 1);
                cells[at++] = Figure.decimals(100.0 * choice.worstError(), 1);
                cells[at] = Figure.decimals(choice.leftOver(), 2);
                table.row(cells);
            }
            return table;
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

        private String words(PreDilution.Dilution each) {
            String name = found.asked().oils().get(each.oil()).name();
            return name + " 1 in " + each.oneIn() + ": " + each.drops() + (each.drops() == 1 ? " drop" : " drops")
                    + " and " + Figure.decimals(each.spirit(), 2)
                    + " g (" + Figure.decimals(each.spirit() / found.carrierDensity(), 2) + " mL) of the carrier, "
                    + Figure.decimals(each.total(), 2) + " g in all; count its drops below from this.";
        }

        private static String drops(Choice choice) {
            return String.join(
                    " : ", choice.drops().stream().map(String::valueOf).toList());
        }
    }
}

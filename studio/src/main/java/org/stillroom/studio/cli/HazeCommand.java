package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Clarified;
import org.stillroom.core.clarity.Cream;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.HazeFields;
import org.stillroom.studio.answer.desk.HazeAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.usecase.TellHaze;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Tells what a haze most likely is by what is seen of it, whether cream keeps, and what clarifying takes. */
final class HazeCommand extends Subcommand {
    @Option(names = "--recipe", description = "a recipe file with cream, in place of fat, strength and acid")
    private @Nullable Path recipe;

    private final PartOptions options = new PartOptions(HazeAsked.PARTS);

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        HazeAsked asked = HazeAsked.of(options.typed(), Dashes.TWO, new Objections());
        return new Diagnosis(asked.answer(recipe == null ? null : RecipeArgument.worked(recipe, Workings.NONE)));
    }

    private record Diagnosis(TellHaze.Found found) implements Answer {
        @Override
        public Fields fields() {
            return HazeFields.of(found);
        }

        @Override
        public void print(Page page) {
            if (found.isOpen()) {
                page.heading("What is true of it? Give the words as --seen fruit,cold");
                Table table = new Table().text("").text("");
                OtherHazes.asked().forEach(table::row);
                page.table(table);
            }
            if (!found.seen().isEmpty()) {
                page.heading("Most likely first");
                found.likely().forEach(haze -> haze(page, haze));
            }
            if (found.cream() != null) {
                cream(page, found.cream());
            }
            if (found.clarified() != null) {
                clarified(page, found.clarified());
            }
            found.findings().forEach(finding -> {
                page.blank();
                page.finding(finding);
            });
        }

        private static void haze(Page page, OtherHazes.Haze haze) {
            page.blank();
            page.paragraph(haze.name() + " (" + haze.standing().label() + ")");
            page.paragraph("  Make sure: " + haze.test());
            page.paragraph("  Try first: " + haze.tryFirst());
            haze.then().forEach(way -> page.paragraph("  " + words(way)));
        }

        private static String words(OtherHazes.Way way) {
            OtherHazes.Dose dose = way.dose();
            return way.name() + ": "
                    + (dose.isNone()
                            ? ""
                            : range(dose.least(), dose.most(), OtherHazes.Dose.decimals(dose.most())) + " " + unit(dose)
                                    + "/L, ")
                    + way.how() + "; " + way.waiting() + "; about " + Figure.decimals(way.lossPercent(), 0)
                    + " % is lost"
                    + (way.allergens().isEmpty() ? "" : "; allergens: " + way.allergens());
        }

        private static String unit(OtherHazes.Dose dose) {
            return dose.unit().equals("ml") ? "mL" : dose.unit();
        }

        private static String range(double least, double most, int decimals) {
            String from = Figure.decimals(least, decimals);
            String to = Figure.decimals(most, decimals);
            return from.equals(to) ? from : from + " to " + to;
        }

        private static void cream(Page page, Cream cream) {
            page.heading(
                    "With its cream it " + words(cream.keeping()) + " (a rule of thumb; a jar on the shelf decides)");
            Table table = new Table().text("").figure("").text("").text("");
            for (Cream.Sign sign : cream.signs()) {
                table.row(
                        sign.limit().cause().label(),
                        Figure.decimals(sign.value(), 1),
                        sign.limit().cause().unit(),
                        sign.keeping().label() + "; keeps below "
                                + Figure.decimals(sign.limit().keepsBelow(), 0)
                                + ", breaks from "
                                + Figure.decimals(sign.limit().breaksFrom(), 0) + " ("
                                + sign.limit().standing().label() + ")");
            }
            page.table(table);
            cream.signs().stream()
                    .filter(sign -> sign.keeping() != Cream.Keeping.KEEPS)
                    .forEach(sign -> page.paragraph(
                            sign.limit().why() + " " + sign.limit().remedy()));
        }

        private static String words(Cream.Keeping keeping) {
            return switch (keeping) {
                case KEEPS -> "keeps";
                case DOUBTFUL -> "may break";
                case BREAKS -> "breaks";
            };
        }

        private static void clarified(Page page, Clarified clarified) {
            OtherHazes.Way way = clarified.way();
            page.heading(way.name() + " for "
                    + Figure.decimals(clarified.volume().millilitres(), 0) + " mL, against " + way.takesOut());
            Table table = new Table().text("").figure("").text("");
            if (!way.dose().isNone()) {
                table.row(
                        "take",
                        range(clarified.least(), clarified.most(), OtherHazes.Dose.decimals(clarified.most())),
                        unit(way.dose()));
            }
            if (clarified.mostWater() > 0.0) {
                table.row("water that comes with it", range(clarified.leastWater(), clarified.mostWater(), 0), "mL");
            }
            table.row(
                    "left after a loss of " + Figure.decimals(way.lossPercent(), 0) + " %",
                    range(clarified.leftAtLeast(), clarified.leftAtMost(), 0),
                    "mL");
            OptionalDouble least = clarified.afterLeast();
            OptionalDouble most = clarified.afterMost();
            if (least.isPresent() && most.isPresent()) {
                table.row("strength after", range(most.getAsDouble(), least.getAsDouble(), 1), "% vol");
            }
            page.table(table);
            page.paragraph("How: " + way.how() + ". Wait: " + way.waiting() + ".");
            page.paragraph(
                    way.allergens().isEmpty()
                            ? "No allergen comes with it as a rule; its label decides."
                            : "Allergens: " + way.allergens() + ".");
            page.paragraph("Dose and loss: " + way.standing().label()
                    + (way.source().isEmpty() ? "" : " (" + way.source() + ")") + ". Try it on 100 mL first.");
        }
    }
}

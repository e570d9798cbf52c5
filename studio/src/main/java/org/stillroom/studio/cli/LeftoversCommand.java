package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.leftovers.UseUp;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.LeftoversFields;
import org.stillroom.studio.usecase.left.Candidate;
import org.stillroom.studio.usecase.left.CouldMake;
import org.stillroom.studio.usecase.left.LeftOver;
import org.stillroom.studio.usecase.left.PlanUseUp;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what is left on a shelf and what could be made of it. */
final class LeftoversCommand extends Subcommand {
    @Parameters(arity = "0..*", paramLabel = "RECIPE", description = "recipe files to choose from")
    private List<Path> files = new ArrayList<>();

    @Mixin
    private ShelfOptions shelf = new ShelfOptions();

    @Option(
            names = "--most",
            defaultValue = "2 L",
            paramLabel = "VOLUME",
            description = "of a liqueur at most (default: ${DEFAULT-VALUE})")
    private String most = "";

    @Option(
            names = "--use-up",
            paramLabel = "NAME[=DOSE]",
            description = "an extract to use up; up to three together, each with the most a litre may hold of it")
    private List<String> useUp = new ArrayList<>();

    @Option(
            names = "--to",
            paramLabel = "STRENGTH",
            defaultValue = "28 %",
            description = "of the liqueur that uses it up")
    private String strength = "";

    @Option(names = "--sugar", paramLabel = "SUGAR", defaultValue = "200 g/L", description = "of that liqueur")
    private String sugar = "";

    /** What the use case calls what these options say. */
    private static final Map<String, String> OPTIONS =
            Map.of("extracts", "--use-up", "strength", "--to", "sugar", "--sugar", "most", "--most");

    @Override
    protected Answer answer(Workings workings) {
        ShelfOptions.Shelf open = shelf.open().with(files);
        List<LeftOver> left = LeftOver.of(open.lots(), LocalDate.now(ZoneId.systemDefault()));
        if (useUp.isEmpty()) {
            return new Ranked(
                    left,
                    open.recipes().size(),
                    CouldMake.ranked(open.recipes(), left, open.lots(), millilitres(open.ounce()), open.grounds()),
                    LeftOver.told(open.lots(), left, open.grounds()));
        }
        PlanUseUp.Wish wish = new PlanUseUp.Wish(useUp, strength, sugar, most);
        PlanUseUp.Outcome outcome = PlanUseUp.answer(wish, left, open.recipes(), open.ounce(), open.grounds());
        if (outcome instanceof PlanUseUp.Outcome.Refused refused) {
            throw new Refusal(
                    Exit.WRONG_INPUT,
                    refused.problems().stream()
                            .map(each -> each.at(OPTIONS.getOrDefault(each.where(), each.where())))
                            .toList());
        }
        return new Used((PlanUseUp.Outcome.Found) outcome);
    }

    private double millilitres(OunceMeaning ounce) {
        if (new QuantityText(ounce).volume(most) instanceof Understanding.Understood<Volume> understood
                && understood.typed().value().millilitres() > 0.0) {
            return understood.typed().value().millilitres();
        }
        throw Refusal.wrongInput("--most", "\"" + most + "\" is no volume.", "Write it such as 2L.");
    }

    private static String amount(OptionalDouble millilitres, double grams) {
        return millilitres.isPresent()
                ? QuantityWords.metric(new Volume(millilitres.getAsDouble()))
                : QuantityWords.metric(new Mass(grams));
    }

    private record Ranked(List<LeftOver> left, int recipes, CouldMake.Ranking ranking, List<Finding> findings)
            implements Answer {
        @Override
        public Fields fields() {
            return LeftoversFields.of(left, ranking, findings);
        }

        @Override
        public void print(Page page) {
            page.heading("What is left");
            if (left.isEmpty()) {
                findings.forEach(page::finding);
                return;
            }
            page.table(table());
            findings.forEach(page::finding);
            page.paragraph("How long things keep is common practice, no source: look, smell and taste.");
            page.blank();
            page.heading("What could be made of it");
            if (recipes == 0) {
                page.paragraph(
                        "No recipe is named. Add recipe files to see which empty most of it, or --use-up with one of the"
                                + " names above for a liqueur that takes it all.");
            } else if (ranking.could().isEmpty() && ranking.not().isEmpty()) {
                page.paragraph(
                        "None of the recipes takes any of it. --use-up with one of the names above plans a liqueur that"
                                + " takes it all.");
            }
            ranking.could().forEach(could -> print(could, page));
            for (Candidate not : ranking.not()) {
                page.paragraph(not.title() + " cannot be made as it is.");
                not.problems().forEach(page::finding);
            }
        }

        private Table table() {
            Table table = new Table()
                    .text("extract")
                    .figure("left")
                    .figure("open, months")
                    .figure("keeps, months")
                    .text("");
            for (LeftOver each : left) {
                table.row(
                        each.name(),
                        amount(each.millilitres(), each.grams()),
                        months(each.monthsOpen(), 0),
                        months(each.ageing().months(), each.ageing().months().orElse(1.0) < 1.0 ? 1 : 0),
                        each.isPast() ? "longer than usual" : "");
            }
            return table;
        }

        private static String months(OptionalDouble months, int decimals) {
            return months.isPresent() ? Figure.decimals(months.getAsDouble(), decimals) : "–";
        }

        private static void print(CouldMake could, Page page) {
            page.paragraph(could.recipe().title() + ": "
                    + QuantityWords.metric(new Volume(could.plan().millilitres())) + "; bottles emptied: "
                    + could.whole() + ", used in part: " + could.inPart()
                    + (could.isReached() ? "." : "; its target cannot be reached with what is on the shelf."));
            page.paragraph("  takes " + could.uses().stream().map(Ranked::words).collect(Collectors.joining(", ")));
            page.paragraph("  buy "
                    + (could.buy().isEmpty()
                            ? "nothing"
                            : could.buy().stream()
                                    .map(item -> item.name() + " " + QuantityWords.metric(new Mass(item.boughtGrams())))
                                    .collect(Collectors.joining(", "))));
        }

        private static String words(CouldMake.Use use) {
            return use.of().name() + " " + amount(use.of().millilitres(use.grams()), use.grams()) + " ("
                    + Figure.decimals(100.0 * use.part(), 0) + " %)";
        }
    }

    private record Used(PlanUseUp.Outcome.Found found) implements Answer {
        @Override
        public Exit exit() {
            return found.worked().isStopped() ? Exit.OUT_OF_REACH : Exit.DONE;
        }

        @Override
        public Fields fields() {
            return LeftoversFields.of(found);
        }

        @Override
        public void print(Page page) {
            UseUp useUp = found.useUp();
            page.heading(QuantityWords.metric(new Volume(useUp.plan().millilitres()))
                    + (useUp.isAll() ? ", and nothing is left" : ", and not all goes in"));
            Table table = new Table().text("take").figure("").figure("by mass").figure("of what is left");
            for (int i = 0; i < useUp.plan().lines().size(); i++) {
                PlannedLine line = useUp.plan().lines().get(i);
                table.row(
                        line.name(),
                        line.millilitres().isPresent()
                                ? QuantityWords.metric(
                                        new Volume(line.millilitres().getAsDouble()))
                                : "",
                        QuantityWords.metric(new Mass(line.grams())),
                        part(i, useUp));
            }
            page.table(table);
            found.findings().forEach(finding -> {
                page.blank();
                page.finding(finding);
            });
            page.blank();
            page.heading("As a recipe file");
            found.text().lines().forEach(page::verbatim);
        }

        private static String part(int line, UseUp useUp) {
            return line < useUp.used().size() ? useUp.used().get(line).percent() + " %" : "";
        }
    }
}

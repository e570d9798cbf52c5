package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.CarriedPlant;
import org.stillroom.core.ingredient.DoseUnits;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.plan.Band;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.Wait;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.StartingPoints;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.shopping.Money;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.Minding;
import org.stillroom.studio.usecase.WorkedPlan;

/** A plan for a person: what to take, what it will be and how sure, what to do, what to know. */
final class PlanPage {
    /** A dose that is measured so far off what was asked for is told beside it. Own judgement. */
    private static final double SHOWN = 0.01;

    private final PlanAnswer answer;
    private final Page page;
    private final Minding minding;

    PlanPage(PlanAnswer answer, Page page) {
        this.answer = answer;
        this.page = page;
        this.minding = Minding.of(answer.worked().measured(), answer.worked().grounds());
    }

    void print() {
        asked();
        for (WorkedPlan.WorkedStage stage : answer.worked().stages()) {
            stage(stage);
        }
        plan(answer.worked(), null);
        if (answer.exploration() != null) {
            exploration(answer.exploration());
        }
        if (answer.shopping() != null) {
            shopping(answer.shopping());
        }
        for (Finding finding : answer.notes()) {
            finding(finding);
        }
        for (Finding finding : answer.worked().findings()) {
            if (finding.severity() != Severity.STOP && !Slips.isOpen(finding)) {
                finding(finding);
            }
        }
    }

    /** Doses that are hardly meant come before all figures: whoever measures by the figures would be past them. */
    private void asked() {
        List<Slips.Asked> asked = Slips.asked(answer.worked().plan());
        if (asked.isEmpty()) {
            return;
        }
        page.heading("Is this meant? Nothing is made of it before you put it right or say so.");
        for (Slips.Asked each : asked) {
            finding(each.finding());
        }
        page.blank();
    }

    private void finding(Finding finding) {
        page.blank();
        page.finding(finding);
    }

    private void stage(WorkedPlan.WorkedStage stage) {
        Plan plan = stage.worked().plan();
        page.paragraph("First make " + stage.stage().ingredient() + ":");
        plan(stage.worked(), stage.stage().ingredient());
        Typed<Wait> rest = plan.recipe().rest();
        Typed<Loss> loss = plan.recipe().loss();
        page.blank();
        page.paragraph("Leaves " + millilitres(stage.stage().yieldMillilitres()) + " at 20 °C"
                + (loss == null ? "" : " after a loss of " + loss.text())
                + (rest == null ? "" : ", ready after " + rest.text()) + ".");
        for (Finding finding : stage.worked().findings()) {
            if (!Slips.isOpen(finding)) {
                finding(finding);
            }
        }
        page.blank();
    }

    /** @param stage name under which what is made is used, or null for the recipe itself */
    private void plan(WorkedPlan worked, @Nullable String stage) {
        page.heading(worked.plan().recipe().title());
        for (Finding finding : worked.findings()) {
            if (finding.severity() == Severity.STOP) {
                finding(finding);
            }
        }
        if (!worked.plan().reached()) {
            page.blank();
            page.paragraph("The nearest that can be reached:");
        }
        page.blank();
        amounts(worked);
        doses(worked);
        plants(worked);
        page.blank();
        figures(worked);
        page.blank();
        steps(worked.steps(), stage);
    }

    private void amounts(WorkedPlan worked) {
        Table table = new Table()
                .text("in order of mixing")
                .figure("take")
                .text("with")
                .figure(mass("exactly"))
                .figure(answer.units() == Units.US ? "fl oz at 20 °C" : "mL at 20 °C")
                .figure(mass("scale not tared"));
        for (Measured.RunningTotal total : worked.runningTotals()) {
            MeasuredLine line = worked.measured().lines().get(total.line());
            String volume = line.exact().millilitres().isPresent()
                    ? volume(line.exact().millilitres().getAsDouble())
                    : "–";
            table.row(
                    line.name(),
                    answer.units() == Units.US
                            ? line.reading().us()
                            : line.reading().words(),
                    line.reading().instrument(),
                    grams(line.exact().grams()),
                    volume,
                    grams(total.total()));
        }
        page.table(table);
    }

    /** Tells what is dosed in every unit in which people dose. */
    private void doses(WorkedPlan worked) {
        Table table = new Table()
                .text("doses, per litre")
                .figure("drops")
                .figure("mL")
                .figure("µL")
                .figure("g")
                .figure("mg");
        boolean any = false;
        for (MeasuredLine line : worked.measured().lines()) {
            DoseUnits exact = worked.dose(line.exact());
            DoseUnits measured = worked.dose(line);
            if (exact != null && measured != null && Math.abs(measured.grams() / exact.grams() - 1.0) > SHOWN) {
                dose(table, line.name() + ", as measured", measured);
                dose(table, line.name() + ", asked for", exact);
            } else if (exact != null) {
                dose(table, line.name(), exact);
            }
            any |= exact != null;
        }
        if (any) {
            page.blank();
            page.table(table);
        }
    }

    private static void dose(Table table, String name, DoseUnits dose) {
        table.row(
                name,
                QuantityWords.figures(dose.drops()),
                figures(dose.millilitres()),
                figures(dose.microlitres()),
                QuantityWords.figures(dose.grams()),
                QuantityWords.figures(dose.milligrams()));
    }

    /** Tells how much plant the extracts bring, where their maker said how much they carry. */
    private void plants(WorkedPlan worked) {
        Table table = new Table()
                .text("plant in it")
                .text("of")
                .text("g to mL, or g/L")
                .figure("g per litre");
        boolean any = false;
        for (MeasuredLine line : worked.measured().lines()) {
            CarriedPlant plant = worked.plant(line.exact());
            if (plant != null) {
                any = true;
                table.row(line.name(), plant.plant(), plant.ratio(), QuantityWords.figures(plant.gramsPerLitre()));
            }
        }
        if (any) {
            page.blank();
            page.table(table);
        }
    }

    private static String figures(OptionalDouble volume) {
        return volume.isPresent() ? QuantityWords.figures(volume.getAsDouble()) : "–";
    }

    private String mass(String what) {
        return what + (answer.units() == Units.US ? ", oz" : ", g");
    }

    private String grams(double grams) {
        return answer.units() == Units.US
                ? QuantityWords.fixed(grams / Mass.GRAMS_PER_OUNCE, 2)
                : QuantityWords.fixed(grams, grams < 10.0 ? 2 : 1);
    }

    private String volume(double millilitres) {
        return answer.units() == Units.US
                ? QuantityWords.fixed(millilitres / Volume.MILLILITRES_PER_US_OUNCE, 2)
                : QuantityWords.fixed(millilitres, millilitres < 10.0 ? 2 : 1);
    }

    private String millilitres(double millilitres) {
        return answer.units() == Units.US
                ? QuantityWords.us(new Volume(millilitres))
                : QuantityWords.fixed(millilitres, 0) + " mL";
    }

    private void figures(WorkedPlan worked) {
        org.stillroom.core.liquid.Figures figures = worked.figures();
        Table table = new Table()
                .text("what it will be")
                .figure("")
                .text("")
                .text("doubt")
                .text("nine times in ten")
                .text("mostly from");
        row(
                table,
                org.stillroom.core.liquid.Figure.STRENGTH,
                worked,
                worked.bands().strength());
        if (figures.value(org.stillroom.core.liquid.Figure.SUGAR) > 0.0) {
            row(
                    table,
                    org.stillroom.core.liquid.Figure.SUGAR,
                    worked,
                    worked.bands().sugar());
        }
        if (figures.value(org.stillroom.core.liquid.Figure.ACIDITY) > 0.0) {
            row(
                    table,
                    org.stillroom.core.liquid.Figure.ACIDITY,
                    worked,
                    worked.bands().acidity());
        }
        row(
                table,
                org.stillroom.core.liquid.Figure.VOLUME_20C,
                worked,
                worked.bands().volume());
        row(table, org.stillroom.core.liquid.Figure.DENSITY, worked, null);
        if (figures.has(org.stillroom.core.liquid.Figure.FREEZING_POINT)) {
            row(table, org.stillroom.core.liquid.Figure.FREEZING_POINT, worked, null);
        }
        page.table(table);
        sugarOfOthers(figures.value(org.stillroom.core.liquid.Figure.SUGAR));
        rounding(worked);
    }

    private void row(Table table, org.stillroom.core.liquid.Figure figure, WorkedPlan worked, @Nullable Band band) {
        double value = worked.figures().value(figure);
        double half = band == null ? worked.figures().doubt(figure) : 0.5 * (band.high() - band.low());
        int decimals = Math.min(figure.decimals(), 1);
        String unit = figure.unit().replace("the temperature asked", "20 °C");
        table.row(
                figure.label(),
                Figure.decimals(value, decimals),
                unit,
                DoubtWord.of(figure, new Estimate(value, half)).label(),
                band == null
                        ? "± " + Figure.decimals(half, decimals)
                        : Figure.decimals(band.low(), decimals) + " to " + Figure.decimals(band.high(), decimals),
                band == null ? "the formulas" : band.mostFrom());
    }

    private void sugarOfOthers(double gramsPerLitre) {
        StartingPoints.Row row = StartingPoints.matching(StartingPoints.Of.SUGAR, gramsPerLitre);
        if (row != null) {
            page.paragraph(
                    "Sugar usual in " + row.kind() + " liqueurs: " + row.words() + " (common practice, no source).");
        }
    }

    private void rounding(WorkedPlan worked) {
        double strength = worked.measured().effect().strength();
        double sugar = worked.measured().effect().sugar();
        double volume = worked.measured().effect().millilitres();
        page.paragraph("Rounding to what the measures show moves strength by " + Figure.decimals(strength, 2)
                + " % vol, sugar by " + Figure.decimals(sugar, 1) + " g/L, volume by " + Figure.decimals(volume, 1)
                + " mL. Mixing shrinks it by " + Figure.decimals(worked.blend().contraction(), 0) + " mL.");
    }

    private void steps(List<MixingStep> steps, @Nullable String stage) {
        page.heading("Steps");
        int number = 1;
        int own = 0;
        for (MixingStep step : steps) {
            own += step.act() == MixingStep.Act.OWN ? 1 : 0;
            page.paragraph(number + ". " + step.what() + (step.why().isEmpty() ? "" : " (" + step.why() + ")")
                    + (step.act() == MixingStep.Act.OWN ? toMind(stage, own) : ""));
            number++;
        }
    }

    /** What is done is warned of where it is read; the whole of it stands below. */
    private String toMind(@Nullable String stage, int ownStep) {
        String verdicts = minding.ofOwnStep(stage, ownStep).stream()
                .map(Finding::verdict)
                .distinct()
                .collect(Collectors.joining(", "));
        return verdicts.isEmpty() ? "" : " To mind: " + verdicts + ".";
    }

    private void exploration(Exploration exploration) {
        page.blank();
        page.heading("What if the spirit is another");
        if (exploration.rows().isEmpty()) {
            page.paragraph("No free line is a spirit, so that there is nothing to change.");
            return;
        }
        Table table = new Table()
                .figure("% vol")
                .text("reaches it")
                .figure("gives % vol")
                .figure("sugar g/L")
                .text("amounts, g");
        for (Exploration.Row row : exploration.rows()) {
            List<String> amounts = new ArrayList<>();
            row.lines().forEach(line -> amounts.add(line.name() + " " + grams(line.grams())));
            @Nullable Essentials result = row.result();
            table.row(
                    QuantityWords.plain(row.strength().percent()),
                    row.reached() ? "yes" : "no",
                    result == null ? "–" : Figure.decimals(result.strength(), 1),
                    result == null ? "–" : Figure.decimals(result.sugar(), 1),
                    String.join(", ", amounts));
        }
        page.table(table);
    }

    private void shopping(ShoppingList list) {
        page.blank();
        page.heading("Shopping list");
        Table table = new Table()
                .text("")
                .figure(mass("goes in"))
                .figure("buy")
                .figure("costs")
                .figure(mass("left over"));
        for (ShoppingList.Item item : list.items()) {
            String pack = item.pack() == null
                    ? ""
                    : item.packs() + " × " + item.pack().text();
            String buy = item.pack() == null && item.boughtGrams() > 0.0 ? grams(item.boughtGrams()) : pack;
            table.row(
                    item.name(),
                    grams(item.neededGrams()),
                    item.boughtGrams() > 0.0 ? buy : "nothing",
                    item.atTheTill() == null ? "not known" : words(item.atTheTill()),
                    grams(item.leftGrams()));
        }
        page.table(table);
        page.paragraph("What goes in costs " + sum(list.used()) + "; at the till " + sum(list.atTheTill()) + "."
                + (list.unpriced().isEmpty()
                        ? ""
                        : " Without a known price: " + String.join(", ", list.unpriced()) + "."));
    }

    static String sum(List<Money> sums) {
        return sums.isEmpty()
                ? "nothing that is known"
                : String.join(" + ", sums.stream().map(PlanPage::words).toList());
    }

    private static String words(Money money) {
        return QuantityWords.fixed(money.amount(), 2) + " " + money.currency();
    }
}

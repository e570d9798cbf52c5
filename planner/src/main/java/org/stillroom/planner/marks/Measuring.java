package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * Turns the exact amounts of a plan into what the maker's instruments show.
 *
 * <p>Amounts that the maker wrote stay as they were typed, a vessel is made up to its mark, and all others are rounded to marks
 * together, so that the finished liquid stays closest to the plan's: a strength off by 0.05 % vol weighs as much as sugar off
 * by 0.5 g/L, acidity by 0.05 g/L, volume by 0.1 %, a dose by 1 %. Volumes are read at the room's temperature. Method:
 * docs/how-it-works/measures.md.
 */
public final class Measuring {
    private static final double NOTHING = 1e-9;

    private final Plan plan;
    private final Recipe recipe;
    private final Temperature room;
    private final List<Finding> findings = new ArrayList<>();
    private final Bench bench;
    private final Batch batch;
    private final @Nullable MeasuredLine[] lines;

    /** Returns whether a finding says that a dose cannot be measured well, which has to be known with the instrument in hand. */
    public static boolean isOfDose(Finding finding) {
        return finding.rule().equals(SmallDose.NAME) || finding.rule().equals(UnevenDrops.NAME);
    }

    private Measuring(Plan plan) {
        this.plan = plan;
        this.recipe = plan.recipe();
        this.room = usableRoom();
        this.bench = new Bench(recipe, findings);
        this.batch = new Batch(plan);
        this.lines = new MeasuredLine[plan.lines().size()];
    }

    /** Returns the plan as it is measured with the recipe's measures. */
    public static Measured of(Plan plan) {
        return new Measuring(plan).measured();
    }

    private Temperature usableRoom() {
        Typed<Temperature> said = recipe.room();
        if (said == null) {
            return Temperature.TWENTY_CELSIUS;
        }
        try {
            for (PlannedLine line : plan.lines()) {
                line.millilitresAt(said.value());
            }
            return said.value();
        } catch (IllegalArgumentException outOfRange) {
            findings.add(Finding.of(
                    "room-out-of-range",
                    Severity.CAUTION,
                    "room",
                    "not used",
                    "What volumes are at " + said.text() + " is not known; they are shown for 20 °C.",
                    "Measure between 0 and 40 °C, or by weight."));
            return Temperature.TWENTY_CELSIUS;
        }
    }

    private Measured measured() {
        List<Rounding.Choice> choices = new ArrayList<>();
        for (int i = 0; i < lines.length; i++) {
            LineAmount amount = plan.lines().get(i).line().amount();
            if (plan.lines().get(i).grams() <= NOTHING * plan.liquid().total()) {
                lines[i] = nothing(plan.lines().get(i));
            } else if (amount instanceof LineAmount.Free || amount instanceof LineAmount.PerLitre) {
                choices.add(choice(i, amount instanceof LineAmount.Free));
            } else if (!(amount instanceof LineAmount.MakeUp)) {
                lines[i] = typed(i);
            }
        }
        List<Take> takes = Rounding.together(batch, choices);
        double[] grams = batch.exactGrams();
        for (int i = 0; i < lines.length; i++) {
            grams[i] = lines[i] == null ? grams[i] : lines[i].grams();
        }
        for (int i = 0; i < takes.size(); i++) {
            Rounding.Choice choice = choices.get(i);
            lines[choice.line()] = rounded(choice, takes.get(i));
            grams[choice.line()] = takes.get(i).grams();
        }
        Essentials result = batch.result(grams);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i] == null) {
                lines[i] = new ToTheMark(plan, bench, findings).measured(i, room, grams[i]);
            }
        }
        RoundingEffect effect = RoundingEffect.between(batch.exact(), result);
        return new Measured(plan, List.of(lines), batch.exact(), result, effect, findings);
    }

    private String where(int line) {
        return "line " + (line + 1) + ", " + plan.lines().get(line).name();
    }

    private static MeasuredLine nothing(PlannedLine line) {
        Reading none = Reading.offTheMarks(new Mass(0.0), "", "0 g", Reading.Manner.NOTHING);
        return new MeasuredLine(line, none, line.grams(), 0.0, null);
    }

    /** A dose keeps to the marks next to it; what is free may go one mark further for the sake of the whole. */
    private Rounding.Choice choice(int line, boolean free) {
        Portion portion = Portion.of(plan.lines().get(line), room);
        return new Rounding.Choice(line, portion, bench.forLine(portion, where(line)), free ? 2 : 1);
    }

    private MeasuredLine rounded(Rounding.Choice choice, Take take) {
        String where = where(choice.line());
        ofDose(where, choice.portion(), take);
        add(Bench.tooLarge(take.reading(), where, choice.portion().line().name()));
        return new MeasuredLine(
                choice.portion().line(), take.reading(), take.grams(), take.toleranceGrams(), take.source());
    }

    /** What whole drops leave of a dose says more than that they may leave half a drop. */
    private void ofDose(String where, Portion portion, Take take) {
        Finding uneven = UnevenDrops.of(where, portion, take, plan.millilitres());
        add(uneven == null ? SmallDose.of(where, portion, take, plan.millilitres()) : uneven);
    }

    private void add(@Nullable Finding finding) {
        if (finding != null) {
            findings.add(finding);
        }
    }

    private MeasuredLine typed(int line) {
        TypedAmount typed = TypedAmount.of(plan.lines().get(line));
        Portion portion = Portion.of(plan.lines().get(line), Temperature.TWENTY_CELSIUS);
        Instrument shows = typed.shownBy(bench, portion);
        Instrument used = shows == null ? bench.forLine(portion, where(line)) : shows;
        Take nearest = used.nearest(portion);
        boolean readsElse =
                !plain(typed.words()).equals(plain(nearest.reading().words())); // to the digits that are told
        if (shows == null && typed.manner() == Reading.Manner.AS_TYPED && readsElse) {
            findings.add(notOnTheMarks(line, typed.words(), nearest.reading()));
        }
        if (typed.isSplitDrops()) {
            ofDose(where(line), portion, nearest);
            return new MeasuredLine(
                    portion.line(), nearest.reading(), nearest.grams(), nearest.toleranceGrams(), nearest.source());
        }
        // Who writes "1 cup" has chosen the cup: the spread tells what it leaves open.
        if (!(shows instanceof SizedSet)) {
            add(SmallDose.of(where(line), portion, nearest, plan.millilitres()));
        }
        double tolerance = nearest.toleranceGrams() + (shows == null ? nearest.halfMarkGrams() : 0.0);
        Reading reading = shows == null ? typed.offTheMarks(used) : typed.reading(nearest.reading());
        return new MeasuredLine(portion.line(), reading, portion.grams(), tolerance, nearest.source());
    }

    private static String plain(String words) {
        return words.replace("\u00a0", "").replace(" ", "");
    }

    private Finding notOnTheMarks(int line, String text, Reading nearest) {
        return Finding.of(
                "not-on-the-marks",
                Severity.NOTE,
                where(line),
                "not on the marks",
                "None of your measures shows " + text + "; on " + nearest.instrument() + " it is nearest to "
                        + nearest.words() + ".",
                "Write the amount as your measure shows it, and the plan counts with that.");
    }
}

package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Scaling;
import org.stillroom.core.reference.Finding;

/** Lays the amounts of a way out as a plan: what is in, then what is still to be poured, as the instruments can take it. */
final class Onward {
    /** Less than this part of the whole is nothing to pour. */
    private static final double NOTHING = 1e-7;
    /** A dose that differs by no more than this part is as planned: what {@code Measuring} lets rounding cost. */
    private static final double SAME_DOSE = 0.01;

    /** Adding less than this part of a free line moves no figure by what a measure shows. */
    private static final double WORTH_ADDING = 1e-3;

    private final Plan before;
    private final Problem problem;
    private final Map<Integer, Replanning.Poured> poured;
    private final double goal;
    private final List<PlannedLine> lines = new ArrayList<>();
    private final List<PlannedLine> furtherLines = new ArrayList<>();
    private final List<Way.Part> parts = new ArrayList<>();
    private final List<Way.Part> furtherParts = new ArrayList<>();

    Onward(Plan before, Problem problem, Map<Integer, Replanning.Poured> poured, double goal) {
        this.before = before;
        this.problem = problem;
        this.poured = poured;
        this.goal = goal;
    }

    /** @param keepsWhatIsIn whether nothing is added to lines that are done */
    Way way(Way.Kind kind, Solution solution, boolean keepsWhatIsIn) {
        double total = 0.0;
        for (double grams : solution.grams()) {
            total += grams;
        }
        for (int i = 0; i < solution.grams().length; i++) {
            addLine(i, solution, NOTHING * total, keepsWhatIsIn);
        }
        lines.addAll(furtherLines);
        parts.addAll(furtherParts);
        Solution real = new Solution(solution.grams(), volume(), 0.0);
        List<Way.Figure> figures = figures(kind, real);
        boolean reached = figures.stream().noneMatch(Way.Figure::missed);
        return new Way(kind, plan(real.millilitres(), reached), parts, figures, shares(real));
    }

    private void addLine(int index, Solution solution, double nothing, boolean keepsWhatIsIn) {
        PlannedLine as = before.lines().get(index);
        double grams = solution.grams()[index];
        Replanning.Poured in = poured.get(index);
        if (in == null) {
            lines.add(new PlannedLine(line(as, grams, solution.millilitres()), as.ingredient(), grams));
            parts.add(new Way.Part(index, false));
            return;
        }
        Typed<Amount> typed = new Typed<>(QuantityWords.metric(new Mass(in.grams())), new Mass(in.grams()));
        LineAmount amount = new LineAmount.Fixed(typed);
        lines.add(new PlannedLine(as.line().of(amount), as.ingredient(), in.grams()));
        parts.add(new Way.Part(index, true));
        double further = grams - in.grams();
        if (further > Math.max(nothing, smallest(index) * grams) && !(keepsWhatIsIn && in.done())) {
            furtherLines.add(new PlannedLine(line(as, further, solution.millilitres()), as.ingredient(), further));
            furtherParts.add(new Way.Part(index, false));
        }
    }

    /** Returns the least part of a line that is worth adding to what is in: less is what rounding left. */
    private double smallest(int index) {
        return problem.lines()[index].canVary() ? WORTH_ADDING : SAME_DOSE;
    }

    /** Returns the line as it is to be poured now: an amount as typed stays while it is just that, else it is rounded to marks. */
    private static Line line(PlannedLine as, double grams, double millilitres) {
        if (!(as.line().amount() instanceof LineAmount.Fixed fixed)
                || Math.abs(grams - as.grams()) <= NOTHING * as.grams()) {
            return as.line();
        }
        if (fixed.amount().value() instanceof Drops drops) {
            double count = drops.count() * grams / as.grams() * 1000.0 / millilitres;
            String text = QuantityWords.fixed(count, 1) + " drops/L";
            return as.line().of(new LineAmount.PerLitre(new Typed<>(text, new Dose(new Drops(count)))));
        }
        return as.line().of(new LineAmount.Free());
    }

    private Contents liquid() {
        Contents liquid = Contents.NONE;
        for (PlannedLine line : lines) {
            liquid = liquid.plus(line.ingredient().perGram().times(line.grams()));
        }
        return liquid;
    }

    private double volume() {
        return VolumeModel.atTwenty().millilitres(liquid().toGrams());
    }

    private Plan plan(double millilitres, boolean reached) {
        Typed<Span> volume =
                new Typed<>(QuantityWords.fixed(millilitres, 0) + " ml", Span.exactly(Math.max(0.0, millilitres)));
        Recipe asking = Scaling.withLines(
                before.recipe(), volume, lines.stream().map(PlannedLine::line).toList());
        List<Finding> findings = Remarks.onVessel(asking.vessel(), millilitres);
        return new Plan(asking, lines, liquid(), millilitres, reached, before.stages(), findings);
    }

    private List<Way.Figure> figures(Way.Kind kind, Solution real) {
        double[] grams = before.lines().stream().mapToDouble(PlannedLine::grams).toArray();
        Solution planned = new Solution(grams, before.millilitres(), 0.0);
        List<Way.Figure> figures = new ArrayList<>();
        for (Asked asked : Asked.values()) {
            Span span = problem.asked().get(asked);
            double aim = asked == Asked.VOLUME ? goal : problem.figure(asked, planned);
            Span wanted = asked == Asked.VOLUME && isMoved() ? Span.exactly(goal) : span;
            double now = problem.figure(asked, real);
            boolean gives = asked == Asked.VOLUME && kind != Way.Kind.KEEP_VOLUME;
            boolean missed = wanted != null && !gives && isMissed(asked, wanted, aim, now);
            figures.add(new Way.Figure(asked, aim, now, wanted != null, missed));
        }
        return figures;
    }

    private boolean isMoved() {
        return Math.abs(goal - before.millilitres()) > 1e-9 * goal;
    }

    /** What the plan itself could not reach counts as missed only when it lies farther off now. */
    private static boolean isMissed(Asked asked, Span wanted, double aim, double now) {
        double unseen = Problem.unseen(asked, wanted);
        double low = Math.min(wanted.low(), aim) - unseen;
        double high = Math.max(wanted.high(), aim) + unseen;
        return now < low || now > high;
    }

    private List<Way.Share> shares(Solution real) {
        List<Way.Share> shares = new ArrayList<>();
        for (int i = 0; i < problem.lines().length; i++) {
            Way.Share share = share(i, real);
            if (share != null && Math.abs(share.excess()) > SAME_DOSE) {
                shares.add(share);
            }
        }
        return shares;
    }

    /** Returns the share of a line that the maker gave an amount or a dose of its own, or null. */
    private Way.@Nullable Share share(int index, Solution real) {
        double planned = before.lines().get(index).grams();
        boolean own = !problem.lines()[index].canVary() && planned > 0.0;
        return own
                ? new Way.Share(
                        index,
                        1000.0 * planned / before.millilitres(),
                        1000.0 * real.grams()[index] / real.millilitres())
                : null;
    }
}

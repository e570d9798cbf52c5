package org.stillroom.core.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Span;

/**
 * A plan whose oils are what the analyses of their very lots list, in place of what is usual of such an oil; also where they come by
 * an essence that is a stage of it. Amounts and figures stay as they are.
 *
 * <p>Analyses come as a function from the name of an ingredient to the least and most part of its oil, 0 to 1, by CAS number or the
 * name of a sum; empty where there is none.
 */
public final class AnalysedPlan {
    private final Function<String, Map<String, Span>> lots;

    private AnalysedPlan(Function<String, Map<String, Span>> lots) {
        this.lots = lots;
    }

    /** Returns the plan with what is known of its lots; itself where nothing is. */
    public static Plan of(Plan plan, Function<String, Map<String, Span>> lots) {
        return new AnalysedPlan(lots).known(plan);
    }

    private Plan known(Plan plan) {
        List<Plan.StagePlan> stages = plan.stages().stream().map(this::known).toList();
        boolean changed = false;
        List<PlannedLine> lines = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            Map<String, Double> shares = shares(plan, stages, line);
            changed |= shares != null;
            lines.add(
                    shares == null
                            ? line
                            : new PlannedLine(line.line(), line.ingredient().knowingOil(shares), line.grams()));
        }
        if (!changed) {
            return plan;
        }
        Contents liquid = plan.liquid().knowingOil(sharesOf(PlanClarity.liquid(lines)));
        return new Plan(plan.recipe(), lines, liquid, plan.millilitres(), plan.reached(), stages, plan.findings());
    }

    private Plan.StagePlan known(Plan.StagePlan stage) {
        return new Plan.StagePlan(
                stage.ingredient(), known(stage.plan()), stage.yieldGrams(), stage.yieldMillilitres());
    }

    /** Returns what the oil of a line is made of by the analyses, or null where they say nothing of it. */
    private @Nullable Map<String, Double> shares(Plan plan, List<Plan.StagePlan> stages, PlannedLine line) {
        if (line.ingredient().perGram().grams(Substance.OIL) == 0.0) {
            return null;
        }
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).ingredient().equals(line.name())) {
                Plan stage = stages.get(i).plan();
                return stage.equals(plan.stages().get(i).plan()) ? null : sharesOf(PlanClarity.liquid(stage.lines()));
            }
        }
        Map<String, Span> analysed = lots.apply(line.ingredient().name());
        return analysed.isEmpty() ? null : middles(analysed);
    }

    /** Returns the middle between the lots of each constituent; certificates round, so that parts may come to more than all. */
    static Map<String, Double> middles(Map<String, Span> analysed) {
        Map<String, Double> middles = new TreeMap<>();
        analysed.forEach((key, span) -> middles.put(key, 0.5 * (span.low() + span.high())));
        double all = Math.max(
                1.0, middles.values().stream().mapToDouble(Double::doubleValue).sum());
        middles.replaceAll((key, part) -> part / all);
        return middles;
    }

    private static Map<String, Double> sharesOf(Contents liquid) {
        double oil = liquid.grams(Substance.OIL);
        Map<String, Double> shares = new TreeMap<>();
        liquid.aroma().forEach((key, grams) -> shares.put(key, grams / oil));
        return shares;
    }
}

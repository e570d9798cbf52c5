package org.stillroom.studio.usecase.learn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.studio.usecase.BareNumber;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.LogEntry;
import org.stillroom.studio.usecase.make.Logged;
import org.stillroom.studio.usecase.make.MakePart;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;

/** What went into the vessel of a batch, step by step; of a finished make it never changes. */
record PouredBatch(List<Line> lines) {
    PouredBatch {
        lines = List.copyOf(lines);
    }

    /**
     * What went in by one step.
     *
     * @param name as the recipe has it
     * @param ingredient as it was planned with
     * @param grams that went in
     * @param inDoubt half-width within which that is right, g
     * @param byLot part of it that came from each lot, by id; what is missing to 1 came from a bottle that nobody named
     * @param drawn how much that was, in the unit of the lot, by id
     * @param dropper that it was counted with, or empty where it was not counted in drops
     * @param counted g of it that were counted in drops
     */
    record Line(
            String name,
            Resolved ingredient,
            double grams,
            double inDoubt,
            Map<String, Double> byLot,
            Map<String, Double> drawn,
            String dropper,
            double counted) {
        Line {
            byLot = Map.copyOf(byLot);
            drawn = Map.copyOf(drawn);
        }
    }

    /** Returns what went in; empty where the make cannot be worked out any more. */
    static PouredBatch of(MakeState state, BatchSheet sheet) {
        if (state.parts().isEmpty() || !state.problems().isEmpty()) {
            return new PouredBatch(List.of());
        }
        MakePart whole = state.whole();
        List<BatchSheet.LineSheet> sheets = sheet.lines().stream()
                .filter(line -> line.part().equals(whole.title()))
                .toList();
        OunceMeaning ounce = state.start().bar() ? OunceMeaning.THIRTY_MILLILITRES : OunceMeaning.US_FLUID;
        List<Line> lines = new ArrayList<>();
        int next = 0; // the sheet has a line for each step that poured, in their order
        for (MakeStep step : whole.steps()) {
            MakeStep.Pour pour = step.pour();
            if (pour != null && !step.entries().isEmpty() && next < sheets.size()) {
                PlannedLine planned = whole.planned().lines().get(pour.line());
                lines.add(line(planned, pour, step, sheets.get(next), new QuantityText(ounce)));
                next++;
            }
        }
        return new PouredBatch(lines);
    }

    private static Line line(
            PlannedLine planned,
            MakeStep.Pour pour,
            MakeStep step,
            BatchSheet.LineSheet sheet,
            QuantityText quantities) {
        Map<String, Double> drawn = new HashMap<>();
        sheet.taken().forEach(taken -> drawn.merge(taken.lot(), taken.amount(), Double::sum));
        double all = drawn.values().stream().mapToDouble(each -> each).sum();
        double known = pour.grams() > 0.0 ? 1.0 - sheet.wanting() / pour.grams() : 0.0;
        Map<String, Double> byLot = new HashMap<>();
        drawn.forEach((lot, amount) -> byLot.put(lot, all > 0.0 ? known * amount / all : 0.0));
        double counted = step.entries().stream()
                .filter(entry -> isCounted(entry, pour, quantities))
                .mapToDouble(entry -> entry.said().grams())
                .sum();
        return new Line(
                planned.name(),
                planned.ingredient(),
                pour.grams(),
                PlanRecipe.gramsInDoubt(pour.asked()),
                byLot,
                drawn,
                counted > 0.0 ? pour.asked().reading().instrument() : "",
                counted);
    }

    private static boolean isCounted(LogEntry entry, MakeStep.Pour pour, QuantityText quantities) {
        String typed = entry.said().typed();
        if (entry.kind().equals(Logged.DONE)) {
            return pour.drops() > 0;
        }
        return entry.kind().equals(Logged.POURED)
                && typed != null
                && quantities.amount(BareNumber.withUnit(
                                typed, pour.asked().reading().unit()))
                        instanceof Understanding.Understood<?> understood
                && understood.typed().value() instanceof Drops;
    }
}

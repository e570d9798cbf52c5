package org.stillroom.studio.usecase.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.OilPart;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.usecase.shelf.MadeHere;
import org.stillroom.studio.usecase.shelf.Stock;

/** What the stages of a make leave over, as lots of the shelf: so much as came of them and did not go into what followed. */
final class StageLeft {
    /** Less than this part of what came is rounding, or clings to the glass. Own judgement. */
    private static final double CLINGS = 0.005;

    private final MakeState state;
    private final LocalDate day;

    private StageLeft(MakeState state, LocalDate day) {
        this.state = state;
        this.day = day;
    }

    /**
     * Returns the lots.
     *
     * @param day on which they were made
     */
    static List<Lots.NewLot> of(MakeState state, LocalDate day) {
        StageLeft left = new StageLeft(state, day);
        List<Lots.NewLot> lots = new ArrayList<>();
        for (MakePart part : state.parts()) {
            for (Plan.StagePlan stage : part.planned().stages()) {
                Lots.NewLot lot = left.lot(part, stage);
                if (lot != null) {
                    lots.add(lot);
                }
            }
        }
        return lots;
    }

    private Lots.@Nullable NewLot lot(MakePart part, Plan.StagePlan stage) {
        Ingredient ingredient = part.planned().recipe().ingredients().stream()
                .filter(each -> each.name().equals(stage.ingredient()))
                .findFirst()
                .orElseThrow();
        double left = stage.yieldGrams() - used(part, stage.ingredient());
        MakeStart.Pinned pinned =
                ingredient.from() == null ? null : state.start().stages().get(ingredient.from());
        if (left <= CLINGS * stage.yieldGrams() || pinned == null || stage.yieldMillilitres() <= 0.0) {
            return null;
        }
        double perGram = stage.yieldMillilitres() / stage.yieldGrams();
        LotSheet sheet = new LotSheet(
                stage.ingredient(),
                ingredient.kind().label(),
                MadeHere.fields(
                        stage.plan().liquid(),
                        oils(stage.plan()),
                        ingredient.kind().isOfPlants() ? plants(stage) : Map.of()),
                day.toString(),
                null,
                tenths(stage.yieldMillilitres()),
                Stock.MILLILITRES,
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                new LotSheet.Origin(
                        pinned.recipe(),
                        pinned.revision(),
                        stage.plan().recipe().title(),
                        day));
        return new Lots.NewLot(sheet, tenths(left * perGram));
    }

    private static double tenths(double millilitres) {
        return Math.rint(10.0 * millilitres) / 10.0;
    }

    private static double used(MakePart part, String ingredient) {
        double used = 0.0;
        for (MakeStep step : part.steps()) {
            MakeStep.Pour pour = step.pour();
            if (pour != null
                    && !step.entries().isEmpty()
                    && part.planned().lines().get(pour.line()).name().equals(ingredient)) {
                used += pour.grams();
            }
        }
        return used;
    }

    /** Returns g/L of each oil in what a plan makes, also of those that came by stages of its own. */
    private static Map<String, Double> oils(Plan plan) {
        Map<String, Double> oils = new LinkedHashMap<>();
        collect(plan, 1000.0 / plan.millilitres(), oils);
        return oils;
    }

    /** Returns grams of each plant per litre of what a stage leaves; all that stood in it counts, strained off or not. */
    private static Map<String, Double> plants(Plan.StagePlan stage) {
        Map<String, Double> plants = new LinkedHashMap<>();
        for (PlannedLine line : stage.plan().lines()) {
            Kind kind = line.ingredient().kind();
            boolean isPlant = kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT;
            double grams = line.grams() * (isPlant ? 1.0 : line.ingredient().gramsOfPlant());
            if (grams > 0.0) {
                String name =
                        isPlant ? line.name() : line.ingredient().ingredient().plants();
                plants.merge(name, 1000.0 * grams / stage.yieldMillilitres(), Double::sum);
            }
        }
        return plants;
    }

    private static void collect(Plan plan, double factor, Map<String, Double> oils) {
        for (PlannedLine line : plan.lines()) {
            double oil = factor * line.grams() * line.ingredient().perGram().grams(Substance.OIL);
            Plan.StagePlan stage = plan.stages().stream()
                    .filter(each -> each.ingredient().equals(line.name()))
                    .findFirst()
                    .orElse(null);
            if (stage != null) {
                collect(
                        stage.plan(),
                        factor * line.grams() / stage.plan().liquid().total(),
                        oils);
            } else if (oil > 0.0) {
                for (OilPart part : line.ingredient().oilParts()) {
                    oils.merge(part.name(), part.part() * oil, Double::sum);
                }
            }
        }
    }
}

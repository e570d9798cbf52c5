package org.stillroom.studio.answer;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.CarriedPlant;
import org.stillroom.core.ingredient.DoseUnits;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.Band;
import org.stillroom.core.plan.Bands;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Drops;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.marks.RoundingEffect;
import org.stillroom.planner.shopping.Money;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.WorkedPlan;

/** A plan as fields, the same for the command line and for other programs. */
public final class PlanFields {
    private PlanFields() {}

    /** Returns lines, result, doubt, spread, order of mixing and stages of a plan; its findings are put by who asked. */
    public static Fields of(WorkedPlan worked) {
        Fields fields = new Fields()
                .put("title", worked.plan().recipe().title())
                .put("reached", worked.plan().reached())
                .put(
                        "lines",
                        worked.measured().lines().stream()
                                .map(line -> line(worked, line))
                                .toList())
                .put("result", FiguresFields.values(worked.figures()))
                .put("doubt", FiguresFields.doubts(worked.figures()))
                .put("spread", spread(worked.bands()))
                .put("rounding", rounding(worked.measured().effect()))
                .put("contraction_ml", worked.blend().contraction())
                .put("warming_c", worked.blend().warming().value())
                .put(
                        "steps_of_making",
                        worked.steps().stream().map(step -> step(worked, step)).toList())
                .put(
                        "running_total_g",
                        worked.runningTotals().stream()
                                .map(total -> new Fields()
                                        .put(
                                                "name",
                                                worked.plan()
                                                        .lines()
                                                        .get(total.line())
                                                        .name())
                                        .put("added_g", total.added())
                                        .put("total_g", total.total()))
                                .toList());
        return fields.put(
                "stages", worked.stages().stream().map(PlanFields::stage).toList());
    }

    private static Fields stage(WorkedPlan.WorkedStage stage) {
        return of(stage.worked())
                .put("ingredient", stage.stage().ingredient())
                .put("yield_g", stage.stage().yieldGrams())
                .put("yield_ml", stage.stage().yieldMillilitres())
                .put("findings", FindingFields.of(stage.worked().findings()));
    }

    private static Fields line(WorkedPlan worked, MeasuredLine line) {
        Fields fields =
                new Fields().put("name", line.name()).put("mass_g", line.exact().grams());
        volume(fields, line.exact().millilitres());
        Fields measured = new Fields()
                .put("amount", line.reading().value())
                .put("unit", line.reading().unit())
                .put("instrument", line.reading().instrument())
                .put("words", line.reading().words())
                .put("mass_g", line.grams())
                .put("tolerance_g", line.toleranceGrams());
        if (line.reading().amount() instanceof Drops) {
            Resolved ingredient = line.exact().ingredient();
            measured.put(
                    "drop",
                    new Fields()
                            .put("mass_mg", 1000.0 * ingredient.gramsPerDrop())
                            .put("within_percent", 100.0 * ingredient.dropDoubt())
                            .put("from", ingredient.dropBasis().label()));
        }
        put(measured, worked.dose(line));
        fields.put("measured", measured);
        CarriedPlant plant = worked.plant(line.exact());
        put(fields, worked.dose(line.exact()));
        return plant == null ? fields.putNone("plant") : fields.put("plant", plant(plant));
    }

    private static void put(Fields fields, @Nullable DoseUnits dose) {
        if (dose == null) {
            fields.putNone("dose");
        } else {
            fields.put("dose", dose(dose));
        }
    }

    private static Fields plant(CarriedPlant plant) {
        return new Fields()
                .put("name", plant.plant())
                .put("ratio", plant.ratio())
                .put("g_per_l", plant.gramsPerLitre());
    }

    private static Fields dose(DoseUnits dose) {
        Fields fields = new Fields().put("drops_per_l", dose.drops());
        perLitre(fields, "ml_per_l", dose.millilitres());
        perLitre(fields, "ul_per_l", dose.microlitres());
        return fields.put("g_per_l", dose.grams()).put("mg_per_l", dose.milligrams());
    }

    private static void perLitre(Fields fields, String key, OptionalDouble volume) {
        if (volume.isPresent()) {
            fields.put(key, volume.getAsDouble());
        } else {
            fields.putNone(key);
        }
    }

    private static void volume(Fields fields, OptionalDouble millilitres) {
        if (millilitres.isPresent()) {
            fields.put("volume_ml", millilitres.getAsDouble());
        } else {
            fields.putNone("volume_ml");
        }
    }

    private static Fields spread(Bands bands) {
        return new Fields()
                .put("volume_20c_ml", band(bands.volume()))
                .put("strength_vol_percent", band(bands.strength()))
                .put("sugar_g_per_l", band(bands.sugar()))
                .put("acidity_as_citric_g_per_l", band(bands.acidity()));
    }

    private static Fields band(Band band) {
        return new Fields()
                .put("low", band.low())
                .put("high", band.high())
                .put("most_from", band.mostFrom())
                .put("part_of_variance", band.partOfMost());
    }

    private static Fields rounding(RoundingEffect effect) {
        return new Fields()
                .put("volume_20c_ml", effect.millilitres())
                .put("strength_vol_percent", effect.strength())
                .put("sugar_g_per_l", effect.sugar())
                .put("acidity_as_citric_g_per_l", effect.acidity());
    }

    private static Fields step(WorkedPlan worked, MixingStep step) {
        return new Fields()
                .put("what", step.what())
                .put("why", step.why())
                .putTexts(
                        "lines",
                        step.lines().stream()
                                .map(i -> worked.plan().lines().get(i).name())
                                .toList());
    }

    /** Returns the plan with a spirit of each strength. */
    public static List<Fields> exploration(Exploration exploration) {
        return exploration.rows().stream().map(PlanFields::row).toList();
    }

    private static Fields row(Exploration.Row row) {
        Fields fields = new Fields()
                .put("spirit_vol_percent", row.strength().percent())
                .put("reached", row.reached())
                .put("lines", row.lines().stream().map(PlanFields::planned).toList());
        if (row.result() != null) {
            fields.put(
                    "result",
                    new Fields()
                            .put("strength_vol_percent", row.result().strength())
                            .put("sugar_g_per_l", row.result().sugar())
                            .put("volume_20c_ml", row.result().millilitres()));
        }
        return fields.put("findings", FindingFields.of(row.findings()));
    }

    private static Fields planned(PlannedLine line) {
        Fields fields = new Fields().put("name", line.name()).put("mass_g", line.grams());
        volume(fields, line.millilitres());
        return fields;
    }

    /** Returns a shopping list. */
    public static Fields shopping(ShoppingList list) {
        return new Fields()
                .put("items", list.items().stream().map(PlanFields::item).toList())
                .put("used", list.used().stream().map(PlanFields::money).toList())
                .put(
                        "at_the_till",
                        list.atTheTill().stream().map(PlanFields::money).toList())
                .putTexts("unpriced", list.unpriced());
    }

    private static Fields item(ShoppingList.Item item) {
        Fields fields = new Fields()
                .put("name", item.name())
                .put("needed_g", item.neededGrams())
                .put("at_hand_g", item.atHandGrams())
                .put("packs", item.packs())
                .put("bought_g", item.boughtGrams())
                .put("left_g", item.leftGrams());
        if (item.used() != null) {
            fields.put("used", money(item.used()));
        }
        if (item.atTheTill() != null) {
            fields.put("at_the_till", money(item.atTheTill()));
        }
        return fields;
    }

    static Fields money(Money money) {
        return new Fields().put("amount", money.amount()).put("currency", money.currency());
    }
}

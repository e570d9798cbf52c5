package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.Essence;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.planner.drops.PreDilution;
import org.stillroom.studio.usecase.essence.PlanEssence;

/** The plan of an essence as fields. */
public final class EssenceFields {
    /** Less than this rounds to nothing where grams per litre are shown, g/L. */
    private static final double LISTED = 0.005;

    private EssenceFields() {}

    /** Returns the plan for scripts; lists of numbers are in the order of the oils. */
    public static Fields of(PlanEssence.Found found) {
        Essence asked = found.asked();
        Fields fields = new Fields()
                .put("title", found.title())
                .putTexts("oils", asked.oils().stream().map(OilDrop::name).toList())
                .putNumbers("drops_per_batch", asked.dropsPerBatch())
                .put("oils_mg_per_batch", 1000.0 * asked.gramsPerBatch())
                .put("dose_ml_per_batch", asked.dose())
                .put("batch_ml", found.batch())
                .put("tolerance_percent", 100.0 * asked.tolerance())
                .put(
                        "choices",
                        found.choices().stream().map(made -> choice(made)).toList());
        Choice manifold = found.manifold();
        if (manifold == null) {
            fields.putNone("manifold");
        } else {
            fields.put(
                    "manifold",
                    new Fields()
                            .putCount("batches", manifold.batches())
                            .putNumbers("drops", manifold.drops())
                            .put("worst_error_percent", 100.0 * manifold.worstError())
                            .putNumbers("errors_percent", errors(manifold)));
        }
        PlanEssence.Dilutions diluted = found.preDilution();
        if (diluted == null) {
            fields.putNone("pre_dilution");
        } else {
            fields.put("pre_dilution", preDilution(diluted, found));
        }
        return fields.put("findings", FindingFields.of(found.findings()));
    }

    private static Fields choice(PlanEssence.Made made) {
        return new Fields()
                .putNumbers("drops", made.choice().drops())
                .put("carrier_ml", made.carrier())
                .putCount("batches", made.choice().batches())
                .put("worst_error_percent", 100.0 * made.choice().worstError())
                .put("left_over_ml", made.choice().leftOver())
                .put("tolerance_kept", made.choice().toleranceKept())
                .putNumbers("errors_percent", errors(made.choice()))
                .put("oils_mg", 1000.0 * made.choice().grams())
                .put("essence_ml", made.essence())
                .put("strength_vol_percent", made.strength())
                .putNumbers("oils_g_per_l", made.oils())
                .put("constituents", constituents(made.constituents()));
    }

    private static List<Double> errors(Choice choice) {
        return choice.errors().stream().map(error -> 100.0 * error).toList();
    }

    /** Returns the constituents that are worth a line, g/L by their names, the largest first. */
    public static Map<String, Double> listed(PlanEssence.Made made) {
        Map<String, Double> listed = new LinkedHashMap<>();
        made.constituents().entrySet().stream()
                .filter(each -> each.getValue() >= LISTED)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .forEach(each -> {
                    Constituent constituent = Constituents.find(each.getKey());
                    listed.put(constituent == null ? each.getKey() : constituent.name(), each.getValue());
                });
        return listed;
    }

    private static List<Fields> constituents(Map<String, Double> gramsPerLitre) {
        List<Fields> all = new ArrayList<>();
        gramsPerLitre.forEach((key, grams) -> {
            Constituent constituent = Constituents.find(key);
            all.add(new Fields()
                    .put("cas", constituent == null ? null : constituent.cas())
                    .put("name", constituent == null ? key : constituent.name())
                    .put("g_per_l", grams));
        });
        return all;
    }

    private static Fields preDilution(PlanEssence.Dilutions diluted, PlanEssence.Found found) {
        PreDilution how = diluted.how();
        List<Fields> dilutions = new ArrayList<>();
        for (PreDilution.Dilution each : how.dilutions()) {
            dilutions.add(new Fields()
                    .put("oil", found.asked().oils().get(each.oil()).name())
                    .putCount("one_in", each.oneIn())
                    .putCount("drops", each.drops())
                    .put("spirit_g", each.spirit())
                    .put("spirit_ml", each.spirit() / diluted.density())
                    .put("spirit_vol_percent", diluted.strength())
                    .put("total_g", each.total()));
        }
        return new Fields()
                .put("dilutions", dilutions)
                .putNumbers("drops", how.choice().drops())
                .put("worst_error_percent", 100.0 * how.choice().worstError())
                .putNumbers("errors_percent", errors(how.choice()));
    }
}

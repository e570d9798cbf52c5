package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.clarity.Chances;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Clearing;
import org.stillroom.core.clarity.Glass;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.mixing.MixingPath;
import org.stillroom.studio.usecase.TellClarity;

/** The forecast of clouding as fields. */
public final class ClarityFields {
    private ClarityFields() {}

    /** Returns everything that is told of clouding. */
    public static Fields of(TellClarity.Found found) {
        Clarity clarity = found.clarity();
        Fields fields = looks(clarity)
                .put("oil_g_per_l", clarity.oils().gramsPerLitre())
                .put("leading_constituent", clarity.leading());
        put(fields, "clear_from_vol_percent", found.clearFrom());
        put(fields, "most_oil_g_per_l", found.mostOil());
        put(fields, "clear_below_sugar_g_per_l", found.clearBelowSugar());
        fields.put("spread", new Fields().put("oil_load", load(clarity.chances())))
                .putTexts("estimated_constituents", clarity.estimated())
                .put("terpeneless", looks(found.terpeneless()))
                .put(
                        "chilled_and_filtered",
                        looks(found.filtered().after())
                                .put("removed_g_per_l", found.filtered().removed())
                                .put("removed_part", found.filtered().part()))
                .put("cold", cold(found))
                .put("glass", glass(found.glass()));
        if (found.clearing() == null) {
            fields.putNone("clearing");
        } else {
            fields.put("clearing", clearing(found.clearing()));
        }
        return fields.put("steps", steps(found.path()))
                .putTexts(
                        "clearest_order",
                        found.clearest().stream().map(step -> step.what()).toList())
                .put("findings", FindingFields.of(found.findings()));
    }

    private static Fields looks(Clarity clarity) {
        Medium medium = clarity.medium();
        Chances chances = clarity.chances();
        return new Fields()
                .put("strength_vol_percent", medium.strength())
                .put("sugar_g_per_l", medium.sugar())
                .put("temperature_c", medium.temperature().celsius())
                .put("oil_load", clarity.load())
                .put("separated_g_per_l", clarity.separated())
                .put("verdict", clarity.verdict().label())
                .put(
                        "probability",
                        new Fields()
                                .put("clear", chances.clear())
                                .put("hazy", chances.hazy())
                                .put("cloudy", chances.cloudy()));
    }

    private static Fields load(Chances chances) {
        return new Fields().put("low", chances.lowLoad()).put("high", chances.highLoad());
    }

    private static List<Fields> cold(TellClarity.Found found) {
        List<Fields> all = new ArrayList<>();
        found.cold().forEach(cold -> all.add(looks(cold.clarity()).put("where", cold.where())));
        return all;
    }

    private static Fields glass(Glass glass) {
        Fields fields = new Fields();
        put(fields, "hazy_from_parts_of_water", glass.hazyFrom());
        put(fields, "cloudy_from_parts_of_water", glass.cloudyFrom());
        return fields;
    }

    private static Fields clearing(Clearing clearing) {
        return new Fields()
                .put("days_at_the_earliest", clearing.days())
                .put("drop_radius_after_a_day_um", clearing.micrometresAfterDay())
                .put("sinks", clearing.sinks());
    }

    private static List<Fields> steps(MixingPath path) {
        List<Fields> all = new ArrayList<>();
        for (MixingPath.Stop stop : path.stops()) {
            all.add(looks(stop.clarity()).put("what", stop.step().what()));
        }
        return all;
    }

    private static void put(Fields fields, String key, OptionalDouble value) {
        if (value.isPresent()) {
            fields.put(key, value.getAsDouble());
        } else {
            fields.putNone(key);
        }
    }
}

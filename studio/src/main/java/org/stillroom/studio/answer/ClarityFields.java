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
import org.stillroom.core.mixing.Ring;
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
                .put("doubt_from", from(clarity.chances()))
                .putTexts("composition_from", found.compositionFrom())
                .putTexts("estimated_constituents", clarity.estimated())
                .put("terpeneless", looks(found.terpeneless()))
                .put("folded", folded(found))
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
        if (found.ring() == null) {
            fields.putNone("ring");
        } else {
            fields.put("ring", ring(found.ring()));
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

    private static List<Fields> from(Chances chances) {
        return chances.from().stream()
                .map(each -> new Fields().put("what", each.what().label()).put("factor", each.factor()))
                .toList();
    }

    private static List<Fields> cold(TellClarity.Found found) {
        List<Fields> all = new ArrayList<>();
        found.cold().forEach(cold -> all.add(looks(cold.clarity()).put("where", cold.where())));
        return all;
    }

    private static Fields glass(Glass glass) {
        Fields fields = new Fields()
                .put("with", glass.addition().name())
                .put("with_strength_vol_percent", glass.addition().strength())
                .put("with_sugar_g_per_l", glass.addition().sugar())
                .put("temperature_c", glass.points().get(0).celsius());
        put(fields, "hazy_from_parts", glass.hazyFrom());
        put(fields, "cloudy_from_parts", glass.cloudyFrom());
        if (glass.coldest().isEmpty()) {
            return fields.putNone("coldest");
        }
        Glass.Point coldest = glass.coldest().get();
        return fields.put(
                "coldest",
                new Fields()
                        .put("parts", coldest.parts())
                        .put("temperature_c", coldest.celsius())
                        .put("strength_vol_percent", coldest.strength())
                        .put("oil_load", coldest.load())
                        .put("verdict", coldest.verdict().label()));
    }

    private static List<Fields> folded(TellClarity.Found found) {
        return found.folded().stream()
                .map(each -> looks(each.clarity()).put("fold", each.fold()).put("monoterpenes_left_part", each.left()))
                .toList();
    }

    private static Fields ring(Ring ring) {
        List<Fields> parts = ring.parts().stream()
                .map(part -> new Fields()
                        .put("constituent", part.name())
                        .put("g_per_l", part.grams())
                        .put("part_of_ring", part.share())
                        .put("lost_part", part.lost()))
                .toList();
        Fields fields = new Fields()
                .put("g_per_l", ring.grams())
                .put("ml_per_l", ring.millilitres())
                .put("part_of_oil", ring.part())
                .put("constituents", parts);
        return ring.odour() == null
                ? fields.putNone("odour")
                : fields.put(
                        "odour",
                        new Fields()
                                .put("lost_part", ring.odour().lost())
                                .put("known_part_of_oil", ring.odour().known()));
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

package org.stillroom.studio.web.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schemas of a plan and its parts. */
final class PlanComponents {
    private PlanComponents() {}

    static Map<String, Object> all() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("PlannedLine", line());
        all.put("Spread", spread());
        all.put("Shopping", shopping());
        all.put("WhatIf", whatIf());
        all.put(
                "Stage",
                plan().with("ingredient", Schemas.text("that it is in the recipe that uses it"))
                        .with("yield_g", Schemas.number("what it leaves, g"))
                        .with("yield_ml", Schemas.number("what it leaves, mL at 20 °C"))
                        .schema());
        all.put(
                "Plan",
                plan().maybe("what_if_spirit", Schemas.list(Schemas.ref("WhatIf")))
                        .maybe("shopping", Schemas.ref("Shopping"))
                        .maybe("steps", Schemas.list(Schemas.ref("Step")))
                        .schema());
        return all;
    }

    private static Schemas.Group plan() {
        return Schemas.group()
                .with("title", Schemas.text(""))
                .with("reached", Schemas.flag("whether everything asked for is met; else it is the nearest"))
                .with("lines", Schemas.list(Schemas.ref("PlannedLine")))
                .with("result", Schemas.ref("Figures"))
                .with("doubt", Schemas.ref("Figures"))
                .with("spread", Schemas.ref("Spread"))
                .with("rounding", fourFigures(Schemas.number("")))
                .with("contraction_ml", Schemas.number("by how much it shrinks, mL at 20 °C"))
                .with("warming_c", Schemas.number("by how much it warms if no heat is lost, °C"))
                .with(
                        "steps_of_making",
                        Schemas.list(Schemas.group()
                                .with("what", Schemas.text("to do"))
                                .with("why", Schemas.text(""))
                                .with("lines", Schemas.list(Schemas.text("name of a line")))
                                .schema()))
                .with(
                        "running_total_g",
                        Schemas.list(Schemas.group()
                                .with("name", Schemas.text(""))
                                .with("added_g", Schemas.number(""))
                                .with("total_g", Schemas.number("what an untared scale shows"))
                                .schema()))
                .with("stages", Schemas.list(Schemas.ref("Stage")))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .maybe("standing", Schemas.text("that it is information, no advice"));
    }

    private static Map<String, Object> line() {
        return Schemas.group()
                .with("name", Schemas.text(""))
                .with("mass_g", Schemas.number("exact"))
                .with("volume_ml", Schemas.orNull(Schemas.number("exact, at 20 °C; null for a solid")))
                .maybe(
                        "measured",
                        Schemas.group()
                                .with("amount", Schemas.number("as the instrument shows it"))
                                .with("unit", Schemas.text(""))
                                .with("instrument", Schemas.text(""))
                                .with("words", Schemas.text("as a person reads it"))
                                .with("mass_g", Schemas.number(""))
                                .with("tolerance_g", Schemas.number(""))
                                .maybe("drop", drop())
                                .maybe("dose", dose("as measured, in whole drops or to a mark"))
                                .schema())
                .maybe("dose", dose("as asked for"))
                .maybe(
                        "plant",
                        Schemas.orNull(Schemas.group()
                                .with("name", Schemas.text("what stood in it, by its maker's words"))
                                .with("ratio", Schemas.text("as typed: g to mL of the extract, or g/L of it"))
                                .with("g_per_l", Schemas.number("g of plant per litre of what is made"))
                                .schema()))
                .schema();
    }

    private static Map<String, Object> dose(String what) {
        return Schemas.orNull(Schemas.group()
                .with("drops_per_l", Schemas.number(what + "; of the maker's own dropper, else the official one"))
                .with("ml_per_l", Schemas.orNull(Schemas.number("")))
                .with("ul_per_l", Schemas.orNull(Schemas.number("")))
                .with("g_per_l", Schemas.number(""))
                .with("mg_per_l", Schemas.number(""))
                .schema());
    }

    private static Map<String, Object> drop() {
        return Schemas.group()
                .with("mass_mg", Schemas.number("what a drop is taken to weigh"))
                .with("within_percent", Schemas.number("of that a drop lies in nine cases of ten"))
                .with("from", Schemas.text("weighed, own dropper (by its drop of water) or official dropper"))
                .schema();
    }

    private static Map<String, Object> spread() {
        return fourFigures(Schemas.group()
                .with("low", Schemas.number("P5"))
                .with("high", Schemas.number("P95"))
                .with("most_from", Schemas.text("what most of it comes from"))
                .with("part_of_variance", Schemas.number("how much of it, 0 to 1"))
                .schema());
    }

    private static Map<String, Object> fourFigures(Map<String, Object> of) {
        Schemas.Group group = Schemas.group();
        for (String key :
                List.of("volume_20c_ml", "strength_vol_percent", "sugar_g_per_l", "acidity_as_citric_g_per_l")) {
            group.with(key, of);
        }
        return group.schema();
    }

    private static Map<String, Object> shopping() {
        Map<String, Object> money = Schemas.group()
                .with("amount", Schemas.number(""))
                .with("currency", Schemas.text(""))
                .schema();
        return Schemas.group()
                .with(
                        "items",
                        Schemas.list(Schemas.group()
                                .with("name", Schemas.text(""))
                                .with("needed_g", Schemas.number(""))
                                .with("at_hand_g", Schemas.number(""))
                                .with("packs", Schemas.number("to buy"))
                                .with("bought_g", Schemas.number(""))
                                .with("left_g", Schemas.number(""))
                                .maybe("used", money)
                                .maybe("at_the_till", money)
                                .schema()))
                .with("used", Schemas.list(money))
                .with("at_the_till", Schemas.list(money))
                .with("unpriced", Schemas.list(Schemas.text("")))
                .schema();
    }

    private static Map<String, Object> whatIf() {
        return Schemas.group()
                .with("spirit_vol_percent", Schemas.number(""))
                .with("reached", Schemas.flag(""))
                .with("lines", Schemas.list(Schemas.ref("PlannedLine")))
                .maybe(
                        "result",
                        Schemas.group()
                                .with("strength_vol_percent", Schemas.number(""))
                                .with("sugar_g_per_l", Schemas.number(""))
                                .with("volume_20c_ml", Schemas.number(""))
                                .schema())
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .schema();
    }
}

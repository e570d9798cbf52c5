package org.stillroom.studio.web.api;

import java.util.Map;

/** The schemas of a forecast of clouding, and of what a haze may be. */
final class ClarityComponents {
    private ClarityComponents() {}

    static Map<String, Object> forecast() {
        return looks().with("oil_g_per_l", Schemas.number("oil in it"))
                .with("leading_constituent", Schemas.text("that most of the load comes from"))
                .with("clear_from_vol_percent", Schemas.orNull(Schemas.number("least strength that is clear")))
                .with(
                        "most_oil_g_per_l",
                        Schemas.orNull(Schemas.number("most oil of this composition that stays clear")))
                .with("clear_below_sugar_g_per_l", Schemas.orNull(Schemas.number("most sugar that stays clear")))
                .with("spread", Schemas.group().with("oil_load", band()).schema())
                .with(
                        "doubt_from",
                        Schemas.list(Schemas.group()
                                .with("what", Schemas.text("the most first"))
                                .with(
                                        "factor",
                                        Schemas.number("by which the load may be off for it, one standard deviation"))
                                .schema()))
                .with(
                        "composition_from",
                        Schemas.list(Schemas.text("oil, and what states the ranges of its constituents")))
                .with("estimated_constituents", Schemas.list(Schemas.text("")))
                .with("terpeneless", looks().schema())
                .with(
                        "folded",
                        Schemas.list(looks().with("fold", Schemas.number("parts of oil that one part is made from"))
                                .with("monoterpenes_left_part", Schemas.number("0 to 1"))
                                .schema()))
                .with(
                        "chilled_and_filtered",
                        looks().with("removed_g_per_l", Schemas.number(""))
                                .with("removed_part", Schemas.number("of the oil, 0 to 1"))
                                .schema())
                .with(
                        "cold",
                        Schemas.list(looks().with("where", Schemas.text("")).schema()))
                .with("glass", glass())
                .with("clearing", Schemas.orNull(clearing()))
                .with("ring", Schemas.orNull(ring()))
                .with(
                        "steps",
                        Schemas.list(
                                looks().with("what", Schemas.text("of mixing")).schema()))
                .with("clearest_order", Schemas.list(Schemas.text("")))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .maybe("steps_of_computation", Schemas.list(Schemas.ref("Step")))
                .schema();
    }

    private static Map<String, Object> glass() {
        return Schemas.group()
                .with("with", Schemas.text("what comes to it"))
                .with("with_strength_vol_percent", Schemas.number("of what comes to it"))
                .with("with_sugar_g_per_l", Schemas.number("of what comes to it"))
                .with("temperature_c", Schemas.number("of the glass; with ice, before it comes"))
                .with("hazy_from_parts", Schemas.orNull(Schemas.number("by volume to one part")))
                .with("cloudy_from_parts", Schemas.orNull(Schemas.number("by volume to one part")))
                .with(
                        "coldest",
                        Schemas.orNull(Schemas.group()
                                .with("parts", Schemas.number("of melt water to one part"))
                                .with("temperature_c", Schemas.number(""))
                                .with("strength_vol_percent", Schemas.number(""))
                                .with("oil_load", Schemas.number(""))
                                .with("verdict", Schemas.text("clear, hazy or cloudy"))
                                .schema()))
                .schema();
    }

    private static Schemas.Group looks() {
        return Schemas.group()
                .with("strength_vol_percent", Schemas.number(""))
                .with("sugar_g_per_l", Schemas.number(""))
                .with("temperature_c", Schemas.number(""))
                .with("oil_load", Schemas.number("oil over what can be dissolved; above 1 an oil phase can exist"))
                .with("separated_g_per_l", Schemas.number("oil that would separate"))
                .with("verdict", Schemas.text("clear, hazy or cloudy"))
                .with(
                        "probability",
                        Schemas.group()
                                .with("clear", Schemas.number("0 to 1"))
                                .with("hazy", Schemas.number("0 to 1"))
                                .with("cloudy", Schemas.number("0 to 1"))
                                .schema());
    }

    private static Map<String, Object> band() {
        return Schemas.group()
                .with("low", Schemas.number("P5"))
                .with("high", Schemas.number("P95"))
                .schema();
    }

    private static Map<String, Object> ring() {
        return Schemas.group()
                .with("g_per_l", Schemas.number("oil that gathers, from a litre of liquid"))
                .with("ml_per_l", Schemas.number(""))
                .with("part_of_oil", Schemas.number("0 to 1"))
                .with(
                        "constituents",
                        Schemas.list(Schemas.group()
                                .with("constituent", Schemas.text(""))
                                .with("g_per_l", Schemas.number(""))
                                .with("part_of_ring", Schemas.number("0 to 1"))
                                .with("lost_part", Schemas.number("of this constituent, 0 to 1"))
                                .schema()))
                .with(
                        "odour",
                        Schemas.orNull(Schemas.group()
                                .with("lost_part", Schemas.number("of the contents over their thresholds, 0 to 1"))
                                .with("known_part_of_oil", Schemas.number("of which thresholds are known, 0 to 1"))
                                .schema()))
                .schema();
    }

    private static Map<String, Object> clearing() {
        return Schemas.group()
                .with("days_at_the_earliest", Schemas.number("in a bottle filled 200 mm high"))
                .with("drop_radius_after_a_day_um", Schemas.number(""))
                .with("sinks", Schemas.flag("whether the oil goes to the bottom"))
                .schema();
    }

    static Map<String, Object> diagnosis() {
        return Schemas.group()
                .with(
                        "questions",
                        Schemas.list(Schemas.group()
                                .with("sign", Schemas.text(""))
                                .with("question", Schemas.text(""))
                                .schema()))
                .with("likely", Schemas.list(haze()))
                .with("cream", Schemas.orNull(cream()))
                .with("clarified", Schemas.orNull(clarified()))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .schema();
    }

    private static Map<String, Object> haze() {
        return Schemas.group()
                .with("haze", Schemas.text(""))
                .with("signs", Schemas.list(Schemas.text("")))
                .with("test", Schemas.text("how to make sure"))
                .with("try_first", Schemas.text(""))
                .with("clarifying", Schemas.list(way().schema()))
                .with("status", Schemas.text(""))
                .schema();
    }

    private static Schemas.Group way() {
        return Schemas.group()
                .with("way", Schemas.text(""))
                .with("takes_out", Schemas.text(""))
                .with("unit", Schemas.text("of the dose: g or ml; empty where it takes nothing"))
                .with("least_per_l", Schemas.number("dose"))
                .with("most_per_l", Schemas.number("dose"))
                .with("how", Schemas.text(""))
                .with("wait", Schemas.text(""))
                .with("loss_percent", Schemas.number("of the volume"))
                .with("allergens", Schemas.text("that stay or may, empty where none come with it"))
                .with("status", Schemas.text(""))
                .with("source", Schemas.text("of the dose, empty where nobody published it"));
    }

    private static Map<String, Object> clarified() {
        return way().with("volume_ml", Schemas.number("of the liquid before"))
                .with("least", Schemas.number("to take, in the unit of the dose"))
                .with("most", Schemas.number("to take"))
                .with("water_least_ml", Schemas.number("that comes in with the least"))
                .with("water_most_ml", Schemas.number("that comes in with the most"))
                .with("left_least_ml", Schemas.number("after the loss, with the least"))
                .with("left_most_ml", Schemas.number("after the loss, with the most"))
                .with("strength_vol_percent", Schemas.orNull(Schemas.number("before")))
                .with("strength_after_least_vol_percent", Schemas.orNull(Schemas.number("with the least")))
                .with("strength_after_most_vol_percent", Schemas.orNull(Schemas.number("with the most")))
                .schema();
    }

    private static Map<String, Object> cream() {
        return Schemas.group()
                .with("verdict", Schemas.text("keeps, doubtful or breaks"))
                .with(
                        "causes",
                        Schemas.list(Schemas.group()
                                .with("cause", Schemas.text("fat, strength or acid"))
                                .with("value", Schemas.number(""))
                                .with("unit", Schemas.text(""))
                                .with("keeps_below", Schemas.number(""))
                                .with("breaks_from", Schemas.number(""))
                                .with("verdict", Schemas.text(""))
                                .with("why", Schemas.text(""))
                                .with("remedy", Schemas.text(""))
                                .with("status", Schemas.text(""))
                                .schema()))
                .schema();
    }
}

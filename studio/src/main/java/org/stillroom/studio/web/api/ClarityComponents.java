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
                .with("estimated_constituents", Schemas.list(Schemas.text("")))
                .with("terpeneless", looks().schema())
                .with(
                        "chilled_and_filtered",
                        looks().with("removed_g_per_l", Schemas.number(""))
                                .with("removed_part", Schemas.number("of the oil, 0 to 1"))
                                .schema())
                .with(
                        "cold",
                        Schemas.list(looks().with("where", Schemas.text("")).schema()))
                .with(
                        "glass",
                        Schemas.group()
                                .with("hazy_from_parts_of_water", Schemas.orNull(Schemas.number("to one part")))
                                .with("cloudy_from_parts_of_water", Schemas.orNull(Schemas.number("to one part")))
                                .schema())
                .with("clearing", Schemas.orNull(clearing()))
                .with(
                        "steps",
                        Schemas.list(
                                looks().with("what", Schemas.text("of mixing")).schema()))
                .with("clearest_order", Schemas.list(Schemas.text("")))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .maybe("steps_of_computation", Schemas.list(Schemas.ref("Step")))
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
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .schema();
    }

    private static Map<String, Object> haze() {
        return Schemas.group()
                .with("haze", Schemas.text(""))
                .with("signs", Schemas.list(Schemas.text("")))
                .with("test", Schemas.text("how to make sure"))
                .with("try_first", Schemas.text(""))
                .with(
                        "clarifying",
                        Schemas.list(Schemas.group()
                                .with("way", Schemas.text(""))
                                .with("takes_out", Schemas.text(""))
                                .with("dose", Schemas.text(""))
                                .with("wait", Schemas.text(""))
                                .with("loss_percent", Schemas.number(""))
                                .with("strength_after", Schemas.text(""))
                                .with("allergens", Schemas.text(""))
                                .with("status", Schemas.text(""))
                                .schema()))
                .with("status", Schemas.text(""))
                .schema();
    }
}

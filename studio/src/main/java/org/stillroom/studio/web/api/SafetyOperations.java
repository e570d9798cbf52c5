package org.stillroom.studio.web.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.studio.answer.LabelFields;
import org.stillroom.studio.answer.SafetyFields;
import org.stillroom.studio.answer.desk.LabelAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.SafetyAsked;
import org.stillroom.studio.usecase.WorkedPlan;

/** What is in the drink of a recipe, what rules say of it, and what its label says. */
final class SafetyOperations {
    private static final String OF_A_RECIPE = """
            {"recipe": {
               "stillroom": 1,
               "title": "Peppermint and lemon balm",
               "target": {"volume": "1 L", "strength": "28 %", "sugar": "180 g/L"},
               "ingredients": [{"name": "peppermint oil", "kind": "essential oil"}],
               "lines": [
                 {"use": "peppermint oil", "dose": "0.3 g/L"},
                 {"use": "spirit 96 %", "amount": "free"},
                 {"use": "white sugar", "amount": "free"},
                 {"use": "water", "amount": "free"}]},
            """;

    private final RecipeTexts texts;

    SafetyOperations(RecipeTexts texts) {
        this.texts = texts;
    }

    List<Operation> all() {
        return List.of(
                Operation.of(
                                Operation.Method.POST,
                                "/safety",
                                "safety",
                                "What of watched substances the drink of a recipe holds, by the analyses of the studio's lots where there"
                                        + " are some, and what law and guidance say.",
                                call -> safety(call.body()))
                        .takes(question(SafetyAsked.PARTS), OF_A_RECIPE + " \"serving\": \"30 ml\", \"place\": \"EU\"}")
                        .answers(Schemas.ref("Safety")),
                Operation.of(
                                Operation.Method.POST,
                                "/label",
                                "label",
                                "What the drink of a recipe may be called, and what its label says.",
                                call -> label(call.body()))
                        .takes(question(LabelAsked.PARTS), OF_A_RECIPE + " \"bottle\": \"500 ml\"}")
                        .answers(Schemas.ref("Label")));
    }

    private static Map<String, Object> question(List<Part> parts) {
        return Schemas.question(Schemas.parts(parts)
                .with(RecipeTexts.RECIPE, Schemas.ref("Recipe"))
                .schema());
    }

    private Reply safety(Body body) {
        WorkedPlan worked = texts.worked(body, SafetyAsked.PARTS);
        SafetyAsked asked = SafetyAsked.of(body.typed(SafetyAsked.PARTS), Keys.SNAKE_CASE, new Objections());
        return Reply.of(SafetyFields.of(asked.answer(worked)));
    }

    private Reply label(Body body) {
        WorkedPlan worked = texts.worked(body, LabelAsked.PARTS);
        LabelAsked asked = LabelAsked.of(body.typed(LabelAsked.PARTS), Keys.SNAKE_CASE, new Objections());
        return Reply.of(LabelFields.of(asked.answer(worked)));
    }

    static Map<String, Object> components() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("Range", range());
        all.put("Keeping", keeping());
        all.put("Safety", safetySchema());
        all.put("Label", labelSchema());
        return all;
    }

    private static Map<String, Object> range() {
        return Schemas.group()
                .with("min", Schemas.number("least"))
                .with("typical", Schemas.orNull(Schemas.number("middle; null where the most is not known")))
                .with(
                        "max",
                        Schemas.orNull(Schemas.number("most, by the most adverse source group; null where not known")))
                .with("typical_basis", Schemas.text("what typical stands for"))
                .schema();
    }

    private static Map<String, Object> keeping() {
        return Schemas.group()
                .with("where", Schemas.text("keeps on the shelf, cold once open, or keep it cold"))
                .with("days", Schemas.orNull(Schemas.count("from filling; null where microbes set no end")))
                .with("water_activity", Schemas.number("0 to 1, to about 0.02"))
                .with(
                        "ph",
                        Schemas.orNull(Schemas.number("measured, or the highest by its acids; null where not known")))
                .with("ph_told", Schemas.text("how the pH is known"))
                .with(
                        "delle_units",
                        Schemas.number("g of sugar in 100 mL and 4.5 times % vol; from 78 on yeast is held"))
                .with("reason", Schemas.text(""))
                .with("label", Schemas.text("what a label says of it; empty where nothing follows"))
                .schema();
    }

    private static Map<String, Object> safetySchema() {
        Map<String, Object> texts = Schemas.list(Schemas.text(""));
        Map<String, Object> substance = Schemas.group()
                .with("name", Schemas.text(""))
                .with("known", Schemas.flag("whether the most that can be in it is known"))
                .with("mg_per_kg", Schemas.ref("Range"))
                .with("mg_per_l", Schemas.ref("Range"))
                .with("mg_per_serving", Schemas.ref("Range"))
                .with("mg_per_day", Schemas.ref("Range"))
                .with("known_part_max_mg_per_kg", Schemas.number("most of what is known"))
                .with("from", texts)
                .with("not_known_from", texts)
                .with("source_groups", texts)
                .with("status", Schemas.text("read, or from memory"))
                .schema();
        return Schemas.group()
                .with("serving_ml", Schemas.number(""))
                .with("servings_per_day", Schemas.number(""))
                .with("body_kg", Schemas.number(""))
                .with("places", texts)
                .with("substances", Schemas.list(substance))
                .maybe("keeping", Schemas.ref("Keeping"))
                .with("tables", Schemas.list(Schemas.ref("RulesEdition")))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .with("standing", Schemas.text("that it is information, no advice"))
                .schema();
    }

    private static Map<String, Object> labelSchema() {
        return Schemas.group()
                .with("title", Schemas.text(""))
                .with(
                        "strength",
                        numbers("stated_vol_percent", "tolerance_vol_percent", "low_vol_percent", "high_vol_percent"))
                .with("sugar_as_invert_g_per_l", Schemas.number(""))
                .with("sugar_mass_percent", Schemas.number(""))
                .with("sugar_g_per_100ml", Schemas.number(""))
                .with("sugar_is", side())
                .with("place", Schemas.text("where the label is read, EU or US"))
                .with("ingredients", Schemas.list(Schemas.text("what went in, most by mass first")))
                .with("classes", Schemas.list(legalClass()))
                .with("called", Schemas.list(legalClass()))
                .with("energy_kj_per_100ml", Schemas.number(""))
                .with("energy_kcal_per_100ml", Schemas.number(""))
                .with("energy_is", side())
                .with("serving_ml", Schemas.number(""))
                .with("energy_kj_per_serving", Schemas.number(""))
                .with("energy_kcal_per_serving", Schemas.number(""))
                .with("bottle_ml", Schemas.number(""))
                .with("bottle_lawful_eu", Schemas.flag("whether spirits may be sold in this size"))
                .with("bottle_lawful_us", Schemas.flag("whether spirits may be sold in this size"))
                .with("standard_drinks", Schemas.list(standardDrink()))
                .with("statements", Schemas.list(texts("market", "words", "basis")))
                .maybe("keeping", Schemas.ref("Keeping"))
                .with("duty", Schemas.list(duty()))
                .with("no_rate_of", Schemas.list(Schemas.text("country whose table has no rate for this strength")))
                .with("cost", cost())
                .with("tables", Schemas.list(Schemas.ref("RulesEdition")))
                .with("link", Schemas.orNull(Schemas.text("address that the label leads to")))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .with("against", Schemas.list(Schemas.ref("Finding")))
                .with("not_for_sale", Schemas.text("said on a label of a home"))
                .with("standing", Schemas.text("that it is information, no advice"))
                .schema();
    }

    private static Map<String, Object> legalClass() {
        Map<String, Object> miss = Schemas.group()
                .with("what", Schemas.text(""))
                .with("found", Schemas.number(""))
                .with("wanted", Schemas.number(""))
                .with("way", Schemas.text("at least, more than, at most or less than"))
                .with("by", Schemas.number("by how much it is missed"))
                .with("unit", Schemas.text(""))
                .schema();
        Map<String, Object> asked = Schemas.group()
                .with("what", Schemas.text("what it asks of what goes in"))
                .with("outcome", Schemas.text("ruled out, met or not known"))
                .with("why", Schemas.text("why it is ruled out, and what gets there; empty where it is not"))
                .with("by", Schemas.list(Schemas.text("line that rules it out")))
                .schema();
        return Schemas.group()
                .with("market", Schemas.text("EU or US"))
                .with("name", Schemas.text(""))
                .with("standing", Schemas.text("met, asks besides, not shown or missed"))
                .with("met_by_figures", Schemas.flag("whether no figure rules it out"))
                .with("near", Schemas.flag("whether it is missed by so little that somebody can be after it"))
                .with("misses", Schemas.list(miss))
                .with("asked", Schemas.list(asked))
                .with("gets_there", Schemas.list(wayThere()))
                .with("not_shown", Schemas.list(Schemas.text("what may or may not be met")))
                .with("met_by_rounding", Schemas.list(Schemas.text("figure that lies within by its tenth alone")))
                .with("asks_besides", Schemas.text("what figures cannot show, in sentences"))
                .with("clause", Schemas.text(""))
                .with("source", Schemas.text(""))
                .with("status", Schemas.text(""))
                .schema();
    }

    private static Map<String, Object> wayThere() {
        Map<String, Object> added = Schemas.group()
                .with("what", Schemas.text(""))
                .with("mass_g", Schemas.number(""))
                .with("volume_ml", Schemas.orNull(Schemas.number("at 20 °C; null for solids")))
                .schema();
        return Schemas.group()
                .with("to_volume_ml", Schemas.number("volume at 20 °C that it is added to: what the recipe makes"))
                .with("add", Schemas.list(added))
                .with("strength_vol_percent", Schemas.number("then"))
                .with("sugar_as_invert_g_per_l", Schemas.number("then"))
                .with("sugar_mass_percent", Schemas.number("then"))
                .with("volume_20c_ml", Schemas.number("then"))
                .with("then_open", Schemas.list(Schemas.text("what is still missed then")))
                .schema();
    }

    private static Map<String, Object> side() {
        return Schemas.text("how the figure stands to what is in it: as counted, at least, at most, not known");
    }

    private static Map<String, Object> standardDrink() {
        return Schemas.group()
                .with("country", Schemas.text(""))
                .with("name", Schemas.text(""))
                .with("ethanol_g", Schemas.number(""))
                .with("per_serving", Schemas.number(""))
                .with("per_bottle", Schemas.number(""))
                .with("guideline", Schemas.text(""))
                .with("status", Schemas.text(""))
                .schema();
    }

    private static Map<String, Object> cost() {
        Map<String, Object> money = Schemas.group()
                .with("amount", Schemas.number(""))
                .with("currency", Schemas.text(""))
                .schema();
        return Schemas.group()
                .with("per_bottle", Schemas.list(money))
                .with("cost_known", Schemas.flag("whether every price is known; else it costs more"))
                .with("unpriced", Schemas.list(Schemas.text("what goes in without a known price")))
                .with("duty_of", Schemas.orNull(Schemas.text("country whose duty counts; null where none does")))
                .with("with_duty", Schemas.list(money))
                .schema();
    }

    private static Map<String, Object> duty() {
        return Schemas.group()
                .with("country", Schemas.text(""))
                .with("per_bottle", Schemas.number(""))
                .with("per_litre_of_pure_alcohol", Schemas.number(""))
                .with("currency", Schemas.text(""))
                .with("as_of", Schemas.text(""))
                .with("note", Schemas.text(""))
                .with("status", Schemas.text(""))
                .schema();
    }

    private static Map<String, Object> numbers(String... keys) {
        Schemas.Group group = Schemas.group();
        for (String key : keys) {
            group.with(key, Schemas.number(""));
        }
        return group.schema();
    }

    private static Map<String, Object> texts(String... keys) {
        Schemas.Group group = Schemas.group();
        for (String key : keys) {
            group.with(key, Schemas.text(""));
        }
        return group.schema();
    }
}

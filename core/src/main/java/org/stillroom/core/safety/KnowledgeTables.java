package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;

/** Reads the shipped tables of safety, each row with its status. */
final class KnowledgeTables {
    private static final String GRAMS = " g";

    private final TableSet tables;

    private KnowledgeTables(TableSet tables) {
        this.tables = tables;
    }

    static Knowledge read(TableSet tables) {
        return new KnowledgeTables(tables).read();
    }

    private Knowledge read() {
        List<Composed> compositions = new ArrayList<>();
        tables.open("aroma/material_compositions.csv").rows().forEach(row -> compositions.add(ofMaterial(row)));
        compositions.addAll(open("plant_substances").map(KnowledgeTables::ofPlant));
        return new Knowledge(
                open("substances").map(KnowledgeTables::watched),
                open("plants").map(KnowledgeTables::plant),
                compositions,
                open("eu_1334_2008_annex3").map(KnowledgeTables::maximum),
                open("eu_1334_2008_annex4").map(KnowledgeTables::restricted),
                listsOfTheUs(),
                open("us_limits").map(KnowledgeTables::usLimit),
                open("added_limits").map(KnowledgeTables::addedLimit),
                open("us_prohibited").map(KnowledgeTables::prohibited),
                open("intake_limits").map(KnowledgeTables::guidance),
                open("not_for_ingestion").map(KnowledgeTables::blocked),
                open("toxic_plants").map(KnowledgeTables::poison),
                open("cautions").map(KnowledgeTables::caution),
                open("text_cautions").map(KnowledgeTables::textCaution),
                open("bought_drinks").map(KnowledgeTables::boughtDrink),
                open("allergens").map(KnowledgeTables::allergen),
                open("ethanol_flash_points")
                        .map(row -> new Knowledge.FlashPoint(
                                row.number("abv_pct_vol"), row.number("flash_point_C"), RowStatus.of(row))),
                open("standard_drinks").map(KnowledgeTables::drink).stream()
                        .filter(drink -> drink.grams() > 0.0)
                        .toList(),
                tables);
    }

    private record Opened(Table table) {
        <T> List<T> map(Function<Table.Row, T> reader) {
            return table.rows().stream().map(reader).toList();
        }
    }

    private Opened open(String name) {
        return new Opened(tables.open("safety/" + name + ".csv"));
    }

    private static Watched watched(Table.Row row) {
        return new Watched(
                row.text("name"),
                Words.list(row.text("members")),
                Words.names(row.textOrEmpty("other_names")),
                row.textOrEmpty("eu_name"),
                row.textOrEmpty("as_such").equals("yes"));
    }

    private static Plant plant(Table.Row row) {
        boolean oily = !row.textOrEmpty("oil_most_percent").isEmpty();
        return new Plant(
                row.text("plant"),
                Words.list(row.text("botanical")),
                Words.names(row.text("names")),
                Words.list(row.textOrEmpty("holds")),
                Words.list(row.textOrEmpty("oil_materials")),
                Words.list(row.textOrEmpty("plant_materials")),
                oily ? row.number("oil_least_percent") : 0.0,
                oily ? row.number("oil_most_percent") : 0.0);
    }

    private static Composed ofMaterial(Table.Row row) {
        return new Composed(
                row.text("material"),
                row.text("name"),
                row.number("min_percent"),
                row.number("max_percent"),
                row.text("group"),
                RowStatus.of(row.standing("status")));
    }

    private static Composed ofPlant(Table.Row row) {
        return new Composed(
                row.text("material_id"),
                row.text("constituent"),
                row.number("min"),
                row.number("max"),
                row.text("basis"),
                RowStatus.of(row));
    }

    static Knowledge.EuMaximum maximum(Table.Row row) {
        return new Knowledge.EuMaximum(
                row.text("id"),
                row.text("part"),
                row.text("substance"),
                row.text("food_category"),
                row.textOrEmpty("max_mg_per_kg"),
                RowStatus.of(row));
    }

    static Knowledge.Restricted restricted(Table.Row row) {
        return new Knowledge.Restricted(
                row.text("part"),
                row.text("latin_name"),
                row.text("common_name"),
                row.text("condition"),
                RowStatus.of(row));
    }

    private List<Knowledge.UsEntry> listsOfTheUs() {
        List<Knowledge.UsEntry> all = new ArrayList<>();
        all.addAll(open("us_21cfr182_20").map(KnowledgeTables::spice));
        all.addAll(open("us_21cfr182_10").map(KnowledgeTables::spice));
        all.addAll(open("us_21cfr182_other").map(KnowledgeTables::other));
        all.addAll(open("us_21cfr172_510").map(KnowledgeTables::flavouring));
        return all;
    }

    static Knowledge.UsEntry spice(Table.Row row) {
        return entry(row, "common_name", "botanical_name", "", "");
    }

    static Knowledge.UsEntry other(Table.Row row) {
        return limited(row, "name", "origin_or_note");
    }

    static Knowledge.UsEntry flavouring(Table.Row row) {
        return limited(row, "common_name", "scientific_name");
    }

    static Knowledge.UsLimit usLimit(Table.Row row) {
        if (!(row.number("max_mg_per_kg") >= 0.0)) {
            throw row.fault("max_mg_per_kg", "lies below zero");
        }
        return new Knowledge.UsLimit(
                row.text("watched"),
                row.text("drinks"),
                row.number("max_mg_per_kg"),
                row.text("edge"),
                row.text("says"),
                RowStatus.of(row));
    }

    static Knowledge.AddedLimit addedLimit(Table.Row row) {
        if (!(row.number("max_mg_per_kg") >= 0.0)) {
            throw row.fault("max_mg_per_kg", "lies below zero");
        }
        return new Knowledge.AddedLimit(
                Place.valueOf(row.text("place")),
                row.text("substance"),
                Words.names(row.text("names")),
                row.number("max_mg_per_kg"),
                row.text("says"),
                row.text("sweetens").equals("yes"),
                RowStatus.of(row));
    }

    static Knowledge.Prohibited prohibited(Table.Row row) {
        return new Knowledge.Prohibited(
                row.text("clause"),
                row.text("what"),
                Words.list(row.text("names")),
                Words.names(row.textOrEmpty("parts_left_out")),
                RowStatus.of(row));
    }

    private static Knowledge.UsEntry limited(Table.Row row, String name, String botanical) {
        return entry(row, name, botanical, row.textOrEmpty("limitation"), row.textOrEmpty("flags"));
    }

    private static Knowledge.UsEntry entry(
            Table.Row row, String name, String botanical, String limitation, String flags) {
        return new Knowledge.UsEntry(
                row.text("clause"),
                row.text(name),
                Words.plain(row.text(name)),
                Words.list(row.text("names")).stream().map(NameWords::of).toList(),
                Set.copyOf(Words.list(row.textOrEmpty("parts"))),
                row.textOrEmpty(botanical),
                limitation,
                Words.list(flags),
                RowStatus.of(row));
    }

    static Knowledge.Guidance guidance(Table.Row row) {
        return new Knowledge.Guidance(
                row.text("substance"),
                row.text("kind"),
                row.textOrEmpty("value"),
                row.textOrEmpty("unit"),
                row.textOrEmpty("year"),
                row.text("issuing_body_or_paper"),
                RowStatus.of(row),
                row.textOrEmpty("watched"),
                row.text("compares"),
                row.textOrEmpty("genotoxic").equals("yes"));
    }

    static Knowledge.Blocked blocked(Table.Row row) {
        return new Knowledge.Blocked(
                row.text("material"),
                row.text("reason"),
                row.text("program_action"),
                RowStatus.of(row),
                Words.names(row.text("names")),
                row.text("stops").equals("yes"));
    }

    static Knowledge.Poison poison(Table.Row row) {
        return new Knowledge.Poison(
                row.text("plant"),
                row.text("botanical"),
                row.text("reason"),
                RowStatus.of(row),
                Words.names(row.text("names")),
                row.text("action").equals("stop"));
    }

    private static Knowledge.NamedCaution caution(Table.Row row) {
        return new Knowledge.NamedCaution(
                row.text("rule"),
                Words.names(row.text("names")),
                row.text("where"),
                Words.list(row.textOrEmpty("kinds")),
                row.textOrEmpty("unless"),
                Severity.valueOf(row.text("severity").toUpperCase(Locale.ROOT)),
                row.text("verdict"),
                row.text("message"),
                row.text("remedy"),
                RowStatus.of(row));
    }

    private static TextCaution textCaution(Table.Row row) {
        return new TextCaution(
                row.text("rule"),
                TextCaution.Of.valueOf(row.text("of").toUpperCase(Locale.ROOT)),
                TextCaution.ways(row.text("words")),
                (int) row.number("near"),
                TextCaution.phrases(row.textOrEmpty("unless")),
                TextCaution.phrases(row.textOrEmpty("even_so")),
                TextCaution.phrases(row.textOrEmpty("until")),
                row.textOrEmpty("with").equals("spirit"),
                Severity.valueOf(row.text("severity").toUpperCase(Locale.ROOT)),
                row.text("verdict"),
                row.text("message"),
                row.text("remedy"),
                RowStatus.of(row));
    }

    private static Knowledge.BoughtDrink boughtDrink(Table.Row row) {
        return new Knowledge.BoughtDrink(
                row.text("watched"), row.text("of"), TextCaution.phrases(row.text("names")), RowStatus.of(row));
    }

    private static AllergenName allergen(Table.Row row) {
        return new AllergenName(
                row.text("allergen"),
                row.text("what"),
                AllergenName.Says.valueOf(row.text("says").toUpperCase(Locale.ROOT)),
                TextCaution.phrases(row.text("names")),
                Words.list(row.textOrEmpty("kinds")),
                AllergenName.InUs.valueOf(row.text("us").toUpperCase(Locale.ROOT)),
                row.textOrEmpty("so2").isEmpty() ? 0.0 : row.number("so2"),
                RowStatus.of(row));
    }

    private static Knowledge.StandardDrink drink(Table.Row row) {
        return new Knowledge.StandardDrink(
                row.text("country"),
                row.textOrEmpty("name"),
                row.number("ethanol_g"),
                row.number("ethanol_mL_20C"),
                grams(row, "per_week"),
                grams(row, "per_day"),
                row.textOrEmpty("year"),
                row.textOrEmpty("place").isEmpty() ? null : Place.valueOf(row.text("place")),
                row.textOrEmpty("guideline"),
                row.textOrEmpty("body"),
                RowStatus.of(row));
    }

    /** Returns what a guideline allows in grams of ethanol; it counts drinks, or grams where it says so. */
    private static List<Double> grams(Table.Row row, String column) {
        return Words.list(row.textOrEmpty(column)).stream()
                .map(each -> each.endsWith(GRAMS)
                        ? Double.parseDouble(each.substring(0, each.length() - GRAMS.length()))
                        : Double.parseDouble(each) * row.number("ethanol_g"))
                .toList();
    }
}

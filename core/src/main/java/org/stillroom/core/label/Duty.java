package org.stillroom.core.label;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.reference.Tables;

/**
 * Duty on paper for a bottle; rates are of their date, to be checked before they are used.
 *
 * @param country whose rate
 * @param perLitreOfAlcohol rate per litre of pure alcohol, in {@code currency}
 * @param currency three letters
 * @param asOf year or date of the rate
 * @param note what it leaves out
 * @param recalled whether the rate is from memory
 * @param perBottle what a bottle would bear
 */
public record Duty(
        String country,
        double perLitreOfAlcohol,
        String currency,
        String asOf,
        String note,
        boolean recalled,
        double perBottle) {
    private static final Map<String, List<String>> CALLED = Tables.open("label/country_names.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(
                    row -> row.text("country"),
                    row -> List.of(row.text("called").split(";", -1))));

    /**
     * Returns the duty of a bottle by country.
     *
     * @param tables in force
     * @param strength % vol at 20 °C
     * @param millilitres of the bottle
     */
    public static List<Duty> of(TableSet tables, double strength, double millilitres) {
        return tables.open("label/duty.csv").rows().stream()
                .filter(row -> strength > row.number("above_pct_vol") && strength <= row.number("up_to_pct_vol"))
                .map(row -> duty(row, strength, millilitres))
                .toList();
    }

    /** Returns the countries of which the table holds rates. */
    public static List<String> countries(TableSet tables) {
        return tables.open("label/duty.csv").rows().stream()
                .map(row -> row.text("country"))
                .distinct()
                .toList();
    }

    /** Returns the country of the table that a text means: its name, its name in German, or what it is called for short. */
    public static Optional<String> country(TableSet tables, String typed) {
        String wanted = PlainLetters.of(typed);
        return countries(tables).stream()
                .filter(country -> Stream.concat(Stream.of(country), CALLED.getOrDefault(country, List.of()).stream())
                        .map(PlainLetters::of)
                        .anyMatch(wanted::equals))
                .findFirst();
    }

    private static Duty duty(Table.Row row, double strength, double millilitres) {
        double rate = row.number("per_litre_of_pure_alcohol");
        return new Duty(
                row.text("country"),
                rate,
                row.text("currency"),
                row.text("as_of"),
                row.textOrEmpty("note"),
                row.text("status").equals("memory"),
                rate * strength / 100.0 * millilitres / 1000.0);
    }
}

package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * A row of the table of what names ask of what goes in.
 *
 * @param asks which question it is
 * @param what it asks for, or goes without, as it is told
 * @param words by which that is found in what things are called; several groups where one of them alone has to do
 * @param kinds that are it, whatever they are called
 * @param but words of what is known to be something else
 * @param leftOut kinds that do not count, whatever they are called
 * @param least part of the whole at least, 0 to 1; of 0 there must be some; null where there is none
 * @param most part of the whole at most, or null
 * @param upTo strength up to which it is asked, % vol at 20 °C
 */
record Asked(
        Asks asks,
        String what,
        List<List<String>> words,
        Set<Kind> kinds,
        List<String> but,
        Set<Kind> leftOut,
        @Nullable Double least,
        @Nullable Double most,
        double upTo) {
    private static final Map<String, List<Asked>> BY_NAME = Tables.open("label/category_conditions.csv").rows().stream()
            .collect(Collectors.groupingBy(
                    row -> key(row.text("market"), row.text("name")),
                    Collectors.mapping(Asked::read, Collectors.toUnmodifiableList())));

    /** What a thing that went in is to a row. */
    enum Is {
        MEANT,
        OTHER,
        /** Its words do not tell. */
        OPEN
    }

    /** Returns what a name asks of a drink of a strength in % vol. */
    static List<Asked> of(Market market, String name, double strength) {
        return BY_NAME.getOrDefault(key(market.name(), name), List.of()).stream()
                .filter(asked -> Bounds.tenths(strength) <= Bounds.tenths(asked.upTo))
                .toList();
    }

    private static String key(String market, String name) {
        return market + " " + PlainLetters.of(name);
    }

    static Asked read(Table.Row row) {
        List<List<String>> groups = new ArrayList<>();
        for (String group : row.textOrEmpty("words").split("\\|", -1)) {
            groups.add(list(group));
        }
        return new Asked(
                Asks.of(row),
                row.text("what"),
                groups,
                kinds(row, "kinds"),
                list(row.textOrEmpty("but")),
                kinds(row, "left_out"),
                part(row, "least_percent"),
                part(row, "most_percent"),
                row.textOrEmpty("up_to_pct_vol").isEmpty() ? 100.0 : row.number("up_to_pct_vol"));
    }

    private static List<String> list(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(";", -1));
    }

    private static Set<Kind> kinds(Table.Row row, String column) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        for (String label : list(row.textOrEmpty(column))) {
            kinds.add(Arrays.stream(Kind.values())
                    .filter(kind -> kind.label().equals(label))
                    .findFirst()
                    .orElseThrow(() -> row.fault(column, "\"" + label + "\" is no kind")));
        }
        return kinds;
    }

    private static @Nullable Double part(Table.Row row, String column) {
        @Nullable Double percent = Bounds.bound(row, column);
        return percent == null ? null : percent / 100.0;
    }

    Shown of(List<GoneIn> all) {
        return asks.judge(this, all);
    }

    /** Returns what a thing is to the row by one group of its words; what is named so is meant, though another word may be in its name. */
    Is of(GoneIn one, List<String> group, GoneIn.Tells wanted) {
        if (leftOut.contains(one.kind())) {
            return Is.OTHER;
        }
        if (one.named().test(group)) {
            return Is.MEANT;
        }
        if (one.named().test(but)) {
            return Is.OTHER;
        }
        return kinds.contains(one.kind()) ? Is.MEANT : one.tells().contains(wanted) ? Is.OTHER : Is.OPEN;
    }

    /** Returns every word by which what is meant is found. */
    List<String> allWords() {
        return words.stream().flatMap(List::stream).toList();
    }

    Shown met() {
        return new Shown(what, Shown.Outcome.MET, "", List.of(), false);
    }

    Shown notKnown() {
        return new Shown(what, Shown.Outcome.NOT_KNOWN, "", List.of(), false);
    }

    Shown lacking(boolean isFar) {
        return new Shown(
                what,
                Shown.Outcome.RULED_OUT,
                "It asks for " + what + ", and nothing in it is of that: put some in.",
                List.of(),
                isFar);
    }

    Shown ruledOut(String why, List<GoneIn> by, boolean isFar) {
        return new Shown(what, Shown.Outcome.RULED_OUT, why, names(by), isFar);
    }

    static List<String> names(List<GoneIn> things) {
        return things.stream().map(GoneIn::name).distinct().toList();
    }

    static String told(List<GoneIn> things) {
        return String.join(", ", names(things));
    }

    static String percent(double part) {
        return QuantityWords.plain(Math.rint(1000.0 * part) / 10.0);
    }
}

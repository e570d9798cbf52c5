package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** How titles and makers say lawful names, in English and German; the names themselves need no row of the table. */
public final class CalledNames {
    private static final String REST = "*";

    private static final List<Row> ROWS =
            Tables.open("label/called_names.csv").rows().stream().map(Row::of).toList();

    /** Where in a title a word means a name. */
    private enum Stands {
        ANYWHERE("anywhere"),
        END("end"),
        AFTER_A_FLAVOUR("after a flavour");

        private final String cell;

        Stands(String cell) {
            this.cell = cell;
        }

        static Stands of(Table.Row row) {
            return Arrays.stream(values())
                    .filter(each -> each.cell.equals(row.text("stands")))
                    .findFirst()
                    .orElseThrow(() -> row.fault("stands", "is no place in a title"));
        }

        boolean isIn(String title, String word) {
            return switch (this) {
                case ANYWHERE -> (title + " ").contains(word + " ");
                case END -> title.endsWith(word);
                case AFTER_A_FLAVOUR -> title.endsWith(word) && title.length() > word.length();
            };
        }
    }

    /** @param words each with a blank before it, but where it can be the end of a longer one */
    private record Row(Market market, List<String> words, Stands stands, List<String> names) {
        static Row of(Table.Row row) {
            return new Row(
                    Market.valueOf(row.text("market")),
                    Arrays.stream(row.text("called").split(";", -1))
                            .map(Row::word)
                            .toList(),
                    Stands.of(row),
                    List.of(row.text("names").split(";", -1)));
        }

        private static String word(String cell) {
            return (cell.startsWith(REST) ? "" : " ") + PlainLetters.of(cell);
        }

        boolean names(LegalClass name) {
            return market == name.market() && names.contains(name.name());
        }
    }

    private CalledNames() {}

    /** Returns whether a text is one of several names that mean the same, or a word for it. */
    static boolean isCalled(LegalClass name, String typed) {
        String wanted = PlainLetters.of(typed);
        return Stream.concat(
                        parts(name),
                        ROWS.stream().filter(row -> row.names(name)).flatMap(row -> row.words().stream()))
                .map(String::strip)
                .anyMatch(wanted::equals);
    }

    /**
     * Returns which of these names a title bears, by the longest words for one; a drink that is one of them bears it rightly. Empty
     * where it bears none.
     */
    public static List<LegalClass> borne(String title, List<LegalClass> names) {
        String plain = " " + PlainLetters.of(title);
        int longest = 0;
        List<LegalClass> borne = new ArrayList<>();
        for (LegalClass name : names) {
            int length = length(plain, name);
            if (length > longest) {
                borne.clear();
                longest = length;
            }
            if (length > 0 && length == longest) {
                borne.add(name);
            }
        }
        return List.copyOf(borne);
    }

    /** Returns how many letters of a title are the name, 0 where they are not. */
    private static int length(String title, LegalClass name) {
        Predicate<Row> means = row -> row.names(name)
                && (row.stands() != Stands.AFTER_A_FLAVOUR || name.ruledOut().isEmpty());
        Stream<String> inTable = ROWS.stream()
                .filter(means)
                .flatMap(row -> row.words().stream().filter(word -> row.stands().isIn(title, word)));
        Stream<String> itself = parts(name).filter(title::endsWith);
        return Stream.concat(itself, inTable)
                .map(String::strip)
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    private static Stream<String> parts(LegalClass name) {
        return Arrays.stream(name.name().split(" / ", -1))
                .map(part -> " " + PlainLetters.of(part.replaceAll(" \\(.*", "")));
    }
}

package org.stillroom.core.safety;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** Words by which a rule reads what a maker wrote; what each list is for stands in its table. */
enum WordList {
    STONES_OUT,
    FLESH_OF_FRUIT,
    DRIED_WITHOUT_STONES,
    STONES_MAY_BE_IN_IT,
    PARTS_THAT_ARE_NOT_THE_FRUIT,
    MILKS_OF_PLANTS,
    FERMENTS,
    GOES_IN,
    STANDS_WITH,
    ONLY_SPEAKS,
    SPOKEN_OF,
    SERVED,
    FREED_OF_PRUSSIC_ACID,
    TABLE_SALT,
    CITRUS_FRUIT,
    OF_MANY_PLANTS,
    UNFLAVOURED_SPIRITS,
    NAMED_SPIRITS,
    NAMED_WINES,
    WITHOUT_FLAVOUR,
    BITTER_PLANTS,
    FILLS_OR_KEEPS,
    OTHER_PLANTS,
    PURE_SUBSTANCES;

    private static final Map<WordList, Written> WRITTEN = read(Tables.open("safety/word_lists.csv"));

    private record Written(Set<String> words, List<TextWords.Phrase> phrases) {
        static Written of(List<String> words) {
            return new Written(
                    Set.copyOf(words), words.stream().map(TextWords.Phrase::of).toList());
        }
    }

    private static Map<WordList, Written> read(Table table) {
        Map<WordList, Written> written = new EnumMap<>(WordList.class);
        for (Table.Row row : table.rows()) {
            String name = row.text("list").toUpperCase(Locale.ROOT).replace(' ', '_');
            written.put(valueOf(name), Written.of(Words.list(row.text("words"))));
        }
        return written;
    }

    private Written written() {
        Written written = WRITTEN.get(this);
        if (written == null) {
            throw new IllegalStateException("word_lists.csv has no list " + this);
        }
        return written;
    }

    /** Returns its words one by one, as they are written in the table. */
    Set<String> words() {
        return written().words();
    }

    /** Returns whether a text says one of its phrases as it was written. */
    boolean isIn(String text) {
        return TextWords.of(text).says(written().phrases());
    }

    List<TextWords.Phrase> phrases() {
        return written().phrases();
    }

    /** Returns whether a text says one of its phrases as it was written, in English, or by a botanical name. */
    boolean isInAnyReading(String text) {
        return TextWords.says(text, written().phrases());
    }
}

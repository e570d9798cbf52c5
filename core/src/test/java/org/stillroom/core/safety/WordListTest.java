package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

class WordListTest {
    @ParameterizedTest
    @EnumSource(WordList.class)
    void eachWordIsWrittenOnce(WordList list) {
        String name = list.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        Table.Row row = Tables.open("safety/word_lists.csv").rows().stream()
                .filter(each -> each.text("list").equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(Words.list(row.text("words"))).isNotEmpty().doesNotHaveDuplicates();
    }
}

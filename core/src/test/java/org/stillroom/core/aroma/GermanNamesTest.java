package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** German names as people write them, common usage, from memory. */
class GermanNamesTest {
    @ParameterizedTest
    @CsvSource({
        "Zitronenschale, lemon peel",
        "Zitronenschalen, lemon peel",
        "Zitronen-Öl, lemon oil",
        "Zitronenoel, lemon oil",
        "Ätherisches Zitronenschalenöl, essential lemon peel oil",
        "Wermutkraut, wormwood herb",
        "getrocknete Angelikawurzeln, dried angelica root",
        "Himbeersaft, raspberry juice",
        "Kirschkerne, cherry kernel",
        "Bittermandelöl, bitter almond oil",
        "Vanilleschote, vanilla pod",
        "grüne Walnüsse, green walnut",
        "Grüne Minze, spearmint",
        "Weißer Germer, white hellebore",
        "Weisser Germer, white hellebore",
        "Holunderblüten, elder flower",
        "Petersiliensamenöl, parsley seed oil",
        "'Pfefferminze, frisch', peppermint fresh",
        "Limettenöl destilliert, lime oil distilled",
        "Absinthkraut, wormwood herb",
        "Absinthwermut, wormwood",
        "Herba Absinthii, herb wormwood",
        "Wermuttee, wormwood infusion",
        "Salbeitee, sage infusion",
        "Thujazweige, thuja twig",
        "Tonkasamen, tonka seed",
        "Petersiliensamen, parsley seed",
        "Quassiaholz, quassia wood",
        "Kirschlorbeeren, cherry laurel",
        "Kirschlorbeerwasser, cherry laurel water",
        "Vogelkirschkerne, sweet cherry kernel",
        "Vogelbeeren, rowan"
    })
    void whatPeopleWriteIsReadInEnglish(String german, String english) {
        assertThat(GermanNames.english(german)).isEqualTo(english);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Nachtkerzenwurz", "Kirschwasser", "Zitronenfalter", "Muskateller", "Rotwein", "Kernseife", "Tee"
            })
    void whatNoRowAndNoCompoundIsStaysAsItWasWritten(String text) {
        assertThat(GermanNames.english(text)).isEqualTo(text);
    }

    @Test
    void noEnglishNameOfATableIsTakenForGerman() {
        List<String> names = new ArrayList<>();
        Materials.list().forEach(material -> names.addAll(namesOf(material.name(), material.aliases())));
        EssentialOils.list().forEach(oil -> names.addAll(namesOf(oil.name(), oil.aliases())));
        for (String table : List.of("safety/plants.csv", "safety/toxic_plants.csv", "safety/not_for_ingestion.csv")) {
            Tables.open(table)
                    .rows()
                    .forEach(row -> names.addAll(List.of(row.text("names").split(";", -1))));
        }
        Tables.open("extraction/plants.csv")
                .rows()
                .forEach(row -> names.addAll(namesOf(
                        row.text("name"), List.of(row.textOrEmpty("aliases").split(";", -1)))));
        assertThat(names)
                .hasSizeGreaterThan(500)
                .allSatisfy(name -> assertThat(GermanNames.english(name)).isEqualTo(name));
    }

    @Test
    void everyGermanWordStandsInOneRow() {
        Table table = Tables.open("aroma/german_names.csv");
        List<String> words = table.rows().stream()
                .flatMap(row -> Stream.of(row.text("german").split(";", -1)))
                .toList();
        assertThat(words).doesNotHaveDuplicates();
    }

    private static List<String> namesOf(String name, List<String> aliases) {
        List<String> all = new ArrayList<>(aliases);
        all.add(name);
        return all;
    }
}

package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

class BotanicalNamesTest {
    @ParameterizedTest
    @CsvSource({
        "Mentha piperita oil,peppermint oil",
        "Mentha x piperita,peppermint",
        "MENTHA × PIPERITA L.,peppermint",
        "Citrus limon (L.) Burm. f. peel,lemon peel",
        "Pimenta racemosa (Mill.) J. W. Moore,west indian bay",
        "Cananga odorata Hook. f. and Thoms.,ylang ylang",
        "Trigonella foenum-graecum,fenugreek",
        "Foeniculum vulgare Mill. var. dulce (DC.) Alex.,sweet fennel",
        "Citrus aurantium ssp. bergamia,bergamot",
        "Citrus aurantium,bitter orange",
        "A. absinthium herb,wormwood herb",
        "Digitalis lanata,foxglove",
        "Tilia spp. flowers,linden flowers",
        "oil of Juniperus sabina,oil of savin"
    })
    void aBotanicalNameBecomesTheCommonOne(String text, String reading) {
        assertThat(BotanicalNames.readings(text)).containsExactly(reading);
    }

    /** What it does not know it leaves, so that nobody takes it for the species. */
    @ParameterizedTest
    @CsvSource({"Artemisia moonensis oil,wormwood moonensis oil", "Mentha piperita moonroot,peppermint moonroot"})
    void whatIsNotKnownStays(String text, String reading) {
        assertThat(BotanicalNames.readings(text)).containsExactly(reading);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Lemon oil, cold pressed", "1,8-cineole", "moon dust", "", "a link to a host"})
    void aTextWithoutOneStaysAsItIs(String text) {
        assertThat(BotanicalNames.readings(text)).containsExactly(text);
    }

    @Test
    void whereItLeavesOpenWhichPlantItIsEachIsMeant() {
        assertThat(BotanicalNames.readings("Melaleuca oil"))
                .containsExactlyInAnyOrder("tea tree oil", "cajeput oil", "niaouli oil");
    }

    /** A common name that holds a botanical one would be read twice and otherwise. */
    @Test
    @Tag("property")
    void noCommonNameIsABotanicalOne() {
        List<String> again = new ArrayList<>();
        Table table = Tables.open("aroma/botanical_names.csv");
        assertThat(table.rows()).hasSizeGreaterThan(650);
        for (Table.Row row : table.rows()) {
            for (String name : row.text("names").split(";", -1)) {
                if (!BotanicalNames.readings(name).equals(List.of(name))) {
                    again.add(row.text("botanical") + ": " + name);
                }
            }
        }
        assertThat(again).isEmpty();
    }

    /** Each botanical name among the materials finds a material of that plant. */
    @Test
    @Tag("property")
    void everyMaterialIsFoundByItsBotanicalName() {
        List<String> missed = new ArrayList<>();
        for (Material material : Materials.list()) {
            for (String botanical : botanicals(material.botanical())) {
                Material found = Materials.find(botanical);
                if (found == null || !isOf(found, botanical)) {
                    missed.add(botanical + " (" + material.id() + ") is " + (found == null ? null : found.id()));
                }
                @Nullable EssentialOil oil = EssentialOils.find(botanical + " oil");
                if (material.kind() == Material.Kind.OIL && oil == null && material.analysis() != null) {
                    missed.add(botanical + " oil");
                }
            }
        }
        assertThat(missed).isEmpty();
    }

    private static boolean isOf(Material material, String botanical) {
        return botanicals(material.botanical()).stream()
                .anyMatch(each -> each.equals(botanical)
                        || BotanicalNames.readings(each).equals(BotanicalNames.readings(botanical)));
    }

    /** "Mentha spicata, M. x gracilis" are two; "Cymbopogon citratus / flexuosus" too; what is said of hybrids is left out. */
    private static List<String> botanicals(String printed) {
        List<String> all = new ArrayList<>();
        String genus = "";
        for (String part :
                printed.replace(" and hybrids", "").replace(" and spp.", "").split(", | / ", -1)) {
            boolean bare = Character.isLowerCase(part.charAt(0));
            String full = bare ? genus + " " + part : part;
            if (full.charAt(1) == '.') {
                full = genus + full.substring(2);
            }
            genus = full.split(" ", -1)[0];
            if (full.contains(" ")) {
                all.add(full);
            }
        }
        return all;
    }
}

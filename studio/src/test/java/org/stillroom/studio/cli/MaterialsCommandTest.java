package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.aroma.Materials;
import tools.jackson.databind.JsonNode;

/** The table of materials as it is asked for. */
class MaterialsCommandTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void allAreListedAndOneKindAlone() {
        assertThat(names(Desk.ask("materials").json()))
                .containsExactlyElementsOf(
                        Materials.list().stream().map(each -> each.name()).toList());
        assertThat(names(Desk.ask("materials --kind extract").json()))
                .containsExactly("vanilla extract", "orris butter", "ginger oleoresin", "ginger tincture of commerce");
        assertThat(Desk.type("materials --kind herb").err()).contains("any, oil, plant, extract");
    }

    /** Regulation (EU) 2024/2427, annex, coriander oil: linalool 65 to 78 %; the other group is recalled from Ph. Eur. */
    @Test
    void groupsOfFiguresStandEachByItself() {
        JsonNode analyses = Desk.ask("materials --name coriander").json().at("/materials/0/analyses");
        assertThat(analyses).hasSize(2);
        assertThat(analyses.at("/0/status").asString()).isEqualTo("from memory");
        assertThat(analyses.at("/1/group").asString()).isEqualTo("Regulation (EU) 2024/2427 annex");
        assertThat(analyses.at("/1/status").asString()).isEqualTo("read");
        JsonNode linalool = analyses.at("/1/constituents/0");
        assertThat(linalool.get("key").asString()).isEqualTo("78-70-6");
        assertThat(linalool.get("least_percent").asDouble()).isEqualTo(65);
        assertThat(linalool.get("most_percent").asDouble()).isEqualTo(78);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wormwood", "Wermutöl", "Artemisia~absinthium~oil"})
    void whatIsNotForDrinkingSaysSo(String name) {
        Desk.Run run = Desk.type("materials --name " + name + " --json");
        assertThat(run.exit()).isEqualTo(1);
        JsonNode answer = run.json();
        assertThat(answer.at("/materials/0/title").asString()).isEqualTo("Wormwood oil");
        assertThat(answer.at("/findings/0/severity").asString()).isEqualTo("stop");
    }

    @Test
    void whatNoRowHasAndMustNotBeDrunkSaysSo() {
        assertThat(Desk.type("materials --name thuja").err()).contains("in no row", "must not be drunk");
        assertThat(Desk.type("materials --name xyzzy").err())
                .contains("in no row")
                .doesNotContain("must not be drunk");
    }

    @Test
    void rulesOfTheHouseAreHeldToMaterialsAndMacerates() throws IOException {
        Path rules = folder.resolve("rules.txt");
        Files.writeString(rules, "no coriander because a guest cannot stand it\nno plum because of the stones\n");
        assertThat(Desk.type("materials --name coriander --house-rules " + rules)
                        .out())
                .contains("a guest cannot stand it");
        assertThat(Desk.type("materials --name coriander").out()).doesNotContain("a guest cannot stand it");
        String macerate = "macerate --plant plum --mass 1kg --solvent 1L --strength 70%";
        assertThat(Desk.type(macerate + " --house-rules " + rules).out()).contains("because of the stones");
        assertThat(Desk.type(macerate).out()).doesNotContain("because of the stones");
    }

    @Test
    void aSlipIsAnsweredWithNamesThatAreNear() {
        assertThat(Desk.type("materials --name rosemery").err()).contains("Near it are: rosemary");
        assertThat(Desk.type("materials --name blood~orange").err()).contains("sweet orange", "bitter orange");
        assertThat(Desk.type("materials --name xyzzy").err()).contains("Leave the name out");
    }

    private static List<String> names(JsonNode answer) {
        List<String> names = new ArrayList<>();
        answer.get("materials").forEach(each -> names.add(each.get("name").asString()));
        return names;
    }
}

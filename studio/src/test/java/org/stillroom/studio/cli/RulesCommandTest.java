package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The rules command as it is typed. */
class RulesCommandTest {
    @TempDir
    private Path folder;

    private Path data;
    private Path recipe;

    @BeforeEach
    void open() throws IOException {
        data = folder.resolve("data");
        Store.open(new DataFolder(data)).close();
        recipe = folder.resolve("recipe.yaml");
        Files.writeString(recipe, """
                stillroom: 1
                title: Meadow cup
                target: {volume: 1 L, strength: 30 %}
                lines:
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: free}
                """);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("rules.csv"), """
                # Table: duty
                # Signed off by: T. Ester
                # As of: 2026-10-31
                # Source: made up
                country,above_pct_vol,up_to_pct_vol,per_litre_of_pure_alcohol,currency,as_of,note,status
                """ + text);
    }

    private JsonNode label() {
        return new JsonMapper()
                .readTree(
                        Desk.type("label " + recipe + " --json --data " + data).out());
    }

    @Test
    void aFileIsLookedAtTakenNamedInAnswersAndTakenBack() throws IOException {
        Path file = file("EU minimum,1.2,100,6.60,EUR,2026,made up,read\n");
        assertThat(Desk.type("rules " + file + " --data " + data).out())
                .contains("changed", "5.50", "6.60", "Nothing is changed yet.");
        assertThat(label().get("tables")).isEmpty();

        Desk.Run taken = Desk.type("rules " + file + " --data " + data + " --accept");
        assertThat(taken.exit()).isZero();
        assertThat(taken.out()).contains("Taken.");
        assertThat(label().at("/tables/0/signed_off_by").stringValue()).isEqualTo("T. Ester");
        assertThat(label().at("/duty/0/per_litre_of_pure_alcohol").doubleValue())
                .isEqualTo(6.6);
        assertThat(Desk.type("safety " + recipe + " --data " + data).out())
                .contains("Rules: duty as of 2026-10-31, signed off by T. Ester.");

        String number = Desk.type("rules --data " + data)
                .out()
                .lines()
                .skip(1)
                .findFirst()
                .orElse("")
                .split(":", -1)[0];
        assertThat(Desk.type("rules --data " + data + " --take-back " + number).out())
                .contains("All tables of rules are as shipped");
        assertThat(label().at("/duty/0/per_litre_of_pure_alcohol").doubleValue())
                .isEqualTo(5.5);
        assertThat(Desk.type("rules --data " + data + " --take-back " + number).exit())
                .isEqualTo(2);
    }

    @Test
    void slipsAreToldByLineAndAFileAloneIsComparedWithWhatShips() throws IOException {
        Desk.Run slips = Desk.type("rules " + file("EU minimum,1.2,1,6.60,EUR,2026,,read\nshort\n"));
        assertThat(slips.exit()).isEqualTo(2);
        assertThat(slips.err()).contains("line 6", "line 7");
        assertThat(Desk.type("rules " + file("Elsewhere,1.2,100,6.60,EUR,2026,,read\n"))
                        .out())
                .contains("added", "Elsewhere", "removed", "Canada");
        assertThat(Desk.type("rules --accept").exit()).isEqualTo(2);
        assertThat(Desk.type("rules " + folder.resolve("none")).exit()).isEqualTo(3);
    }
}

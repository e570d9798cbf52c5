package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The haze command as it is typed. */
class HazeCommandTest {
    @TempDir
    private Path folder;

    @Test
    void withoutAnythingItAsksItsQuestions() {
        assertThat(Desk.type("haze").out()).contains("What is true of it?", "Is there fruit or juice in it?");
        assertThat(Desk.type("haze --seen moonlight").err()).contains("no sign that is asked for", "--seen");
    }

    @Test
    void creamIsJudgedByItsFigures() {
        JsonNode cream =
                Desk.ask("haze --fat 14% --strength 24% --acid 2g/L").json().get("cream");
        assertThat(cream.get("verdict").stringValue()).isEqualTo("breaks");
        assertThat(cream.get("causes").size()).isEqualTo(3);
        assertThat(Desk.type("haze --fat 14% --strength 17%").out())
                .contains("it keeps", "a jar on the shelf decides", "common practice, no source");
        assertThat(Desk.type("haze --fat 14%").err()).contains("how strong the liquid is");
    }

    @Test
    void creamOfARecipeIsJudgedByWhatIsInIt() throws IOException {
        Path file = folder.resolve("cream.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: Hazelnut cream
                target: {volume: 1 L, strength: 17 %, sugar: 180 g/L}
                ingredients:
                  - {name: whipping cream, kind: dairy, contains: {fat: 30 %, protein: 2.5 %, lactose: 3.3 %}}
                lines:
                  - {use: whipping cream, amount: 400 g}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: make up}
                """);
        JsonNode cream = Desk.ask("haze --recipe " + file).json().get("cream");
        JsonNode fat = cream.get("causes").get(0);
        assertThat(fat.get("cause").stringValue()).isEqualTo("fat");
        assertThat(fat.get("value").doubleValue()).isBetween(11.0, 12.5);
        assertThat(cream.get("verdict").stringValue()).isEqualTo("keeps");
    }

    @Test
    void clarifyingIsWorkedOutForTheVolume() {
        JsonNode clarified = Desk.ask("haze --clarify bentonite --volume 5L --strength 30%")
                .json()
                .get("clarified");
        assertThat(clarified.get("least").doubleValue()).isCloseTo(1.0, within(1e-9));
        assertThat(clarified.get("most").doubleValue()).isCloseTo(5.0, within(1e-9));
        assertThat(clarified.get("strength_after_most_vol_percent").doubleValue())
                .isBetween(29.6, 29.8);
        assertThat(Desk.type("haze --clarify milk~washing --volume 1L").out())
                .contains("milk, always", "Try it on 100 mL");
        assertThat(Desk.type("haze --clarify pectinase --volume 1L --strength 20%")
                        .out())
                .contains("hardly works above 12 % vol");
        assertThat(Desk.type("haze --clarify sunlight --volume 1L").err()).contains("no way to clarify", "bentonite");
        assertThat(Desk.type("haze --clarify talc").err()).contains("how much is to be clarified");
    }
}

package org.stillroom.studio.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.studio.cli.Commands;
import org.stillroom.studio.cli.Entry;

/** Documents name only what is there. */
class NamesTest {
    private static final Path ROOT = Names.findRoot();

    private static List<String> wrong(String text) {
        return new Names(ROOT, Set.of("plan")).wrong(ROOT.resolve("README.md"), text);
    }

    @Test
    void documentsNameOnlyWhatIsThere() throws IOException {
        Set<String> commands = Commands.all().stream().map(Entry::name).collect(Collectors.toSet());
        Names names = new Names(ROOT, commands);
        List<String> wrong = new ArrayList<>();
        for (Path document : Names.documents(ROOT)) {
            wrong.addAll(names.wrong(document, Files.readString(document)));
        }
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "`core/src/main/java/org/stillroom/core/wort`",
                "`cores/src/main`",
                "`docs/no-such-page.md`",
                "`no-such-page.md`",
                "`core/src/gone/*.csv`",
                "`./brew`",
                "`./brew fast`",
                "`org.stillroom.core.wort`",
                "`NoSuchType`",
                "`org.stillroom.core.liquid.NoSuchType`",
                "`EthanolWater.noSuchMethod(Temperature)`",
                "`./stillroom brew`",
                "`stillroom brew --json`",
                "[a page](docs/no-such-page.md)",
                "[a place on a page](no-such-page.md#place)"
            })
    void aNameThatIsNotThereIsNoticed(String text) {
        assertThat(wrong("first line\nsee " + text + "."))
                .singleElement()
                .asString()
                .startsWith("README.md:2 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "`core/src/main/java/org/stillroom/core/liquid/`",
                "`core/src/main/resources/**/*.csv`",
                "`pom.xml`",
                "`EthanolWater.java`",
                "`./check fast`",
                "`./stillroom plan mine.yaml`",
                "`stillroom --help`",
                "`org.stillroom.core.liquid`",
                "`EthanolWater`",
                "`EthanolWater.at(Temperature)`",
                "`Math.fma`",
                "`target/stillroom-sbom.json`",
                "`~/.local/state/stillroom/stillroom.log`",
                "`density_kg_m3`",
                "`g/L`",
                "`20/20`",
                "`kg/m³`",
                "[the licence](LICENSE)",
                "[elsewhere](https://example.org/page.md)",
                "\n```\n`NoSuchType`\n```\n"
            })
    void aNameThatIsThereAndWhatIsNoNameAreLetBe(String text) {
        assertThat(wrong("see " + text + ".")).isEmpty();
    }
}

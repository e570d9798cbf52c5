package org.stillroom.core.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SourcesTest {
    @Test
    void theDocumentListsEverySourceWithTitleAndStandingAndNoOther() throws IOException {
        List<String> listed = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("..", "docs", "sources.md"))) {
            if (line.startsWith("| `")) {
                String[] cells = line.split("\\|", -1);
                listed.add(cells[1].strip() + " " + cells[2].strip() + " " + cells[3].strip());
            }
        }
        List<String> wanted = new ArrayList<>();
        for (Source source : Source.values()) {
            wanted.add("`" + source + "` " + source.title() + " "
                    + source.standing().label());
        }
        assertThat(listed).containsExactlyElementsOf(wanted);
    }
}

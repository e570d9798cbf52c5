package org.stillroom.studio.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The recipe that README.md shows is the file that it plans. */
class ReadmeTest {
    private static final String START = "```yaml\n";

    @Test
    void theFirstRecipeIsTheExample() throws IOException {
        Path root = Names.findRoot();
        String page = Files.readString(root.resolve("README.md"));
        int start = page.indexOf(START) + START.length();
        String shown = page.substring(start, page.indexOf("```", start));
        String example = Files.readString(root.resolve("examples/fennel-and-lemon-peel.yaml"));
        assertThat(example.substring(example.indexOf('\n') + 1)).isEqualTo(shown);
    }
}

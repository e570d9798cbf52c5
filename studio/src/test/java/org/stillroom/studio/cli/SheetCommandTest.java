package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;

class SheetCommandTest {
    private static final String PLAIN = "../examples/caraway-brought-down.yaml";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path dir;

    private Exit run(String... typed) {
        Screen screen = new Screen(stream(out), stream(err), Page.Colour.NOT_SEEN);
        return new Cli(Commands.all(), screen, new FaultLog(dir.resolve("log"))).run(typed);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private String complaint() {
        return err.toString(StandardCharsets.UTF_8).replace('\n', ' ');
    }

    @Test
    void thePageGoesToStandardOutputWhenNoFileIsNamed() {
        assertThat(run("sheet", PLAIN)).isEqualTo(Exit.DONE);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .startsWith("<!DOCTYPE html>")
                .contains("caraway distillate");
    }

    @Test
    void aPdfIsWritten() throws IOException {
        Path pdf = dir.resolve("sheet.pdf");
        assertThat(run("sheet", PLAIN, "--out", pdf.toString())).isEqualTo(Exit.DONE);
        assertThat(Files.readAllBytes(pdf)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("Written: " + pdf);
    }

    @Test
    void aFileThatIsThereIsKeptUnlessForced() throws IOException {
        Path page = Files.writeString(dir.resolve("sheet.html"), "mine");
        assertThat(run("sheet", PLAIN, "--out", page.toString())).isEqualTo(Exit.WRONG_INPUT);
        assertThat(complaint()).contains("left as it is", "--force");
        assertThat(page).hasContent("mine");
        assertThat(run("sheet", PLAIN, "--force", "--out", page.toString())).isEqualTo(Exit.DONE);
        assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>");
    }

    @Test
    void aTargetOutOfReachIsWrittenAllTheSameAndSaid() throws IOException {
        Path recipe = Files.writeString(dir.resolve("weak.yaml"), """
                stillroom: 1
                title: Weak
                target: {volume: 1 L, strength: 50 %}
                lines:
                  - {use: spirit 40 %, amount: free}
                  - {use: water, amount: free}
                """);
        Path page = dir.resolve("weak.html");
        assertThat(run("sheet", recipe.toString(), "--out", page.toString())).isEqualTo(Exit.OUT_OF_REACH);
        assertThat(Files.readString(page)).contains("cannot be reached. These amounts are the nearest");
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("cannot be reached");
    }

    @Test
    void anotherSizeIsMade() {
        assertThat(run("sheet", PLAIN, "--makes", "3L")).isEqualTo(Exit.DONE);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("<strong>3000</strong>");
    }

    @Test
    void whatIsNotThereIsNotFound() {
        assertThat(run("sheet", dir.resolve("none.yaml").toString())).isEqualTo(Exit.NOT_FOUND);
        assertThat(run("sheet", PLAIN, "--out", dir.resolve("none/sheet.pdf").toString()))
                .isEqualTo(Exit.NOT_FOUND);
    }

    @Test
    void wrongOptionsSayWhatToWrite() {
        assertThat(run("sheet", PLAIN, "--paper", "a3")).isEqualTo(Exit.WRONG_INPUT);
        assertThat(complaint()).contains("Write a4 or letter");
        assertThat(run("sheet", PLAIN, "--out", "sheet.doc")).isEqualTo(Exit.WRONG_INPUT);
        assertThat(complaint()).contains("Let the name end in .html or .pdf");
        assertThat(run("sheet", PLAIN, "--makes", "3")).isEqualTo(Exit.WRONG_INPUT);
    }
}

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
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;

class BackupCommandsTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path dir;

    private Exit run(String... typed) {
        out.reset();
        err.reset();
        Screen screen = new Screen(stream(out), stream(err), Page.Colour.NOT_SEEN);
        return new Cli(Commands.all(), screen, new FaultLog(dir.resolve("log"))).run(typed);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complaint() {
        return err.toString(StandardCharsets.UTF_8).replace('\n', ' ');
    }

    @Test
    void anOpenStudioIsBackedUpAndComesBackElsewhere() {
        try (Store store = Store.open(new DataFolder(dir.resolve("mine")))) {
            String id = store.recipes().create("Medlar", "r");
            assertThat(run("backup", "--data", at("mine"), "--out", at("all.zip"), "--json"))
                    .isEqualTo(Exit.DONE);
            assertThat(said()).contains("\"file\"", "\"sha256\"", "\"at\"");

            assertThat(run("restore", at("all.zip"), "--data", at("other"), "--json"))
                    .isEqualTo(Exit.DONE);
            assertThat(said()).contains("\"put_aside\" : null");
            try (Store other = Store.open(new DataFolder(dir.resolve("other")))) {
                assertThat(other.recipes().head(id)).isPresent();
            }
        }
    }

    @Test
    void aFileThatIsThereIsKeptUnlessForced() throws IOException {
        Store.open(new DataFolder(dir.resolve("mine"))).close();
        Files.writeString(dir.resolve("letter"), "Dear cousin");

        assertThat(run("backup", "--data", at("mine"), "--out", at("letter"))).isEqualTo(Exit.WRONG_INPUT);
        assertThat(complaint()).contains("left as it is", "--force");
        assertThat(dir.resolve("letter")).hasContent("Dear cousin");

        assertThat(run("backup", "--data", at("mine"), "--out", at("letter"), "--force"))
                .isEqualTo(Exit.DONE);
        assertThat(run("restore", at("letter"), "--data", at("other"))).isEqualTo(Exit.DONE);
    }

    @Test
    void aStudioThatIsThereIsReplacedOnlyWhenAskedAndKeptAside() {
        Store.open(new DataFolder(dir.resolve("mine"))).close();
        run("backup", "--data", at("mine"), "--out", at("all.zip"));

        assertThat(run("restore", at("all.zip"), "--data", at("mine"))).isEqualTo(Exit.WRONG_INPUT);
        assertThat(complaint()).contains("--replace");
        assertThat(run("restore", at("all.zip"), "--data", at("mine"), "--replace"))
                .isEqualTo(Exit.DONE);
        assertThat(said()).contains("studio-until-");
    }

    @Test
    void whatIsNotThereIsNotFound() {
        assertThat(run("backup", "--data", at("nowhere"))).isEqualTo(Exit.NOT_FOUND);
        assertThat(complaint()).contains("no studio in");
        assertThat(dir.resolve("nowhere")).doesNotExist();
        assertThat(run("restore", at("nothing.zip"), "--data", at("other"))).isEqualTo(Exit.NOT_FOUND);
        assertThat(dir.resolve("other")).doesNotExist();
    }

    @Test
    void aFileThatIsNoBackupIsRefused() throws IOException {
        Files.writeString(dir.resolve("letter"), "Dear cousin");
        assertThat(run("restore", at("letter"), "--data", at("other"))).isEqualTo(Exit.WRONG_INPUT);
        assertThat(complaint()).contains("letter cannot be restored", "Nothing was changed");
    }

    private String at(String name) {
        return dir.resolve(name).toString();
    }
}

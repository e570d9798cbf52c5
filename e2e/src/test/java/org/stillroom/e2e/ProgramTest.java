package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramTest {
    @TempDir
    Path dir;

    @Test
    void helpIsAnAnswerAndNothingIsComplainedOf() throws Exception {
        Program.Run run = Program.stillroom(dir, "--help");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Usage: stillroom COMMAND", "Exit codes: 0 done");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void theVersionIsThatOfThePackage() throws Exception {
        assertThat(Program.stillroom(dir, "--version").out()).matches("stillroom \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\n");
    }

    @Test
    void wrongInputHasItsOwnExitCodeAndLeavesTheAnswerEmpty() throws Exception {
        Program.Run run = Program.stillroom(dir, "brew");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("there is no command \"brew\"");
    }

    @Test
    void everyExampleOfTheHelpWorksAsItStands() throws Exception {
        Program.Run run = Program.run(
                Program.root(),
                Map.of("XDG_STATE_HOME", dir.toString()),
                List.of(Program.java().toString(), "-cp", Program.jar().toString(), "org.stillroom.studio.Rehearsal"));
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
    }
}

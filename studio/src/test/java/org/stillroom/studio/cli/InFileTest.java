package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder where a file is wanted, and a file that is not there. */
class InFileTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan FOLDER",
                "safety FOLDER",
                "label FOLDER",
                "sheet FOLDER",
                "notes FOLDER",
                "clarity --recipe FOLDER",
                "essence FOLDER",
                "rules FOLDER",
                "restore FOLDER --data FOLDER/studio",
                "safety ../examples/quince-and-bay.yaml --house-rules FOLDER",
                "safety ../examples/quince-and-bay.yaml --analysis caraway=FOLDER"
            })
    void aFolderIsSaidToBeOne(String line) {
        Desk.Run run = Desk.type(line.replace("FOLDER", folder.toString()));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .contains("is a folder; a file is", "Name a file in it.")
                .doesNotContain("IOException");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan FOLDER/none.yaml", "essence FOLDER/none.yaml", "rules FOLDER/none.csv"})
    void aFileThatIsNotThereIsNotFound(String line) {
        assertThat(Desk.type(line.replace("FOLDER", folder.toString())).exit()).isEqualTo(3);
    }
}

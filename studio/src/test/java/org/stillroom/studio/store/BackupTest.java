package org.stillroom.studio.store;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole studio in one file, and back. */
class BackupTest {
    @TempDir
    private Path dir;

    @Test
    void whatWasKeptComesBackElsewhere() throws Exception {
        DataFolder from = new DataFolder(dir.resolve("from"));
        Path file = dir.resolve("all.zip");
        String id;
        try (Store store = Store.open(from)) {
            id = store.recipes().create("Medlar", "r1");
            store.recipes().save(id, 0, "Medlar", "stillroom: 1\n", null, "r2");
            Backup.ofOpenOrClosed(from, file); // while it is open
        }

        DataFolder to = new DataFolder(dir.resolve("to"));
        assertThat(Backup.restore(file, to, Backup.Replacing.NO)).isNull();

        try (Store store = Store.open(to)) {
            assertThat(store.recipes().latest(id))
                    .get()
                    .extracting(Revision::text)
                    .isEqualTo("stillroom: 1\n");
            assertThat(store.history().of("recipe:" + id)).hasSize(2);
        }
    }

    @Test
    void aStudioThatIsThereIsPutAsideOnlyWhenAsked() throws Exception {
        Path file = backup();
        DataFolder to = new DataFolder(dir.resolve("to"));
        String there;
        try (Store store = Store.open(to)) {
            there = store.recipes().create("Mine", "r");
        }

        assertThatThrownBy(() -> Backup.restore(file, to, Backup.Replacing.NO)).isInstanceOf(StoreTrouble.class);
        Path aside = Backup.restore(file, to, Backup.Replacing.YES);

        assertThat(aside).isNotNull().exists();
        try (Store store = Store.open(to)) {
            assertThat(store.recipes().head(there)).isEmpty();
        }
    }

    @Test
    void anOpenStudioIsNotReplaced() throws Exception {
        Path file = backup();
        DataFolder to = new DataFolder(dir.resolve("to"));
        try (Store store = Store.open(to)) {
            assertThatThrownBy(() -> Backup.restore(file, to, Backup.Replacing.YES))
                    .isInstanceOf(StoreTrouble.class)
                    .hasMessageContaining("open already");
            assertThat(store.answers()).isTrue();
        }
    }

    @Test
    void aDamagedFileChangesNothing() throws Exception {
        Path file = backup();
        byte[] bytes = Files.readAllBytes(file);
        for (int part = 1; part < 10; part++) {
            byte[] broken = bytes.clone();
            broken[broken.length * part / 10] ^= 0x55;
            Path damaged = Files.write(dir.resolve("damaged" + part + ".zip"), broken);
            DataFolder to = new DataFolder(dir.resolve("to" + part));
            assertThatThrownBy(() -> Backup.restore(damaged, to, Backup.Replacing.NO))
                    .as("damaged at %d/10", part)
                    .isInstanceOf(StoreTrouble.class)
                    .hasMessageContaining("damaged" + part + ".zip cannot be restored");
            assertNothingIn(to);
        }
    }

    @Test
    void aFileThatWasCutOffChangesNothing() throws Exception {
        byte[] bytes = Files.readAllBytes(backup());
        for (int part = 0; part < 10; part++) {
            Path cut = Files.write(dir.resolve("cut.zip"), Arrays.copyOf(bytes, bytes.length * part / 10));
            DataFolder to = new DataFolder(dir.resolve("to"));
            assertThatThrownBy(() -> Backup.restore(cut, to, Backup.Replacing.NO))
                    .isInstanceOf(StoreTrouble.class);
            assertNothingIn(to);
        }
    }

    @Test
    void aBackupOfANewerStillroomIsRefused() throws Exception {
        DataFolder newer = new DataFolder(dir.resolve("newer"));
        Store.open(newer).close();
        Newer.make(newer);
        Path file = dir.resolve("newer.zip");
        Backup.ofOpenOrClosed(newer, file);
        DataFolder to = new DataFolder(dir.resolve("to"));

        assertThatThrownBy(() -> Backup.restore(file, to, Backup.Replacing.NO))
                .isInstanceOf(StoreTrouble.class)
                .hasMessageContaining("newer Stillroom");
        assertNothingIn(to);
    }

    @Test
    void aDatabaseOfAnotherKindIsRefused() throws Exception {
        Path other = dir.resolve("other.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + other);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("CREATE TABLE letter (words TEXT)");
        }
        Path file = dir.resolve("other.zip");
        new BackupFile(file).write(other, Schema.NEWEST, "2026-11-26T10:00:00Z");
        DataFolder to = new DataFolder(dir.resolve("to"));

        assertThatThrownBy(() -> Backup.restore(file, to, Backup.Replacing.NO))
                .isInstanceOf(StoreTrouble.class)
                .hasMessageContaining("other.zip cannot be restored");
        assertNothingIn(to);
    }

    @Test
    void whatIsPutAsideAfterAKillIsWhole() throws Exception {
        Path file = backup();
        DataFolder to = new DataFolder(dir.resolve("to"));
        Store running = Store.open(to);
        String id = running.recipes().create("Mine", "r");
        DataFolder left = new DataFolder(Files.createDirectories(dir.resolve("left"))); // as a killed process leaves it
        for (String part : List.of("", "-wal")) {
            Files.copy(Path.of(to.database() + part), Path.of(left.database() + part));
        }
        running.close();

        Path aside = Backup.restore(file, left, Backup.Replacing.YES);

        DataFolder again = new DataFolder(Files.createDirectories(dir.resolve("again")));
        Files.copy(requireNonNull(aside), again.database());
        try (Store store = Store.open(again)) {
            assertThat(store.recipes().head(id)).isPresent();
        }
    }

    @Test
    void aStudioIsNotExchangedUnderACommandThatWorksInIt() throws Exception {
        Path file = backup();
        DataFolder to = new DataFolder(dir.resolve("to"));
        Store.open(to).close();
        try (Store beside = Store.beside(to)) {
            assertThatThrownBy(() -> Backup.restore(file, to, Backup.Replacing.YES))
                    .isInstanceOf(StoreTrouble.class)
                    .hasMessageContaining("used by another command");
            assertThat(beside.recipes().heads(false)).isEmpty();
        }
        assertThat(Backup.restore(file, to, Backup.Replacing.YES)).isNotNull();
    }

    /** Nothing but the locks. */
    private static void assertNothingIn(DataFolder folder) throws IOException {
        try (Stream<Path> files = Files.list(folder.path())) {
            assertThat(files)
                    .extracting(Path::getFileName)
                    .extracting(Path::toString)
                    .containsOnly("studio.lock", "commands.lock");
        }
    }

    private Path backup() throws Exception {
        DataFolder from = new DataFolder(dir.resolve("from"));
        Path file = dir.resolve("all.zip");
        try (Store store = Store.open(from)) {
            store.recipes().create("Medlar", "r1");
            store.backup().write(file);
        }
        return file;
    }
}

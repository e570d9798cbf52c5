package org.stillroom.studio.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
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
                    .isInstanceOf(Exception.class);
            assertThat(to.holdsAStudio()).isFalse();
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

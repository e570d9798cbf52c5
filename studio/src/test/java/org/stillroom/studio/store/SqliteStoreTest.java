package org.stillroom.studio.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

/** The store in an embedded file. */
class SqliteStoreTest extends StoreContract {
    @TempDir
    private static Path folder;

    private static Store store;

    @BeforeAll
    static void open() {
        store = Store.open(new DataFolder(folder));
    }

    @AfterAll
    static void close() {
        store.close();
    }

    @Override
    Store store() {
        return store;
    }

    @Override
    void meddle(String sql) throws Exception {
        String url = "jdbc:sqlite:" + new DataFolder(folder).database();
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    @Test
    void aFolderIsOpenOnlyOnce() {
        assertThatThrownBy(() -> Store.open(new DataFolder(folder)))
                .isInstanceOf(StoreTrouble.class)
                .hasMessageContaining("open already");
    }

    @Test
    void aCommandOpensItBesideUnlessItsTablesAreOlder() throws Exception {
        String id = store.recipes().create("Sloe", request());
        try (Store beside = Store.beside(new DataFolder(folder))) {
            assertThat(beside.recipes().head(id)).isPresent();
            String there = beside.recipes().create("Rowan", request());
            assertThat(store.recipes().head(there)).isPresent();
        }
        assertThatThrownBy(() -> Store.open(new DataFolder(folder))).hasMessageContaining("open already");

        meddle("UPDATE flyway_schema_history SET version = '2.5' WHERE version = '3'");
        try {
            assertThatThrownBy(() -> Store.beside(new DataFolder(folder)))
                    .isInstanceOf(StoreTrouble.class)
                    .hasMessageContaining("open already");
        } finally {
            meddle("UPDATE flyway_schema_history SET version = '3' WHERE version = '2.5'");
        }
    }

    @Test
    void whatWasKeptIsThereAfterOpeningAgain(@TempDir Path other) {
        String id;
        try (Store first = Store.open(new DataFolder(other))) {
            id = first.recipes().create("Medlar", request());
        }
        try (Store second = Store.open(new DataFolder(other))) {
            assertThat(second.recipes().head(id)).isPresent();
        }
    }

    @Test
    void theHistoryCannotBeReplacedEither() {
        String id = store.recipes().create("Medlar", request());
        HistoryEntry entry = store.history().of("recipe:" + id).get(0);

        assertThatThrownBy(() -> meddle("INSERT OR REPLACE INTO history (id, at, subject, kind, body, request) VALUES ("
                        + entry.id() + ", '', 'other', 'other', '{}', 'other')"))
                .hasMessageContaining("appended");
        assertThat(store.history().entry(entry.id())).contains(entry);
    }

    @Test
    void theFileIsOpenedSoThatACommitIsOnTheDisk(@TempDir Path other) {
        try (HikariDataSource source = new HikariDataSource(Store.embedded(new DataFolder(other)))) {
            Jdbi jdbi = Jdbi.create(source);
            assertThat(asked(jdbi, "synchronous")).isEqualTo("2"); // FULL
            assertThat(asked(jdbi, "journal_mode")).isEqualTo("wal");
            assertThat(asked(jdbi, "foreign_keys")).isEqualTo("1");
        }
    }

    private static String asked(Jdbi jdbi, String pragma) {
        return jdbi.withHandle(handle ->
                handle.createQuery("PRAGMA " + pragma).mapTo(String.class).one());
    }

    @Test
    void aStudioOfANewerStillroomIsLeftAlone(@TempDir Path other) throws Exception {
        DataFolder newer = new DataFolder(other);
        Store.open(newer).close();
        Newer.make(newer);

        assertThatThrownBy(() -> Store.open(newer))
                .isInstanceOf(StoreTrouble.class)
                .hasMessageContaining("newer Stillroom");
    }

    @Test
    void aFileThatIsNoStudioIsNotOpened(@TempDir Path other) throws Exception {
        byte[] letter = "Dear cousin, the medlars are ripe. ".repeat(100).getBytes(StandardCharsets.UTF_8);
        DataFolder folder = new DataFolder(other);
        Files.write(folder.database(), letter);

        assertThatThrownBy(() -> Store.open(folder)).isInstanceOf(StoreTrouble.class);
        assertThat(folder.database()).hasBinaryContent(letter);
    }

    @Test
    void theNewestVersionIsThatOfTheNewestScript() {
        assertThat(List.of(Schema.SQLITE.flyway(new SQLiteDataSource()).info().pending()))
                .last()
                .extracting(script -> script.getVersion().getMajor().intValueExact())
                .isEqualTo(Schema.NEWEST);
    }
}

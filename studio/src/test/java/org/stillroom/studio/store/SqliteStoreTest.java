package org.stillroom.studio.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
    void whatWasKeptIsThereAfterOpeningAgain(@TempDir Path other) {
        String id;
        try (Store first = Store.open(new DataFolder(other))) {
            id = first.recipes().create("Medlar", request());
        }
        try (Store second = Store.open(new DataFolder(other))) {
            assertThat(second.recipes().head(id)).isPresent();
        }
    }
}

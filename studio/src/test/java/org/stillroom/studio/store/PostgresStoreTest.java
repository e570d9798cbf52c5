package org.stillroom.studio.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The store on PostgreSQL. */
class PostgresStoreTest extends StoreContract {
    private static EmbeddedPostgres server;
    private static Store store;

    @BeforeAll
    static void open() throws IOException {
        server = EmbeddedPostgres.builder()
                .setServerConfig("listen_addresses", "127.0.0.1") // some machines do not know "localhost"
                .start();
        store = Store.onPostgres(url(), "postgres", "postgres");
    }

    @AfterAll
    static void close() throws IOException {
        store.close();
        server.close();
    }

    private static String url() {
        return "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/postgres";
    }

    @Override
    Store store() {
        return store;
    }

    @Override
    void meddle(String sql) throws Exception {
        try (Connection connection = DriverManager.getConnection(url(), "postgres", "postgres");
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    @Test
    void theHistoryCannotBeEmptiedEither() {
        assertThatThrownBy(() -> meddle("TRUNCATE history CASCADE")).hasMessageContaining("appended");
        assertThatThrownBy(() -> meddle("TRUNCATE revision")).hasMessageContaining("appended");
    }

    @Test
    void twoThatOpenAnEmptyDatabaseAtOnceBothServe() throws Exception {
        meddle("CREATE DATABASE shared");
        String shared = url().replace("/postgres", "/shared");
        Callable<String> opened = () -> {
            try (Store one = Store.onPostgres(shared, "postgres", "postgres")) {
                return one.recipes().create("Medlar", request());
            }
        };

        List<String> begun = atOnce(List.of(opened, opened));

        try (Store later = Store.onPostgres(shared, "postgres", "postgres")) {
            assertThat(later.recipes().heads(false)).extracting(RecipeHead::id).containsAll(begun);
        }
    }
}

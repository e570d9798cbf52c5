package org.stillroom.studio.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

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
}

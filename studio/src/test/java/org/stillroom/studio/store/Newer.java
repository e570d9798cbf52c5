package org.stillroom.studio.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** Turns a studio into one that a newer Stillroom has written. */
final class Newer {
    private Newer() {}

    static void make(DataFolder folder) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.database());
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("INSERT INTO flyway_schema_history SELECT 99, '" + (Schema.NEWEST + 1)
                    + "', 'of later', type, 'V3__of_later.sql', checksum, installed_by, installed_on, 0, 1"
                    + " FROM flyway_schema_history WHERE installed_rank = 1");
        }
    }
}

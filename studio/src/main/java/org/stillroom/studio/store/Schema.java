package org.stillroom.studio.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** The tables of a studio: the same scripts for both databases, with what they call differently filled in. */
enum Schema {
    SQLITE("sqlite", "INTEGER PRIMARY KEY AUTOINCREMENT", "TEXT", "BLOB"),
    POSTGRESQL("postgresql", "BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY", "JSONB", "BYTEA");

    /** Version of the newest script; grows with each one that is added. */
    static final int NEWEST = 3;

    private static final String SCRIPTS = "classpath:org/stillroom/studio/store/schema";

    private final String folder;
    private final String id;
    private final String json;
    private final String bytes;

    Schema(String folder, String id, String json, String bytes) {
        this.folder = folder;
        this.id = id;
        this.json = json;
        this.bytes = bytes;
    }

    /** Returns what the common script leaves open. */
    private Map<String, String> types() {
        return Map.of("id", id, "json", json, "bytes", bytes);
    }

    /**
     * Opens a database and brings its tables up to the newest version.
     *
     * @throws StoreTrouble when a newer Stillroom has changed them, or it is not the database of a studio
     */
    HikariDataSource opened(HikariConfig config, String place) {
        HikariDataSource source = connected(config, place);
        try {
            bringUp(source, place);
            return source;
        } catch (RuntimeException | Error failed) {
            source.close();
            throw failed;
        }
    }

    /**
     * Opens the database of a folder that another process may have open; older tables are brought up only where none has.
     *
     * @throws StoreTrouble when a newer Stillroom has changed them, an older one has them open, or it is not the database of a studio
     */
    HikariDataSource openedBeside(HikariConfig config, DataFolder folder) {
        String place = folder.database().toString();
        HikariDataSource source = connected(config, place);
        try {
            if (versionIfAny(source) < NEWEST) {
                FolderLock alone = FolderLock.of(folder);
                try {
                    bringUp(source, place);
                } finally {
                    alone.close();
                }
            }
            requireNotNewer(versionIfAny(source), place);
            return source;
        } catch (RuntimeException | Error failed) {
            source.close();
            throw failed;
        }
    }

    private static HikariDataSource connected(HikariConfig config, String place) {
        try {
            return new HikariDataSource(config);
        } catch (RuntimeException unreachable) {
            throw unreadable(place, unreachable);
        }
    }

    /** Starting Flyway takes a third of the opening, so it is left out where there is nothing to do. */
    private void bringUp(DataSource source, String place) {
        int version = versionIfAny(source);
        requireNotNewer(version, place);
        if (version < NEWEST) {
            try {
                flyway(source).migrate();
            } catch (FlywayException changed) {
                throw unreadable(place, changed);
            }
        }
    }

    private static int versionIfAny(DataSource source) {
        try {
            return version(Jdbi.create(source));
        } catch (JdbiException none) {
            return 0; // empty, or no studio: Flyway tells which
        }
    }

    /** Returns what runs the scripts on a database. */
    Flyway flyway(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations(SCRIPTS + "/common", SCRIPTS + "/" + folder)
                .placeholders(types())
                .load();
    }

    /** Returns the version of a database's tables. */
    static int version(Jdbi jdbi) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM flyway_schema_history WHERE success")
                .mapTo(Integer.class)
                .one());
    }

    static void requireNotNewer(int version, String place) {
        if (version > NEWEST) {
            throw new StoreTrouble(
                    "A newer Stillroom has written " + place + "; this one reads studios up to version " + NEWEST
                            + ", and it has version " + version + ".",
                    "Use the newer Stillroom. Nothing was changed.",
                    null);
        }
    }

    private static StoreTrouble unreadable(String place, Throwable cause) {
        return new StoreTrouble(
                place + " cannot be opened as a studio.",
                "Check that it is one and that it is whole, or restore a backup into another folder. Nothing was"
                        + " changed.",
                cause);
    }
}

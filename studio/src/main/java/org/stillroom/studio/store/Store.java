package org.stillroom.studio.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/**
 * All that a studio keeps, in an embedded SQLite file or in PostgreSQL: the same statements on both.
 *
 * <p>What a method has returned from is on the disk: a process that is killed loses nothing that it has acknowledged.
 */
public final class Store implements AutoCloseable {
    private final HikariDataSource source;
    private final Jdbi jdbi;
    private final @Nullable FolderLock lock;

    private Store(HikariDataSource source, @Nullable FolderLock lock) {
        this.source = source;
        this.lock = lock;
        this.jdbi = Jdbi.create(source);
    }

    /**
     * Opens the studio in a folder, making it where there is none.
     *
     * @throws StoreTrouble when another Stillroom has it open, or it cannot be opened
     */
    public static Store open(DataFolder folder) {
        folder.make();
        FolderLock lock = FolderLock.of(folder);
        try {
            String place = folder.database().toString();
            return new Store(Schema.SQLITE.opened(embedded(folder), place), lock);
        } catch (RuntimeException | Error failed) {
            lock.close();
            throw failed;
        }
    }

    /**
     * Opens the studio in a folder for one command, whether or not it is open in another process too: what either writes is on the disk
     * before the other reads it, and of two changes that meet the second sees the first.
     *
     * @throws StoreTrouble when it cannot be opened, or another process has it open that wrote older tables
     */
    public static Store beside(DataFolder folder) {
        FolderLock lock = FolderLock.beside(folder);
        try {
            return new Store(Schema.SQLITE.openedBeside(embedded(folder), folder), lock);
        } catch (RuntimeException | Error failed) {
            lock.close();
            throw failed;
        }
    }

    /** Returns how the file of a folder is reached. */
    static HikariConfig embedded(DataFolder folder) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + folder.database());
        config.setMaximumPoolSize(1); // one writer at a time, and no reader sees half of a change
        config.addDataSourceProperty(
                "transaction_mode", "IMMEDIATE"); // waits for a command beside before it has read anything
        config.addDataSourceProperty("foreign_keys", "true");
        config.addDataSourceProperty("journal_mode", "WAL");
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("busy_timeout", "5000");
        return config;
    }

    /** Opens the studio of a PostgreSQL database. */
    public static Store onPostgres(String url, String user, String password) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setUsername(user);
        config.setPassword(password);
        config.setMaximumPoolSize(8);
        config.addDataSourceProperty("stringtype", "unspecified"); // lets text bind to JSON
        return new Store(Schema.POSTGRESQL.opened(config, "The database"), null);
    }

    public Recipes recipes() {
        return new Recipes(jdbi);
    }

    public Lots lots() {
        return new Lots(jdbi);
    }

    public Instruments instruments() {
        return new Instruments(jdbi);
    }

    public Makes makes() {
        return new Makes(jdbi);
    }

    public Batches batches() {
        return new Batches(jdbi);
    }

    public Photos photos() {
        return new Photos(jdbi);
    }

    public Settings settings() {
        return new Settings(jdbi);
    }

    public RuleBook rules() {
        return new RuleBook(jdbi);
    }

    public Sessions sessions() {
        return new Sessions(jdbi);
    }

    public History history() {
        return new History(jdbi);
    }

    /**
     * Returns what writes the whole studio into one file.
     *
     * @throws UnsupportedOperationException on PostgreSQL, which has its own pg_dump
     */
    public Backup backup() {
        if (lock == null) {
            throw new UnsupportedOperationException("a studio on PostgreSQL is backed up with pg_dump");
        }
        return new Backup(jdbi);
    }

    /** Writes down where this studio can be reached, for whoever finds its folder taken. */
    public void noteAddress(String address) {
        if (lock != null) {
            lock.note(address);
        }
    }

    /** Asks the database whether it answers. */
    public boolean answers() {
        return jdbi.withHandle(handle ->
                        handle.createQuery("SELECT 1").mapTo(Integer.class).one())
                == 1;
    }

    @Override
    public void close() {
        source.close();
        if (lock != null) {
            lock.close();
        }
    }
}

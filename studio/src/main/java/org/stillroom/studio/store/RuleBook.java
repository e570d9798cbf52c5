package org.stillroom.studio.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The rules that the maker has added. Each writing is an entry of the history, so that what they were can be found again. */
public final class RuleBook {
    private static final String HOUSE = "house_rules";
    private static final String HOUSE_VERSION = "house_rules_version";
    private static final String SUBJECT = "rules:house";

    private final Jdbi jdbi;

    RuleBook(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * The rules of the house.
     *
     * @param text as written, one rule a line
     * @param version how often they were written; 0 where they never were
     */
    public record House(String text, int version) {}

    /** Returns the rules of the house as they are now. */
    public House house() {
        return jdbi.withHandle(handle -> new House(
                value(handle, HOUSE).orElse(""),
                value(handle, HOUSE_VERSION).map(Integer::valueOf).orElse(0)));
    }

    /**
     * Writes the rules of the house anew.
     *
     * @param version that the change began with
     */
    public Changing<House> writeHouse(String text, int version, String request) {
        try {
            Ledger.once(jdbi, request, handle -> {
                advance(handle, HOUSE_VERSION, version);
                put(handle, HOUSE, text);
                return Ledger.write(
                        handle, SUBJECT, "house-rules.written", new House(text, version + 1), null, request);
            });
        } catch (OvertakenException overtaken) {
            return new Changing.Overtaken<>(house());
        }
        return new Changing.Changed<>(house());
    }

    private static Optional<String> value(Handle handle, String name) {
        return handle.createQuery("SELECT value FROM setting WHERE name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne();
    }

    private static void put(Handle handle, String name, String value) {
        handle.createUpdate("INSERT INTO setting (name, value) VALUES (:name, :value)"
                        + " ON CONFLICT (name) DO UPDATE SET value = excluded.value")
                .bind("name", name)
                .bind("value", value)
                .execute();
    }

    /** Counts one further; of two that began with the same number the second finds none to change. */
    private static void advance(Handle handle, String name, int from) {
        handle.createUpdate("INSERT INTO setting (name, value) VALUES (:name, '0') ON CONFLICT (name) DO NOTHING")
                .bind("name", name)
                .execute();
        int changed = handle.createUpdate("UPDATE setting SET value = :next WHERE name = :name AND value = :now")
                .bind("next", String.valueOf(from + 1))
                .bind("name", name)
                .bind("now", String.valueOf(from))
                .execute();
        if (changed == 0) {
            throw new OvertakenException();
        }
    }
}

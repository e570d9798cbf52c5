package org.stillroom.studio.store;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Jdbi;

/** What the maker has settled for the whole studio, by name. */
public final class Settings {
    private final Jdbi jdbi;

    Settings(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    public Optional<String> value(String name) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT value FROM setting WHERE name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne());
    }

    /** Returns everything that is settled. */
    public Map<String, String> all() {
        return jdbi.withHandle(handle -> {
            Map<String, String> all = new TreeMap<>();
            handle.createQuery("SELECT name, value FROM setting")
                    .map((row, context) -> Map.entry(row.getString("name"), row.getString("value")))
                    .forEach(entry -> all.put(entry.getKey(), entry.getValue()));
            return all;
        });
    }

    public void put(String name, String value) {
        jdbi.useHandle(handle -> handle.createUpdate("INSERT INTO setting (name, value) VALUES (:name, :value)"
                        + " ON CONFLICT (name) DO UPDATE SET value = excluded.value")
                .bind("name", name)
                .bind("value", value)
                .execute());
    }

    public void remove(String name) {
        jdbi.useHandle(handle -> handle.createUpdate("DELETE FROM setting WHERE name = :name")
                .bind("name", name)
                .execute());
    }
}

package org.stillroom.studio.store;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The rules that the maker has added. Each writing is an entry of the history, so that what they were can be found again. */
public final class RuleBook {
    private static final String HOUSE = "house_rules";
    private static final String HOUSE_VERSION = "house_rules_version";
    private static final String SUBJECT = "rules:house";
    private static final String TABLES = "rules:tables";
    private static final String TABLES_VERSION = "rule_tables_version";
    private static final String TAKEN = "rules.taken";

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

    /**
     * Tables of rules that the maker took in place of shipped ones.
     *
     * @param files those in force, the earliest first
     * @param version grows with each that is taken or taken back
     */
    public record Tables(List<Taken> files, int version) {
        public Tables {
            files = List.copyOf(files);
        }
    }

    /**
     * A signed-off file.
     *
     * @param entry of the history, by which it is taken back
     * @param text as it was given
     */
    public record Taken(long entry, Instant at, String text) {}

    /** The body of an entry. */
    record RuleFile(String text) {}

    /** Returns the signed-off files in force. */
    public Tables tables() {
        return jdbi.withHandle(handle -> {
            List<HistoryEntry> entries = Ledger.of(handle, TABLES);
            Set<Long> back = entries.stream()
                    .map(HistoryEntry::undoes)
                    .filter(Objects::nonNull)
                    .collect(Collectors.toSet());
            return new Tables(
                    entries.stream()
                            .filter(entry -> entry.kind().equals(TAKEN) && !back.contains(entry.id()))
                            .map(entry -> new Taken(
                                    entry.id(),
                                    entry.at(),
                                    Bodies.read(entry.body(), RuleFile.class).text()))
                            .toList(),
                    value(handle, TABLES_VERSION).map(Integer::valueOf).orElse(0));
        });
    }

    /**
     * Takes a signed-off file.
     *
     * @param version of the tables that its preview was of
     * @return the entry, or the latest one where somebody changed them since
     */
    public Changing<HistoryEntry> take(String text, int version, String request) {
        try {
            return new Changing.Changed<>(Ledger.once(jdbi, request, handle -> {
                advance(handle, TABLES_VERSION, version);
                return Ledger.write(handle, TABLES, TAKEN, new RuleFile(text), null, request);
            }));
        } catch (OvertakenException overtaken) {
            List<HistoryEntry> entries = jdbi.withHandle(handle -> Ledger.of(handle, TABLES));
            return new Changing.Overtaken<>(entries.get(entries.size() - 1));
        }
    }

    /**
     * Takes a file back.
     *
     * @param entry by which it was taken
     */
    public HistoryEntry takeBack(long entry, String request) {
        return Ledger.once(jdbi, request, handle -> {
            boolean isTaking = Ledger.entry(handle, entry)
                    .filter(found -> found.kind().equals(TAKEN))
                    .isPresent();
            if (!isTaking) {
                throw new MissingException("there is no entry " + entry + " by which a table of rules was taken");
            }
            advance(
                    handle,
                    TABLES_VERSION,
                    value(handle, TABLES_VERSION).map(Integer::valueOf).orElse(0));
            return Ledger.write(handle, TABLES, "rules.taken-back", "{}", entry, request);
        });
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

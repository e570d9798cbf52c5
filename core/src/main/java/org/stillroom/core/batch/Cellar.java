package org.stillroom.core.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Every vessel of every batch as it stands, and nothing else than what the log says.
 *
 * <p>Entries count in the order in which they happened; of one moment in the order of writing. An entry that was taken back counts
 * as if it had never been. The same log gives the same cellar, whether it is read at once or entry by entry. Method:
 * docs/how-it-works/batches.md.
 */
public final class Cellar {
    private static final Comparator<Entry> AS_IT_HAPPENED =
            Comparator.comparing(Entry::at).thenComparingLong(Entry::id);

    private final List<Entry> log;
    private final Map<Place, Held> vessels = new TreeMap<>();
    private final List<Flow> flows = new ArrayList<>();
    private final List<Bottling> bottlings = new ArrayList<>();
    private final List<Refused> refused = new ArrayList<>();

    private Cellar(List<Entry> log) {
        this.log = List.copyOf(log);
    }

    /** Returns the cellar of a log; what cannot have happened is left out and told of in {@link #refused}. */
    public static Cellar of(List<Entry> log) {
        Cellar cellar = new Cellar(log);
        Set<Long> undone = undone(log);
        Happening happening = new Happening(cellar.vessels, cellar.flows, cellar.bottlings, log);
        log.stream()
                .sorted(AS_IT_HAPPENED)
                .filter(entry -> !undone.contains(entry.id()))
                .forEach(entry -> {
                    try {
                        happening.happens(entry);
                    } catch (CannotHaveHappened cannot) {
                        cellar.refused.add(new Refused(entry, cannot.finding()));
                    }
                });
        return cellar;
    }

    /** Returns the entries that do not count, since a later one that counts takes them back; that a batch was made always counts. */
    private static Set<Long> undone(List<Entry> log) {
        Set<Long> undone = new HashSet<>();
        log.stream().sorted(Comparator.comparingLong(Entry::id).reversed()).forEach(entry -> {
            if (entry.event() instanceof Event.Undone undo && !undone.contains(entry.id())) {
                undone.add(undo.entry());
            }
        });
        log.stream().filter(entry -> entry.event() instanceof Event.Begun).forEach(entry -> undone.remove(entry.id()));
        return undone;
    }

    /** Returns the cellar as it stood at a moment. */
    public static Cellar at(List<Entry> log, Instant moment) {
        Set<Long> undone = undone(log);
        return of(log.stream()
                .filter(entry -> !undone.contains(entry.id()))
                .filter(entry -> !(entry.event() instanceof Event.Undone))
                .filter(entry -> !entry.at().isAfter(moment))
                .toList());
    }

    /** Returns the cellar after one entry more. */
    public Cellar plus(Entry entry) {
        List<Entry> more = new ArrayList<>(log);
        more.add(entry);
        return of(more);
    }

    /**
     * Returns what an entry more would make impossible: itself, or an entry of later that rests on what it takes away. Empty when it
     * may be written.
     */
    public List<Refused> objections(Entry entry) {
        Set<Long> before = new HashSet<>();
        refused.forEach(each -> before.add(each.entry().id()));
        return plus(entry).refused.stream()
                .filter(each -> !before.contains(each.entry().id()))
                .toList();
    }

    public List<Entry> log() {
        return log;
    }

    /** Returns whether an entry counts: it was not taken back, and it can have happened. */
    public boolean counts(long entry) {
        return !undone(log).contains(entry)
                && refused.stream().noneMatch(each -> each.entry().id() == entry);
    }

    /** Returns what a vessel holds; nothing when the log does not know it. */
    public Held held(Place place) {
        return vessels.getOrDefault(place, Held.NOTHING);
    }

    /** Returns the vessels of a batch by name, emptied ones included. */
    public Map<Place, Held> vessels(String batch) {
        Map<Place, Held> ofBatch = new TreeMap<>();
        vessels.forEach((place, held) -> {
            if (place.batch().equals(batch)) {
                ofBatch.put(place, held);
            }
        });
        return ofBatch;
    }

    /** Returns the vessels of all batches. */
    public Map<Place, Held> vessels() {
        return new TreeMap<>(vessels);
    }

    /** Returns what came into a batch and left it, as it happened. */
    public List<Flow> flows(String batch) {
        return flows.stream().filter(flow -> flow.batch().equals(batch)).toList();
    }

    /** Returns the bottles of a batch, as they were filled. */
    public List<Bottling> bottlings(String batch) {
        return bottlings.stream()
                .filter(bottling -> bottling.batch().equals(batch))
                .toList();
    }

    /** Returns the number of the next bottle of a batch. */
    public int nextBottle(String batch) {
        return 1 + bottlings(batch).stream().mapToInt(Bottling::last).max().orElse(0);
    }

    /** Returns the entries that cannot have happened as they stand in the log; none as a rule. */
    public List<Refused> refused() {
        return List.copyOf(refused);
    }
}

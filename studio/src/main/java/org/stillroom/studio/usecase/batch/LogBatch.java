package org.stillroom.studio.usecase.batch;

import java.time.Clock;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stillroom.core.batch.Place;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.Stock;

/** Writes an entry into the log of a batch by the name of what was done: for pages, other programs and the command line alike. */
public final class LogBatch {
    /** The names of all fields of all acts. */
    public static final Set<String> FIELDS =
            Arrays.stream(Act.values()).flatMap(act -> act.fields().stream()).collect(Collectors.toUnmodifiableSet());

    private final Store store;
    private final RecordBatch record;
    private final RecordRest rest;
    private final Notes notes;

    public LogBatch(Store store, Clock clock) {
        this.store = store;
        this.record = new RecordBatch(store, clock);
        this.rest = new RecordRest(store, clock);
        this.notes = new Notes(store, clock);
    }

    /** What can be written, and the fields that each has. */
    public enum Act {
        MOVED,
        MEASURED,
        ADDED,
        LOST,
        EVAPORATED,
        BOTTLED,
        PH,
        ANALYSED,
        PASTEURISED,
        WAITS,
        NOTED;

        /** Returns it as it is written. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Act> of(String word) {
            return Arrays.stream(values())
                    .filter(act -> act.word().equals(word.strip()))
                    .findFirst();
        }

        /** Returns the names of its fields. */
        public List<String> fields() {
            return switch (this) {
                case MOVED -> List.of("vessel", "to", "batch", "amount", "sediment", "filter", "sample", "day", "note");
                case MEASURED ->
                    List.of("vessel", "strength", "sugar", "volume", "acidity", RecordBatch.READINGS, "day", "note");
                case ADDED -> List.of("vessel", "what", "amount", "day", "note");
                case LOST -> List.of("vessel", "amount", "cause", "day", "note");
                case EVAPORATED -> List.of("vessel", "amount", "strength", "day", "note");
                case BOTTLED ->
                    List.of("vessel", "fills", "code", "lots", "sediment", "filter", "sample", "day", "note");
                case PH -> List.of("of", "ph", "day", "note");
                case ANALYSED -> List.of("of", RecordBatch.FOUND, "day", "note");
                case PASTEURISED -> List.of("of", "day", "note");
                case WAITS -> List.of("what", "days", "until", "note");
                case NOTED -> List.of("note", "score", "day");
            };
        }
    }

    /** Logs it as a form has sent it: every field is there. */
    public Outcome answer(Batch batch, Act act, Map<String, String> typed, String request) {
        return switch (act) {
            case MOVED -> record.moved(batch, typed, request);
            case MEASURED -> record.measured(batch, typed, request);
            case ADDED -> record.added(batch, typed, request);
            case LOST -> record.lost(batch, typed, request);
            case EVAPORATED -> record.evaporated(batch, typed, request);
            case BOTTLED -> record.bottled(batch, typed, request);
            case PH -> record.phMeasured(batch, typed, request);
            case ANALYSED -> record.analysed(batch, typed, request);
            case PASTEURISED -> record.pasteurised(batch, typed, request);
            case WAITS -> rest.waits(batch, typed, request);
            case NOTED -> notes.noted(batch, typed, null, request);
        };
    }

    /**
     * Logs it as somebody has written it who does not fill in a form: the one vessel that something is in need not be named, a lot goes by
     * its name too, and a field of another act is refused.
     */
    public Outcome written(Batch batch, Act act, Map<String, String> typed, String request) {
        List<Finding> problems = typed.keySet().stream()
                .filter(field -> !act.fields().contains(field))
                .map(field -> Finding.of(
                        "field-of-another",
                        Severity.STOP,
                        field,
                        "not asked",
                        "Nothing of the kind is said of what was " + act.word() + ".",
                        "It takes: " + String.join(", ", act.fields()) + "."))
                .toList();
        if (!problems.isEmpty()) {
            return new Outcome.NotKept(problems);
        }
        Map<String, String> whole = new LinkedHashMap<>(typed);
        if (act.fields().contains("vessel") && !whole.containsKey("vessel")) {
            onlyVessel(batch).ifPresent(vessel -> whole.put("vessel", vessel));
        }
        if ((act == Act.PH || act == Act.ANALYSED) && !whole.containsKey("of")) {
            whole.put("of", onlyVessel(batch).orElse(MeantOf.ALL));
        }
        if (act == Act.ADDED && whole.containsKey("what")) {
            List<LotOnShelf> lots = lots(whole.getOrDefault("what", ""));
            if (lots.size() > 1) {
                return new Outcome.NotKept(List.of(which(lots)));
            }
            lots.forEach(lot -> whole.put("what", lot.lot().id()));
        }
        return answer(batch, act, whole, request);
    }

    private static Finding which(List<LotOnShelf> lots) {
        String all = lots.stream()
                .map(lot -> {
                    String label = lot.lot().sheet().label();
                    String left = Stock.isKnown(lot.lot())
                            ? ", " + Stock.left(lot.lot()).text() + " left"
                            : "";
                    return lot.lot().id() + " (" + (label == null ? lot.name() : label) + left + ")";
                })
                .collect(Collectors.joining("; "));
        return Finding.of(
                "which-lot",
                Severity.STOP,
                "what",
                "not clear",
                lots.size() + " lots of the shelf are called “" + lots.get(0).name() + "”: " + all + ".",
                "Name the one that was taken by its id.");
    }

    /** Returns the one vessel of a batch that something is in, where there is just one. */
    public Optional<String> onlyVessel(Batch batch) {
        List<String> vessels = Book.open(store).cellar().vessels(batch.id()).entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .map(Place::vessel)
                .toList();
        return vessels.size() == 1 ? Optional.of(vessels.get(0)) : Optional.empty();
    }

    /** Returns the lots of a name that something can be taken from; none where an id is named, or what every kitchen has. */
    private List<LotOnShelf> lots(String what) {
        if (store.lots().lot(what).isPresent()) {
            return List.of();
        }
        List<LotOnShelf> shelf =
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all());
        return ShelfLots.named(what, shelf);
    }
}

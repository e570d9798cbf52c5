package org.stillroom.studio.usecase.learn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.gauging.DropLearning;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.shelf.LotOnShelf;

/**
 * Finds, between two weighings of a bottle, what drops were counted out of it and what is missing besides.
 *
 * <p>A weighing is right within 0.1 g, both ends of one, and what went out by other measures within 1 %; from memory.
 */
final class LearnDrops {
    private static final double SCALE_GRAMS = 0.1;
    private static final double OTHER_PART = 0.01;
    private static final String WEIGHED = "weighed";

    private final Store store;
    private final Map<String, LotOnShelf> lots;

    LearnDrops(Store store, Map<String, LotOnShelf> lots) {
        this.store = store;
        this.lots = Map.copyOf(lots);
    }

    /** The amounts of an entry of a lot, as the store writes them. */
    private record Amounts(double before, double after, String why) {}

    /**
     * What a batch counted out of a bottle in drops.
     *
     * @param entry number of the entry with which its make ended
     * @param grams reckoned of it
     * @param amount the same in the unit of the bottle
     * @param perDrop g that a drop was reckoned to weigh then
     */
    private record Drawn(long entry, double grams, double amount, double perDrop) {}

    /**
     * A bottle and the dropper that it is counted with.
     *
     * @param isTyped whether the maker typed what a drop of it weighs
     * @param perDrop g that a drop is reckoned to weigh now
     */
    private record Kept(String lot, String dropper, boolean isTyped, String liquid, double perDrop) {}

    List<LearntDrop> answer(Book book, Map<String, PouredBatch> poured) {
        Map<Kept, Integer> liquids = new LinkedHashMap<>();
        Map<String, Integer> droppers = new LinkedHashMap<>();
        List<DropLearning.Run> runs = new ArrayList<>();
        Map<Integer, Integer> weighings = new HashMap<>();
        Map<String, Kept> seen = new LinkedHashMap<>();
        Map<String, List<Drawn>> drawn = drawn(book, poured, seen);
        drawn.forEach((lot, all) -> {
            Kept kept = seen.get(lot);
            if (kept == null || !lots.containsKey(lot)) {
                return;
            }
            int dropper = kept.isTyped() ? -1 : droppers.computeIfAbsent(kept.dropper(), name -> droppers.size());
            int liquid = liquids.computeIfAbsent(kept, key -> liquids.size());
            for (Missing missing : missing(kept, all)) {
                runs.add(new DropLearning.Run(liquid, dropper, missing.part(), missing.halfWidth()));
                weighings.merge(liquid, 1, Integer::sum);
            }
        });
        DropLearning learned = DropLearning.of(liquids.size(), droppers.size(), runs);
        List<LearntDrop> told = new ArrayList<>();
        droppers.forEach((name, index) -> {
            int count = liquids.entrySet().stream()
                    .filter(each ->
                            !each.getKey().isTyped() && each.getKey().dropper().equals(name))
                    .mapToInt(each -> weighings.getOrDefault(each.getValue(), 0))
                    .sum();
            if (count > 0) {
                told.add(new LearntDrop(name, null, null, 1.0, times(learned.dropper(index), 1.0), count));
            }
        });
        liquids.forEach((kept, index) -> {
            int count = weighings.getOrDefault(index, 0);
            if (count > 0) {
                Interval part = kept.isTyped()
                        ? learned.liquid(index)
                        : learned.liquid(index, droppers.getOrDefault(kept.dropper(), 0));
                told.add(new LearntDrop(
                        kept.dropper(), kept.liquid(), kept.lot(), kept.perDrop(), times(part, kept.perDrop()), count));
            }
        });
        return told;
    }

    private static Interval times(Interval part, double perDrop) {
        return new Interval(
                perDrop * (1.0 + part.value()), perDrop * (1.0 + part.low()), perDrop * (1.0 + part.high()));
    }

    /** Returns what batches drew in drops, by lot; a bottle is followed as long as one dropper counts out of it. */
    private Map<String, List<Drawn>> drawn(Book book, Map<String, PouredBatch> poured, Map<String, Kept> seen) {
        Map<String, List<Drawn>> all = new LinkedHashMap<>();
        for (int i = book.batches().size() - 1; i >= 0; i--) {
            Batch batch = book.batches().get(i);
            long finished = finished(batch);
            poured.getOrDefault(batch.id(), new PouredBatch(List.of())).lines().stream()
                    .filter(line -> line.counted() > 0.0 && line.drawn().size() == 1)
                    .forEach(line -> line.drawn().forEach((lot, amount) -> {
                        double counted = amount * line.counted() / line.grams();
                        double perDrop = line.ingredient().gramsPerDrop();
                        all.computeIfAbsent(lot, key -> new ArrayList<>())
                                .add(new Drawn(finished, line.counted(), counted, perDrop));
                        seen.put(lot, kept(lot, line));
                    }));
        }
        return all;
    }

    /** Returns what is known of a drop out of a bottle: by its own sheet, else as it was planned with. */
    private Kept kept(String lot, PouredBatch.Line line) {
        LotOnShelf bottle = lots.get(lot);
        Ingredient ingredient = bottle == null ? null : bottle.ingredient();
        Resolved own = ingredient == null || ingredient.drop() == null
                ? null
                : Resolution.of(ingredient).resolved();
        Resolved planned = line.ingredient();
        return own == null
                ? new Kept(
                        lot, line.dropper(), planned.ingredient().drop() != null, line.name(), planned.gramsPerDrop())
                : new Kept(lot, line.dropper(), true, line.name(), own.gramsPerDrop());
    }

    /** Returns the number of the entry with which the make of a batch ended; it drew the lots down just before. */
    private long finished(Batch batch) {
        return store.makes().entries(batch.make()).stream()
                .filter(entry -> entry.kind().equals("make.finished"))
                .mapToLong(HistoryEntry::id)
                .findFirst()
                .orElse(0);
    }

    /** What is missing between two weighings, as a part of what drops are reckoned to be. */
    private record Missing(double part, double halfWidth) {}

    private List<Missing> missing(Kept kept, List<Drawn> drawn) {
        List<Missing> all = new ArrayList<>();
        long since = -1; // the last weighing, or −1 while nothing is known
        double moved = 0.0;
        for (HistoryEntry entry : store.history().of("lot:" + kept.lot())) {
            switch (entry.kind()) {
                case "lot.moved" -> {
                    Amounts amounts = LogBodies.read(entry.body(), Amounts.class);
                    moved += Math.abs(amounts.before() - amounts.after());
                }
                case "lot.measured" -> {
                    Amounts amounts = LogBodies.read(entry.body(), Amounts.class);
                    boolean weighed = amounts.why().equals(WEIGHED);
                    if (weighed && since >= 0) {
                        between(kept, counted(drawn, since, entry.id()), amounts.before() - amounts.after(), moved)
                                .ifPresent(all::add);
                    }
                    since = weighed ? entry.id() : -1;
                    moved = 0.0;
                }
                case "lot.changed" -> {}
                default -> since = -1; // undone, removed, brought back: the thread is lost until the next weighing
            }
        }
        return all;
    }

    private static List<Drawn> counted(List<Drawn> drawn, long after, long until) {
        return drawn.stream()
                .filter(each -> each.entry() > after && each.entry() < until)
                .toList();
    }

    private static Optional<Missing> between(Kept kept, List<Drawn> counted, double missing, double moved) {
        double then = 0.0;
        double now = 0.0;
        double grams = 0.0;
        for (Drawn each : counted) {
            then += each.amount();
            now += each.amount() * kept.perDrop() / each.perDrop();
            grams += each.grams() * kept.perDrop() / each.perDrop();
        }
        if (!(now > 0.0)) {
            return Optional.empty();
        }
        double scale = SCALE_GRAMS * now / grams; // in the unit of the bottle
        double others = OTHER_PART * Math.max(0.0, moved - then);
        double half = Math.sqrt(2.0 * scale * scale + others * others) / now;
        return Optional.of(new Missing((missing + then - now) / now, half));
    }
}

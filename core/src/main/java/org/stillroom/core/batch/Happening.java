package org.stillroom.core.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;

/** Lets entries happen one after the other to vessels that it changes; an entry that cannot have happened changes nothing. */
final class Happening {
    /** Part of a loss by which it may be judged wrong. Common practice, no source. */
    private static final double JUDGED = 0.1;

    private final Map<Place, Held> vessels;
    private final List<Flow> flows;
    private final List<Bottling> bottlings;
    private final Set<String> known;
    private final Map<Long, Entry> byId;
    private final Map<String, Instant> begun = new HashMap<>();

    Happening(Map<Place, Held> vessels, List<Flow> flows, List<Bottling> bottlings, List<Entry> log) {
        this.vessels = vessels;
        this.flows = flows;
        this.bottlings = bottlings;
        this.known = log.stream()
                .filter(entry -> entry.event() instanceof Event.Begun)
                .map(entry -> entry.event().places().get(0).batch())
                .collect(Collectors.toSet());
        this.byId = log.stream().collect(Collectors.toMap(Entry::id, entry -> entry));
    }

    void happens(Entry entry) {
        Event event = entry.event();
        if (event instanceof Event.Begun begins) {
            begins(entry, begins);
            return;
        }
        event.places().forEach(place -> requireBegun(entry, place));
        if (event instanceof Event.Measured measured) {
            Held held = required(measured.place());
            Contents now = Remeasured.of(held.contents(), measured);
            put(measured.place(), held.holding(now, Remeasured.slips(held, measured, now, name(entry))));
            flow(entry, measured.place(), Flow.Kind.MEASURED, null, now, held.contents());
        } else if (event instanceof Event.Added added) {
            added(entry, added);
        } else if (event instanceof Event.Moved moved) {
            moved(entry, moved);
        } else if (event instanceof Event.Wasted wasted) {
            Held held = required(wasted.place());
            Held lost = cut(held, Portion.grams(wasted.loss().amount(), held), wasted.place());
            Held left = without(held, lost).costing(held.outlay());
            put(wasted.place(), left.isEmpty() ? left : left.off(estimated(entry, lost)));
            flow(entry, wasted.place(), Flow.Kind.LOST, wasted.loss().cause(), Contents.NONE, lost.contents());
        } else if (event instanceof Event.Evaporated evaporated) {
            Held held = required(evaporated.place());
            Contents now = AngelsShare.left(held.contents(), evaporated);
            put(evaporated.place(), held.concentrated(now, AngelsShare.slips(held, evaporated, now, name(entry))));
            flow(entry, evaporated.place(), Flow.Kind.EVAPORATED, null, Contents.NONE, minus(held.contents(), now));
        } else if (event instanceof Event.Bottled bottled) {
            bottled(entry, bottled);
        } else if (event instanceof Event.PhMeasured measured) {
            foundOut(measured.place(), measured.of(), measured.bottles(), held -> held.atPh(measured.ph()));
        } else if (event instanceof Event.Analysed analysed) {
            foundOut(analysed.place(), analysed.of(), analysed.bottles(), held -> held.withFound(analysed.found()));
        } else if (event instanceof Event.Pasteurised pasteurised) {
            new FilledBottles(bottlings)
                    .change(
                            pasteurised.place().batch(),
                            pasteurised.bottles(),
                            bottling -> bottling.pasteurisedAt(entry.at()));
        } else {
            requireUndoable((Event.Undone) event);
        }
    }

    private void begins(Entry entry, Event.Begun begins) {
        if (begun.putIfAbsent(begins.place().batch(), entry.at()) != null) {
            throw new CannotHaveHappened("batch-begun-before", "", "This batch was begun before.", "");
        }
        vessels.put(
                begins.place(),
                Held.brought(
                        entry,
                        begins.contents(),
                        births(begins.contents(), entry.at()),
                        begins.outlay(),
                        begins.slips()));
        flow(entry, begins.place(), Flow.Kind.BEGUN, null, begins.contents(), Contents.NONE);
    }

    private static @Nullable Births births(Contents contents, Instant at) {
        return contents.grams(Substance.ETHANOL) > 0.0 ? Births.at(at) : null;
    }

    private void requireBegun(Entry entry, Place place) {
        Instant since = begun.get(place.batch());
        if (!known.contains(place.batch())) {
            throw new CannotHaveHappened(
                    "batch-not-known", "batch", "There is no such batch.", "Name one by its number.");
        }
        if (since == null || entry.at().isBefore(since)) {
            throw new CannotHaveHappened(
                    "before-the-batch",
                    "when",
                    "This would have happened before the batch was made.",
                    "Give a moment after the make was finished.");
        }
    }

    private Held required(Place place) {
        Held held = vessels.get(place);
        if (held == null) {
            throw new CannotHaveHappened(
                    "vessel-not-known",
                    "vessel",
                    "There was no vessel “" + place.vessel() + "” in this batch at that moment.",
                    "Choose one of its vessels, or move something into it first.");
        }
        return held;
    }

    private void added(Entry entry, Event.Added added) {
        Held held = required(added.place());
        Held more = Held.brought(
                entry, added.contents(), births(added.contents(), entry.at()), added.outlay(), added.slips());
        put(added.place(), held.plus(more));
        flow(entry, added.place(), Flow.Kind.ADDED, null, added.contents(), Contents.NONE);
    }

    private void moved(Entry entry, Event.Moved moved) {
        if (moved.from().equals(moved.to())) {
            throw new CannotHaveHappened(
                    "moved-into-itself",
                    "to",
                    "It would be moved into the vessel that it is in.",
                    "Name another vessel.");
        }
        Held held = required(moved.from());
        Held taken = cut(held, moved.taken().grams(held), moved.from());
        List<Held> lost = new ArrayList<>();
        Held arrives = taken;
        for (Wastage loss : moved.losses()) {
            lost.add(cutLoss(taken, arrives, loss));
            arrives = without(arrives, lost.get(lost.size() - 1));
        }
        for (int i = 0; i < lost.size(); i++) {
            flowOfLoss(entry, moved.from(), moved.losses().get(i), lost.get(i));
        }
        arrives = arrives.costing(taken.outlay());
        for (int i = 0; i < lost.size() && !arrives.isEmpty(); i++) {
            arrives = arrives.off(estimated(entry, lost.get(i)));
        }
        Held left = without(held, taken);
        if (!left.isEmpty() && moved.taken() instanceof Portion.Some some) {
            Slips measure = Slips.of(
                    name(entry) + "the measure of what was moved", taken.contents(), Portion.off(some.amount()));
            arrives = arrives.isEmpty() ? arrives : arrives.off(measure);
            left = left.off(measure.times(-1.0));
        }
        put(moved.from(), left);
        put(moved.to(), vessels.getOrDefault(moved.to(), Held.NOTHING).plus(arrives));
        if (moved.isBlend()) {
            flow(entry, moved.from(), Flow.Kind.GIVEN, null, Contents.NONE, arrives.contents());
            flow(entry, moved.to(), Flow.Kind.RECEIVED, null, arrives.contents(), Contents.NONE);
        }
    }

    private void bottled(Entry entry, Event.Bottled bottled) {
        requireFreeNumbers(bottled);
        Held held = required(bottled.place());
        double inBottles = Portion.grams(new Volume(bottled.millilitres()), held);
        double lostGrams = bottled.losses().stream()
                .mapToDouble(loss -> Portion.grams(loss.amount(), held))
                .sum();
        Held taken = cut(held, inBottles + lostGrams, bottled.place());
        double share = taken.grams() / (inBottles + lostGrams); // 1, or off by a measuring slip
        for (Wastage loss : bottled.losses()) {
            double grams = share * Portion.grams(loss.amount(), held);
            flowOfLoss(entry, bottled.place(), loss, held.part(grams / held.grams()));
        }
        int number = bottled.first();
        for (Event.Fill fill : bottled.fills()) {
            double part = fill.millilitres() / bottled.millilitres();
            Outlay empty = fill.bottle() == null ? Outlay.NONE : fill.bottle();
            Held bottle = held.part(share * inBottles * part / held.grams())
                    .costing(taken.outlay().times(part).plus(empty));
            bottlings.add(new Bottling(entry.id(), entry.at(), bottled.place().batch(), number, fill, bottle, null));
            number += fill.count();
        }
        flow(
                entry,
                bottled.place(),
                Flow.Kind.BOTTLED,
                null,
                Contents.NONE,
                held.contents().times(share * inBottles / held.grams()));
        Held left = without(held, taken);
        put(
                bottled.place(),
                left.isEmpty()
                        ? left
                        : left.off(Slips.of(
                                name(entry) + "the measure of what was bottled",
                                taken.contents(),
                                -Portion.off(new Volume(bottled.millilitres())))));
    }

    private void foundOut(Place place, Event.Of of, @Nullable BottleNumbers bottles, UnaryOperator<Held> finding) {
        switch (of) {
            case VESSEL -> {
                Held held = required(place);
                if (held.isEmpty()) {
                    throw Remeasured.nothingThere(place);
                }
                put(place, finding.apply(held));
            }
            case BOTTLES ->
                new FilledBottles(bottlings).change(place.batch(), bottles, bottling -> bottling.known(finding));
        }
    }

    private void requireFreeNumbers(Event.Bottled bottled) {
        int last = bottled.first() + bottled.count() - 1;
        boolean taken = bottled.count() == 0
                || bottlings.stream()
                        .filter(each -> each.batch().equals(bottled.place().batch()))
                        .anyMatch(each -> each.first() <= last && each.last() >= bottled.first());
        if (taken) {
            throw new CannotHaveHappened(
                    "bottle-numbers-taken",
                    "first",
                    "Bottles " + bottled.first() + " to " + last
                            + " of this batch are filled already, or none is named.",
                    "Name at least one bottle, and begin with the next number that is free.");
        }
    }

    private void requireUndoable(Event.Undone undo) {
        Entry of = byId.get(undo.entry());
        if (of == null || of.event() instanceof Event.Begun) {
            throw new CannotHaveHappened(
                    "nothing-to-take-back",
                    "",
                    "There is no entry " + undo.entry() + " of this batch that could be taken back.",
                    "Choose one of the log; that the batch was made is undone nowhere.");
        }
    }

    /** Returns so many grams of what a vessel holds; a measuring slip more or less is all of it. */
    private static Held cut(Held held, double grams, Place place) {
        double there = held.grams();
        if (!(grams >= 0.0) || grams > there * (1.0 + Portion.MEASURING_SLIP) || held.isEmpty()) {
            throw new CannotHaveHappened(
                    "more-than-there-is",
                    "amount",
                    "“" + place.vessel() + "” held " + amount(held) + " at that moment; " + amountOf(grams, held)
                            + " cannot come out of it.",
                    "Check the amount and the moment; if there really is more, enter what is measured first.");
        }
        return grams >= there * (1.0 - Portion.MEASURING_SLIP) ? held : held.part(grams / there);
    }

    private static Held cutLoss(Held taken, Held left, Wastage loss) {
        double grams = Portion.grams(loss.amount(), taken);
        if (grams > left.grams() * (1.0 + Portion.MEASURING_SLIP)) {
            throw new CannotHaveHappened(
                    "lost-more-than-moved",
                    "lost",
                    "More would be lost on the way than the " + amount(taken) + " that were moved.",
                    "Give what was lost of what was moved.");
        }
        return left.isEmpty() ? Held.NOTHING : left.part(Math.min(1.0, grams / left.grams()));
    }

    private static String amount(Held held) {
        return amountOf(held.grams(), held);
    }

    private static String amountOf(double grams, Held held) {
        String weight = QuantityWords.fixed(grams, 1) + " g";
        double millilitres =
                held.isEmpty() ? 0.0 : 1000.0 * grams / held.essentials().density();
        return held.isEmpty() ? "nothing" : QuantityWords.fixed(millilitres, 0) + " mL (" + weight + ")";
    }

    /** Returns what is left when a part of the same liquid is taken out; never less than nothing by rounding. */
    private static Held without(Held held, Held taken) {
        double left = held.grams() > 0.0 ? Math.max(0.0, 1.0 - taken.grams() / held.grams()) : 0.0;
        return left == 0.0 ? Held.NOTHING : held.part(left);
    }

    /** Returns the name of what an entry says, so that it is told from what others say. */
    private static String name(Entry entry) {
        return "entry " + entry.id() + Slips.OF;
    }

    /** Returns how far a loss may be off, which is judged rather than measured; what is lost more is there less. */
    private static Slips estimated(Entry entry, Held lost) {
        return Slips.of(name(entry) + "the measure of what was lost", lost.contents(), -JUDGED);
    }

    private static Contents minus(Contents from, Contents what) {
        double[] grams = from.toGrams();
        double[] less = what.toGrams();
        for (int i = 0; i < grams.length; i++) {
            grams[i] = Math.max(0.0, grams[i] - less[i]);
        }
        return Contents.ofGrams(grams);
    }

    private void put(Place place, Held held) {
        vessels.put(place, held);
    }

    private void flowOfLoss(Entry entry, Place place, Wastage loss, Held lost) {
        flow(entry, place, Flow.Kind.LOST, loss.cause(), Contents.NONE, lost.contents());
    }

    private void flow(
            Entry entry, Place place, Flow.Kind kind, Wastage.@Nullable Cause cause, Contents in, Contents out) {
        flows.add(new Flow(entry.id(), entry.at(), place.batch(), kind, cause, in, out));
    }
}

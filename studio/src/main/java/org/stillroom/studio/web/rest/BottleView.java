package org.stillroom.studio.web.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.core.batch.BottlePlan;
import org.stillroom.core.batch.Headspace;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.batch.PlanBottling;
import org.stillroom.studio.usecase.batch.TellKeeping;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.wording.Words;

/**
 * Bottling in the words of its reader.
 *
 * @param vessels that something is in
 * @param empty bottles of the shelf
 * @param trim labels and stoppers of the shelf
 * @param typed what was asked
 * @param keeps what rules say of what is filled
 */
public record BottleView(
        Batch batch,
        Words words,
        List<BatchForm.Choice> vessels,
        List<Lot> empty,
        List<Lot> trim,
        Map<String, String> typed,
        PlanBottling.Answer answer,
        TellKeeping.Found keeps) {
    /** A closed bottle that is full below this warmth is in danger on a windowsill, °C. Common practice, no source. */
    private static final double WINDOWSILL = 35.0;

    /** Begins the name of a field that says how many of a lot were taken. */
    static final String TAKEN = "taken-";

    public BottleView {
        vessels = List.copyOf(vessels);
        empty = List.copyOf(empty);
        trim = List.copyOf(trim);
        typed = Map.copyOf(typed);
    }

    public String text(String field) {
        return typed.getOrDefault(field, "");
    }

    public int sizes() {
        return PlanBottling.SIZES;
    }

    public String lot(Lot lot) {
        String size = lot.sheet().fields().getOrDefault(LotKeys.HOLDS, "");
        return lot.sheet().name() + (size.isEmpty() ? "" : ", " + size) + " ("
                + words.say("rest.piecesLeft", words.marked(Stock.left(lot).number())) + ")";
    }

    /** Returns whether each bottle is to get one of a lot. */
    public boolean isForEach(Lot lot) {
        return List.of(text("each").split(";", -1)).contains(lot.id());
    }

    public List<Finding> problems() {
        return answer.problems();
    }

    /** Returns the bottles in words, the short one last. */
    public List<String> bottles(PlanBottling.Found found) {
        List<String> bottles = new ArrayList<>();
        found.plan()
                .full()
                .forEach(fill -> bottles.add(
                        words.say("rest.full", "" + fill.count(), words.amount(new Volume(fill.millilitres())))));
        BottlePlan.Last last = found.plan().last();
        if (last != null) {
            bottles.add(words.say(
                    "rest.short", words.amount(new Volume(last.size())), words.amount(new Volume(last.millilitres()))));
        }
        if (found.plan().unfilled() > 0.5) {
            bottles.add(words.say(
                    "rest.unfilled", words.amount(new Volume(found.plan().unfilled()))));
        }
        return bottles;
    }

    /** Returns what to know about the room in bottles of a size. */
    public String room(PlanBottling.Room room, PlanBottling.Found found) {
        String size = words.amount(new Volume(room.size()));
        String fill = words.say("rest.fillTo", size, words.number(found.celsius(), 0), words.number(room.fillTo(), 1));
        String warm = words.say("rest.takesWarm", words.number(room.warmest(), 1), words.number(Headspace.WARMEST, 0));
        String full = room.brimful() == null
                ? words.say("rest.brimNotKnown", words.number(room.warmest() - room.size(), 1))
                : room.fullAt().isPresent()
                        ? words.say("rest.fullAt", words.number(room.fullAt().getAsDouble(), 0))
                        : words.say("rest.notFull", words.number(Headspace.WARMEST, 0));
        return fill + " " + warm + " " + full;
    }

    /** Returns how much it asks for: within, near, over, or nothing known. */
    public String mark(PlanBottling.Room room) {
        if (room.brimful() == null) {
            return "plain";
        }
        if (room.fullAt().isEmpty()) {
            return "within";
        }
        return room.fullAt().getAsDouble() < WINDOWSILL ? "over" : "near";
    }

    /** Returns what one bottle costs; empty where nothing is known of it. */
    public String cost(PlanBottling.Room room) {
        return room.cost().money().isEmpty()
                ? ""
                : words.say(
                        room.bottleCounted() ? "rest.wholeCost" : "rest.bottleCost",
                        BatchView.cost(words, room.cost()));
    }
}

package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Event.Fill;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.shelf.LotPrices;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.Packing;
import org.stillroom.studio.usecase.shelf.Stock;

/**
 * The empty bottles, labels and stoppers of the shelf that go with bottles which are filled, and what each bottle costs with them.
 *
 * <p>A bottle is of the lot of its size; one that is short is of the smallest that takes it. What more was taken than filled is broken and
 * paid by the others.
 *
 * @param lots what is taken from the shelf
 * @param fills the bottles, each with what the empty one cost; without where none of the shelf was named
 */
record Packaged(List<BatchSheet.Taken> lots, List<Fill> fills) {
    /** The field in which lots are named, each with how many of it: "id:4; id:5". */
    static final String FIELD = "lots";

    /** A bottle that is filled to its size within this part of it is of that size. */
    private static final double OF_SIZE = 0.02;

    private static final Pattern NAMED = Pattern.compile("(.+?)(?:\\s*:\\s*(\\d{1,6}))?");

    Packaged {
        lots = List.copyOf(lots);
        fills = List.copyOf(fills);
    }

    /** A lot on its way: how many of it are taken, and for which fills. */
    private static final class Box {
        private final Lot lot;
        private final Packing packing;
        private final @Nullable Integer said;
        private final double holds;
        private final int[] of;
        private int rest;

        Box(Lot lot, Packing packing, @Nullable Integer said, double holds, int fills) {
            this.lot = lot;
            this.packing = packing;
            this.said = said;
            this.holds = holds;
            this.of = new int[fills];
            this.rest = said == null ? (int) Math.floor(Math.max(0.0, lot.left())) : said;
        }

        int used() {
            return Arrays.stream(of).sum();
        }

        int taken() {
            return said == null ? used() : said;
        }

        void take(int fill, int wanted) {
            int some = Math.min(rest, wanted);
            of[fill] += some;
            rest -= some;
        }
    }

    /** Returns what goes with bottles; what cannot be is objected to at {@link #FIELD}. */
    static Packaged of(List<Fill> fills, Typing typing, Store store) {
        List<Box> boxes = boxes(fills.size(), typing, store);
        int bottles = fills.stream().mapToInt(Fill::count).sum();
        for (Box box : boxes) {
            if (box.packing == Packing.TRIM) {
                for (int i = 0; i < fills.size(); i++) {
                    box.take(i, fills.get(i).count());
                }
            }
        }
        fill(fills, boxes);
        for (Box box : boxes) {
            object(box, bottles, typing);
        }
        LotPrices prices = new LotPrices(MakersOunce.of(store.settings()));
        List<Fill> packed = new ArrayList<>();
        for (int i = 0; i < fills.size(); i++) {
            packed.add(new Fill(fills.get(i).count(), fills.get(i).millilitres(), cost(fills, i, boxes, prices)));
        }
        return new Packaged(
                boxes.stream()
                        .filter(box -> box.taken() > 0)
                        .map(box -> new BatchSheet.Taken(
                                box.lot.id(),
                                box.lot.sheet().label(),
                                box.taken(),
                                box.lot.sheet().unit()))
                        .toList(),
                packed);
    }

    private static List<Box> boxes(int fills, Typing typing, Store store) {
        List<Box> boxes = new ArrayList<>();
        for (String each : typing.text(FIELD).split(";", -1)) {
            var named = NAMED.matcher(each.strip());
            if (each.isBlank() || !named.matches()) {
                continue;
            }
            String count = named.group(2);
            Lot lot = lot(Objects.requireNonNull(named.group(1)), typing, store);
            Packing packing = lot == null ? null : Packing.of(lot.sheet().kind());
            if (lot != null && packing == null) {
                typing.object(
                        FIELD,
                        "no-bottles",
                        "“" + lot.sheet().name() + "” are neither empty bottles nor labels or stoppers.",
                        "Name lots of those kinds.");
            } else if (lot != null && packing != null) {
                boxes.add(new Box(
                        lot, packing, count == null ? null : Integer.valueOf(count), size(lot, LotKeys.HOLDS), fills));
            }
        }
        return boxes;
    }

    private static @Nullable Lot lot(String name, Typing typing, Store store) {
        Lot byId = store.lots().lot(name).orElse(null);
        if (byId != null) {
            return byId;
        }
        List<Lot> lots = store.lots().all().stream()
                .filter(lot -> Packing.of(lot.sheet().kind()) != null)
                .filter(lot -> Generics.same(name, lot.sheet().name()))
                .toList();
        if (lots.size() == 1) {
            return lots.get(0);
        }
        typing.object(
                FIELD,
                lots.isEmpty() ? "lot-not-known" : "several-lots",
                lots.isEmpty()
                        ? "Nothing of the shelf is called “" + name + "”."
                        : lots.size() + " lots of the shelf are called “" + name + "”.",
                "Name it by its id, as the shelf has it.");
        return null;
    }

    /** Returns what a lot of empty bottles says of their size, mL; 0 where it says nothing. */
    static double size(Lot lot, String key) {
        String text = lot.sheet().fields().getOrDefault(key, "");
        return new QuantityText(OunceMeaning.US_FLUID).volume(text)
                        instanceof Understanding.Understood<Volume> understood
                ? understood.typed().value().millilitres()
                : 0.0;
    }

    /** Fills bottles of the very size first, then what is short into the smallest that takes it. */
    private static void fill(List<Fill> fills, List<Box> boxes) {
        List<Box> bottles = boxes.stream()
                .filter(box -> box.packing == Packing.BOTTLES)
                .sorted((one, other) -> Double.compare(one.holds, other.holds))
                .toList();
        for (boolean exactly : new boolean[] {true, false}) {
            for (int i = 0; i < fills.size(); i++) {
                double each = fills.get(i).millilitres();
                for (Box box : bottles) {
                    boolean ofSize = Math.abs(box.holds - each) <= OF_SIZE * box.holds;
                    if (ofSize == exactly && (exactly || box.holds >= each)) {
                        box.take(i, missing(fills, i, bottles));
                    }
                }
            }
        }
    }

    private static int missing(List<Fill> fills, int i, List<Box> bottles) {
        return fills.get(i).count()
                - bottles.stream().mapToInt(box -> box.of[i]).sum();
    }

    private static void object(Box box, int bottles, Typing typing) {
        String name = "“" + box.lot.sheet().name() + "”";
        double left = Math.max(0.0, box.lot.left());
        int wanted = box.packing == Packing.TRIM && box.said == null ? bottles : box.taken();
        if (wanted > left) {
            typing.object(
                    FIELD,
                    "more-than-on-shelf",
                    "Only " + new Stock(left, Stock.PIECES).number() + " of " + name + " are on the shelf; " + wanted
                            + " cannot come from there.",
                    "Take fewer, or count on the shelf how many there are.");
        } else if (box.used() == 0) {
            typing.object(
                    FIELD,
                    "bottle-not-filled",
                    "Nothing was filled into " + name + ".",
                    "Leave it out, or look at the sizes that were filled.");
        }
    }

    /** Returns what one bottle costs before it is filled; null where no lot was named for it. */
    private static @Nullable Outlay cost(List<Fill> fills, int i, List<Box> boxes, LotPrices prices) {
        Outlay all = Outlay.NONE;
        int bottles = 0;
        boolean any = false;
        for (Box box : boxes) {
            if (box.of[i] > 0) {
                double share = (double) box.of[i] / box.used() / fills.get(i).count();
                all = all.plus(prices.of(box.lot, box.taken()).times(share));
                bottles += box.packing == Packing.BOTTLES ? box.of[i] : 0;
                any = true;
            }
        }
        return any && bottles < fills.get(i).count() ? all.plus(Outlay.UNKNOWN) : any ? all : null;
    }
}

package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.BottlePlan;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Flow;
import org.stillroom.core.batch.Headspace;
import org.stillroom.core.batch.Held;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.batch.Place;
import org.stillroom.core.batch.Portion;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.Packing;
import org.stillroom.studio.usecase.shelf.Stock;

/** Works out how many of which bottles a vessel fills, how full each may be, and what one has cost. */
public final class PlanBottling {
    /** How many sizes can be named at once. */
    public static final int SIZES = 3;

    /** Without a number at hand there are as many bottles as are wanted. */
    private static final int PLENTY = 1000;

    private static final Set<Flow.Kind> CAME = Set.of(Flow.Kind.BEGUN, Flow.Kind.ADDED, Flow.Kind.RECEIVED);

    private final Store store;

    public PlanBottling(Store store) {
        this.store = store;
    }

    /**
     * A size of bottle as it was asked about.
     *
     * @param size mL
     * @param fillTo mL to fill it to at the temperature at which it is filled, so that it holds its size at 20 °C
     * @param warmest mL that its content takes at 40 °C
     * @param brimful mL that it holds to the brim, or null when that was not said
     * @param fullAt temperature at which it is full to the brim, °C; empty up to 40 °C, or when it is not known
     * @param cost of one, with what is in it, and with the empty bottle and its label where they are counted
     * @param bottleCounted whether they are
     */
    public record Room(
            double size,
            double fillTo,
            double warmest,
            @Nullable Double brimful,
            OptionalDouble fullAt,
            Outlay cost,
            boolean bottleCounted) {}

    /**
     * What is told.
     *
     * @param held what is in the vessel
     * @param plan the bottles
     * @param rooms one for each size
     * @param first number of the first bottle
     * @param part of all that came into the batch that comes into these bottles
     * @param celsius temperature at which they are filled
     * @param lots what the shelf gives, for {@link RecordBatch#bottled}
     */
    public record Found(
            Held held,
            BottlePlan plan,
            List<Room> rooms,
            int first,
            double part,
            double celsius,
            List<FromShelf> lots) {
        public Found {
            rooms = List.copyOf(rooms);
            lots = List.copyOf(lots);
        }

        /** Returns what the shelf gives as it is typed, such as "id:3; id:3". */
        public String typedLots() {
            return String.join(
                    "; ",
                    lots.stream().map(lot -> lot.lot().id() + ":" + lot.count()).toList());
        }

        /** Returns the bottles as they are typed, such as "3 x 500 ml; 1 x 420 ml"; the last one in whole mL, as it can be measured. */
        public String typed() {
            List<String> fills = new ArrayList<>();
            plan.full()
                    .forEach(fill ->
                            fills.add(fill.count() + " x " + new Stock(fill.millilitres(), Stock.MILLILITRES).text()));
            BottlePlan.Last last = plan.last();
            if (last != null) {
                fills.add("1 x " + new Stock(Math.floor(last.millilitres()), Stock.MILLILITRES).text());
            }
            return String.join("; ", fills);
        }
    }

    /** So many pieces of a lot. */
    public record FromShelf(Lot lot, int count) {}

    /** What comes of a question: what is told, or why it cannot be; never both. */
    public record Answer(@Nullable Found found, List<Finding> problems) {
        public Answer {
            problems = List.copyOf(problems);
        }
    }

    /** Returns the empty bottles, or the labels and stoppers, that stand on the shelf. */
    public List<Lot> onShelf(Packing packing) {
        return packing.among(store.lots().all());
    }

    /** A row of the form, understood. */
    private record Row(
            BottlePlan.Size size,
            @Nullable Double brimful,
            @Nullable Lot lot) {}

    /**
     * Returns the bottles for a vessel: {@code size1} to {@code size3} with {@code count1} and {@code brim1} of each and maybe the lot
     * {@code lot1} of empty bottles that they come from, which knows these better; lots of labels and stoppers of which each bottle gets
     * one, {@code each}; what is lost as {@code filter}, and the {@code temperature} at which they are filled.
     */
    public Answer answer(Book book, Batch batch, Map<String, String> typed) {
        Typing typing = new Typing(typed, MakersOunce.of(store.settings()));
        Held held = book.cellar().held(new Place(batch.id(), typing.text("vessel")));
        if (held.isEmpty()) {
            typing.object("vessel", "vessel-empty", "Nothing is in that vessel.", "Choose one that something is in.");
            return new Answer(null, typing.problems());
        }
        List<Row> rows = rows(typing);
        Amount lost = typing.amount("filter", "");
        Temperature temperature = typing.quantity("temperature", "°C", QuantityText::temperature, "“18 °C”");
        Temperature at = temperature == null ? Temperature.TWENTY_CELSIUS : temperature;
        if (!(at.celsius() >= 0.0 && at.celsius() <= Headspace.WARMEST)) {
            typing.object(
                    "temperature",
                    "temperature-outside",
                    "That is outside 0 to 40 °C.",
                    "Bottle it at the warmth of a room.");
        }
        double lostMillilitres = lost == null
                ? 0.0
                : 1000.0 * Portion.grams(lost, held) / held.essentials().density();
        double volume = held.essentials().millilitres() - lostMillilitres;
        if (!(volume > 0.0) || volume > BottlePlan.MOST) {
            typing.object(
                    "filter",
                    "nothing-to-bottle",
                    "0 to 100 L can be bottled at once; this is not.",
                    "Check what is lost.");
        }
        if (!typing.problems().isEmpty()) {
            return new Answer(null, typing.problems());
        }
        BottlePlan plan = BottlePlan.of(volume, rows.stream().map(Row::size).toList());
        List<FromShelf> lots = lots(typing, rows, plan);
        Typing packing = new Typing(Map.of(Packaged.FIELD, text(lots)), MakersOunce.of(store.settings()));
        Packaged packaged = Packaged.of(fills(plan), packing, store);
        List<Finding> problems = new ArrayList<>(typing.problems());
        problems.addAll(packing.problems());
        return problems.isEmpty()
                ? new Answer(found(book, batch, held, rows, plan, at, lots, packaged), List.of())
                : new Answer(null, problems);
    }

    private static String text(List<FromShelf> lots) {
        return String.join(
                "; ",
                lots.stream().map(lot -> lot.lot().id() + ":" + lot.count()).toList());
    }

    private static List<Event.Fill> fills(BottlePlan plan) {
        List<Event.Fill> fills = new ArrayList<>(plan.full());
        BottlePlan.Last last = plan.last();
        if (last != null) {
            fills.add(new Event.Fill(1, last.millilitres()));
        }
        return fills;
    }

    /** Returns what the shelf gives for a plan: the bottles of each row, and one label or stopper for each of all bottles. */
    private List<FromShelf> lots(Typing typing, List<Row> rows, BottlePlan plan) {
        List<FromShelf> lots = new ArrayList<>();
        for (Row row : rows) {
            int used = used(plan, row.size().millilitres());
            if (row.lot() != null && used > 0) {
                lots.add(new FromShelf(row.lot(), used));
            }
        }
        int all = fills(plan).stream().mapToInt(Event.Fill::count).sum();
        for (String id : typing.text("each").split(";", -1)) {
            Lot lot = id.isBlank() ? null : store.lots().lot(id.strip()).orElse(null);
            if (lot != null && all > 0) {
                lots.add(new FromShelf(lot, all));
            } else if (lot == null && !id.isBlank()) {
                typing.object(
                        "each",
                        "lot-not-known",
                        "There is no lot “" + id.strip() + "” on the shelf.",
                        "Name it by its id, as the shelf has it.");
            }
        }
        return lots;
    }

    private List<Row> rows(Typing typing) {
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i <= SIZES; i++) {
            Lot lot = lot(typing, i);
            Volume size = size(typing, lot, i);
            Row row = size == null ? null : row(typing, size, lot, i);
            if (row != null
                    && rows.stream()
                            .anyMatch(other ->
                                    other.size().millilitres() == row.size().millilitres())) {
                typing.object(
                        "size" + i,
                        "bottle-size-twice",
                        "Bottles of " + row.size().millilitres() + " mL stand there twice.",
                        "Name each size once.");
            }
            if (row != null) {
                rows.add(row);
            }
        }
        if (rows.isEmpty() && typing.problems().isEmpty()) {
            typing.object("size1", "bottle-missing", "No bottle is named.", "Write a size, such as 500 ml.");
        }
        return rows;
    }

    private @Nullable Lot lot(Typing typing, int i) {
        if (!typing.has("lot" + i)) {
            return null;
        }
        Lot lot = store.lots().lot(typing.text("lot" + i)).orElse(null);
        if (lot == null || Packing.of(lot.sheet().kind()) != Packing.BOTTLES) {
            typing.object(
                    "lot" + i,
                    "no-empty-bottles",
                    "“" + typing.text("lot" + i) + "” are no empty bottles of the shelf.",
                    "Put empty bottles on the shelf and name them by their id, or leave it out.");
            return null;
        }
        return lot;
    }

    /** Returns what a bottle of a row holds; empty bottles of the shelf know it. */
    private static @Nullable Volume size(Typing typing, @Nullable Lot lot, int i) {
        Volume typed = typing.quantity("size" + i, "ml", QuantityText::volume, "“500 ml”");
        if (lot == null) {
            return typed;
        }
        double holds = Packaged.size(lot, LotKeys.HOLDS);
        if (typed != null && Math.abs(holds - typed.millilitres()) > 0.5) {
            typing.object(
                    "size" + i,
                    "bottle-of-other-size",
                    "“" + lot.sheet().name() + "” hold " + new Stock(holds, Stock.MILLILITRES).text() + ".",
                    "Leave the size empty, or choose bottles of that size.");
        }
        return typing.has("size" + i) ? typed : new Volume(holds);
    }

    private static @Nullable Row row(Typing typing, Volume size, @Nullable Lot lot, int i) {
        String count = typing.text("count" + i);
        Volume brim = typing.quantity("brim" + i, "ml", QuantityText::volume, "“520 ml”");
        double brimOfLot = lot == null ? 0.0 : Packaged.size(lot, LotKeys.BRIM);
        if (brim == null && brimOfLot > 0.0) {
            brim = new Volume(brimOfLot);
        }
        if (!count.isEmpty() && !count.matches("\\d{1,5}")) {
            typing.object(
                    "count" + i,
                    "count-not-understood",
                    "“" + count + "” is no number of bottles.",
                    "Write such as 6.");
            return null;
        }
        if (brim != null && brim.millilitres() < size.millilitres()) {
            typing.object(
                    "brim" + i,
                    "brim-below-size",
                    "To the brim it would hold less than its size.",
                    "Weigh it empty and full of water.");
            return null;
        }
        int millilitres = (int) Math.round(size.millilitres());
        if (millilitres < 1 || millilitres > 100_000) {
            typing.object("size" + i, "bottle-size", "A bottle holds 1 mL to 100 L.", "Write a size, such as 500 ml.");
            return null;
        }
        int onShelf = lot == null ? PLENTY : (int) Math.floor(Math.max(0.0, lot.left()));
        int there = count.isEmpty() ? onShelf : Integer.parseInt(count);
        if (lot != null && there > onShelf) {
            typing.object(
                    "count" + i,
                    "more-than-on-shelf",
                    "Only " + onShelf + " of “" + lot.sheet().name() + "” are on the shelf.",
                    "Take fewer, or count on the shelf how many there are.");
            return null;
        }
        return new Row(new BottlePlan.Size(millilitres, there), brim == null ? null : brim.millilitres(), lot);
    }

    private static Found found(
            Book book,
            Batch batch,
            Held held,
            List<Row> rows,
            BottlePlan plan,
            Temperature at,
            List<FromShelf> lots,
            Packaged packaged) {
        double bottled = plan.full().stream()
                        .mapToDouble(fill -> fill.count() * fill.millilitres())
                        .sum()
                + (plan.last() == null ? 0.0 : plan.last().millilitres());
        double volume = held.essentials().millilitres();
        List<Room> rooms = new ArrayList<>();
        for (Row row : rows) {
            double size = row.size().millilitres();
            Double brim = row.brimful();
            Outlay inIt = bottled > 0.0
                    ? held.outlay().times(size / bottled * Math.min(1.0, bottledPart(plan, volume)))
                    : Outlay.UNKNOWN;
            Outlay empty = empty(packaged, plan, size);
            rooms.add(new Room(
                    size,
                    Headspace.taken(held.contents(), size, at),
                    Headspace.taken(held.contents(), size, new Temperature(Headspace.WARMEST)),
                    brim,
                    brim == null ? OptionalDouble.empty() : Headspace.fullAt(held.contents(), size, brim),
                    empty == null ? inIt : inIt.plus(empty),
                    empty != null));
        }
        double made = book.cellar().flows(batch.id()).stream()
                .filter(flow -> CAME.contains(flow.kind()))
                .mapToDouble(
                        flow -> VolumeModel.atTwenty().millilitres(flow.in().toGrams()))
                .sum();
        int first = book.cellar().nextBottle(batch.id());
        return new Found(held, plan, rooms, first, made > 0.0 ? bottled / made : 0.0, at.celsius(), lots);
    }

    /** Returns what one empty bottle of a size costs with its label, or null where that is not counted. */
    private static @Nullable Outlay empty(Packaged packaged, BottlePlan plan, double size) {
        BottlePlan.Last last = plan.last();
        Outlay ofLast = null;
        for (Event.Fill fill : packaged.fills()) {
            if (fill.millilitres() == size) {
                return fill.bottle();
            }
            ofLast = last != null && last.size() == size && fill.millilitres() == last.millilitres()
                    ? fill.bottle()
                    : ofLast;
        }
        return ofLast;
    }

    /** What no bottle takes stays in the vessel with its part of the cost; what is lost is paid by the bottles. */
    private static double bottledPart(BottlePlan plan, double volume) {
        return 1.0 - plan.unfilled() / volume;
    }

    private static int used(BottlePlan plan, double size) {
        int full = plan.full().stream()
                .filter(fill -> fill.millilitres() == size)
                .mapToInt(Event.Fill::count)
                .sum();
        BottlePlan.Last last = plan.last();
        return full + (last != null && last.size() == size ? 1 : 0);
    }
}

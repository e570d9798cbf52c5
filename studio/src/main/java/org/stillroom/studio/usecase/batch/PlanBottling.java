package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
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
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.Stock;

/** Works out how many of which bottles a vessel fills, how full each may be, and what one has cost. */
public final class PlanBottling {
    /** How many sizes can be named at once. */
    public static final int SIZES = 3;

    /** Without a number at hand there are as many bottles as are wanted. */
    private static final int PLENTY = 1000;

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
     * @param cost of what is in it
     */
    public record Room(
            double size,
            double fillTo,
            double warmest,
            @Nullable Double brimful,
            OptionalDouble fullAt,
            Outlay cost) {}

    /**
     * What is told.
     *
     * @param held what is in the vessel
     * @param plan the bottles
     * @param rooms one for each size
     * @param first number of the first bottle
     * @param part of what the make left that comes into these bottles
     * @param celsius temperature at which they are filled
     * @param lots bottles that the shelf gives, such as "id:3", for {@link RecordBatch#bottled}
     */
    public record Found(
            Held held, BottlePlan plan, List<Room> rooms, int first, double part, double celsius, List<String> lots) {
        public Found {
            rooms = List.copyOf(rooms);
            lots = List.copyOf(lots);
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

    /** What comes of a question: what is told, or why it cannot be; never both. */
    public record Answer(@Nullable Found found, List<Finding> problems) {
        public Answer {
            problems = List.copyOf(problems);
        }
    }

    /** Returns the lots of the shelf that are counted in pieces: empty bottles may be among them. */
    public List<Lot> counted() {
        return store.lots().all().stream()
                .filter(lot -> lot.sheet().unit().equals(Stock.PIECES) && lot.left() >= 1.0)
                .toList();
    }

    /** A row of the form, understood. */
    private record Row(
            BottlePlan.Size size,
            @Nullable Double brimful,
            @Nullable Lot lot) {}

    /**
     * Returns the bottles for a vessel: {@code size1} to {@code size3} with {@code count1} and {@code brim1} of each and maybe the lot
     * {@code lot1} that they come from, what is lost as {@code filter}, and the {@code temperature} at which they are filled.
     */
    public Answer answer(Book book, Batch batch, Map<String, String> typed) {
        Typing typing = new Typing(typed, MakersOunce.of(store.settings()));
        Held held = book.cellar().held(new Place(batch.id(), typing.text("vessel")));
        if (held.isEmpty()) {
            typing.object("vessel", "vessel-empty", "Nothing is in that vessel.", "Choose one that something is in.");
            return new Answer(null, typing.problems());
        }
        List<Row> rows = rows(typing);
        Amount lost = typing.amount("filter", "ml");
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
        return new Answer(found(book, batch, held, rows, plan, at), List.of());
    }

    private List<Row> rows(Typing typing) {
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i <= SIZES; i++) {
            Volume size = typing.quantity("size" + i, "ml", QuantityText::volume, "“500 ml”");
            if (size != null) {
                Row row = row(typing, size, i);
                if (row != null) {
                    rows.add(row);
                }
            }
        }
        if (rows.isEmpty() && typing.problems().isEmpty()) {
            typing.object("size1", "bottle-missing", "No bottle is named.", "Write a size, such as 500 ml.");
        }
        return rows;
    }

    private @Nullable Row row(Typing typing, Volume size, int i) {
        Lot lot = store.lots().lot(typing.text("lot" + i)).orElse(null);
        String count = typing.text("count" + i);
        Volume brim = typing.quantity("brim" + i, "ml", QuantityText::volume, "“520 ml”");
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
        int there = count.isEmpty() ? (lot == null ? PLENTY : (int) Math.floor(lot.left())) : Integer.parseInt(count);
        return new Row(new BottlePlan.Size(millilitres, there), brim == null ? null : brim.millilitres(), lot);
    }

    private static Found found(Book book, Batch batch, Held held, List<Row> rows, BottlePlan plan, Temperature at) {
        double bottled = plan.full().stream()
                        .mapToDouble(fill -> fill.count() * fill.millilitres())
                        .sum()
                + (plan.last() == null ? 0.0 : plan.last().millilitres());
        double volume = held.essentials().millilitres();
        List<Room> rooms = new ArrayList<>();
        List<String> lots = new ArrayList<>();
        for (Row row : rows) {
            double size = row.size().millilitres();
            Double brim = row.brimful();
            rooms.add(new Room(
                    size,
                    Headspace.taken(held.contents(), size, at),
                    Headspace.taken(held.contents(), size, new Temperature(Headspace.WARMEST)),
                    brim,
                    brim == null ? OptionalDouble.empty() : Headspace.fullAt(held.contents(), size, brim),
                    bottled > 0.0
                            ? held.outlay().times(size / bottled * Math.min(1.0, bottledPart(plan, volume)))
                            : Outlay.UNKNOWN));
            int used = used(plan, size);
            if (row.lot() != null && used > 0) {
                lots.add(row.lot().id() + ":" + used);
            }
        }
        double made = book.cellar().flows(batch.id()).stream()
                .filter(flow -> flow.kind() == Flow.Kind.BEGUN)
                .mapToDouble(
                        flow -> VolumeModel.atTwenty().millilitres(flow.in().toGrams()))
                .sum();
        int first = book.cellar().nextBottle(batch.id());
        return new Found(held, plan, rooms, first, made > 0.0 ? bottled / made : 0.0, at.celsius(), lots);
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

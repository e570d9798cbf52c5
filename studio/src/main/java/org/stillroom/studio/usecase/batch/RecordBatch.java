package org.stillroom.studio.usecase.batch;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Entry;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.batch.Portion;
import org.stillroom.core.batch.Refused;
import org.stillroom.core.batch.Wastage;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Bottles;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Assay;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Batches;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotMove;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.EventBodies.AmountBody;
import org.stillroom.studio.usecase.batch.EventBodies.LossBody;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.LiquidSheet;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.make.SlipSheet;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.LotPrices;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.Stock;

/**
 * Logs what happened to a batch. What was typed is read, judged by the whole log, and written, or refused with the reason; nothing is
 * ever edited. The fields of each entry are those of its form: {@code vessel}, {@code day}, and what it asks.
 */
public final class RecordBatch {
    /** What can be added without a lot of the shelf. */
    public static final List<String> KITCHEN = List.of("water", "white sugar", "citric acid");

    /** The field in which the readings stand that figures were made of, see {@link ReadingsText}. */
    static final String READINGS = "readings";

    /** The field in which stands what a laboratory found. */
    static final String FOUND = "found";

    /** How often numbers are looked up again when somebody else took them. */
    private static final int NUMBERING = 5;

    private final Store store;
    private final Clock clock;

    public RecordBatch(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** What comes of it. */
    public sealed interface Outcome {
        /** It is in the log. */
        record Kept(HistoryEntry entry) implements Outcome {}

        /** It cannot be so; nothing was kept. Each problem names its field. */
        record NotKept(List<Finding> problems) implements Outcome {
            public NotKept {
                problems = List.copyOf(problems);
            }
        }
    }

    /** Says why an entry was not written. */
    private static final class Objected extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient List<Finding> findings;

        Objected(List<Finding> findings) {
            super("the entry does not fit the log");
            this.findings = findings;
        }
    }

    /** An entry on its way: what it says, and what it takes from the shelf. */
    private record Wish(String kind, Object body, List<BatchSheet.Taken> lots) {}

    private Typing typing(Map<String, String> typed) {
        return new Typing(typed, ounce());
    }

    private OunceMeaning ounce() {
        return MakersOunce.of(store.settings());
    }

    private Instant moment(Typing typing, Batch batch) {
        return typing.moment(clock.instant(), batch.made(), clock.getZone());
    }

    /** Logs figures that were measured: {@code volume}, {@code strength}, {@code sugar}, {@code acidity}, at least one. */
    public Outcome measured(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        Map<Asked, Double> figures = new EnumMap<>(Asked.class);
        Map<Asked, Double> doubt = new EnumMap<>(Asked.class);
        figure(typing, "volume", "ml", Asked.VOLUME, figures, doubt);
        figure(typing, "strength", "%", Asked.STRENGTH, figures, doubt);
        figure(typing, "sugar", "g/L", Asked.SUGAR, figures, doubt);
        figure(typing, "acidity", "g/L", Asked.ACIDITY, figures, doubt);
        if (figures.isEmpty() && typing.problems().isEmpty()) {
            typing.object("strength", "nothing-measured", "Nothing was measured.", "Fill in at least one figure.");
        }
        if (typing.has(READINGS) && ReadingsText.read(typing.text(READINGS)).isEmpty()) {
            typing.object(
                    READINGS,
                    "readings-not-understood",
                    "These are no readings as gauging a batch logs them.",
                    "Gauge the batch and log it from there, or leave them out.");
        }
        Instant at = moment(typing, batch);
        return keep(
                batch,
                typing,
                new Wish(
                        EventBodies.MEASURED,
                        new EventBodies.MeasuredBody(at, typing.text("vessel"), figures, doubt, typing.kept()),
                        List.of()),
                request);
    }

    /** A range that was typed is its middle, and half of it the doubt. */
    private static void figure(
            Typing typing,
            String field,
            String unit,
            Asked asked,
            Map<Asked, Double> figures,
            Map<Asked, Double> doubt) {
        Span span = typing.quantity(
                field,
                unit,
                switch (asked) {
                    case VOLUME -> QuantityText::volumeSpan;
                    case STRENGTH -> QuantityText::strengthSpan;
                    case SUGAR -> QuantityText::sugarSpan;
                    case ACIDITY -> QuantityText::aciditySpan;
                },
                switch (asked) {
                    case VOLUME -> "“1.9 L”";
                    case STRENGTH -> "“27.4 %” or “27.1..27.7 %”";
                    case SUGAR, ACIDITY -> "“180 g/L”";
                });
        if (span != null) {
            figures.put(asked, 0.5 * (span.low() + span.high()));
            if (!span.isExact()) {
                doubt.put(asked, 0.5 * (span.high() - span.low()));
            }
        }
    }

    /** Logs a {@code ph} that was measured {@code of} a vessel, or of bottles such as "bottles 1-6". */
    public Outcome phMeasured(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        MeantOf of = MeantOf.of(typing.text("of"));
        Double ph = typing.quantity("ph", "", QuantityText::ph, "“3.4”");
        if (!typing.has("ph")) {
            typing.object(
                    "ph", "nothing-measured", "Nothing was measured.", "Write it as the meter shows it, such as 3.4.");
        }
        Instant at = moment(typing, batch);
        if (ph == null) {
            return new Outcome.NotKept(typing.problems());
        }
        EventBodies.PhBody body = new EventBodies.PhBody(at, of.vessel(), of.what(), of.numbers(), ph, typing.kept());
        return keep(batch, typing, new Wish(EventBodies.PH, body, List.of()), request);
    }

    /**
     * Logs what a laboratory {@code found} of watched substances, such as "thujone 8 mg/kg; hydrogen cyanide &lt; 0.5 mg/L", {@code of} a
     * vessel or of bottles.
     */
    public Outcome analysed(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        MeantOf of = MeantOf.of(typing.text("of"));
        Assay found =
                typing.quantity(FOUND, "", (quantities, text) -> Assay.read(text, quantities), "“thujone 8 mg/kg”");
        if (!typing.has(FOUND)) {
            typing.object(
                    FOUND,
                    "nothing-measured",
                    "Nothing was found that could be written down.",
                    "Write each substance as the report has it, such as thujone 8 mg/kg; hydrogen cyanide < 0.5 mg/L.");
        }
        Instant at = moment(typing, batch);
        if (found == null) {
            return new Outcome.NotKept(typing.problems());
        }
        EventBodies.AnalysedBody body = new EventBodies.AnalysedBody(
                at,
                of.vessel(),
                of.what(),
                of.numbers(),
                found.parts().stream().map(EventBodies.FoundBody::of).toList(),
                typing.kept());
        return keep(batch, typing, new Wish(EventBodies.ANALYSED, body, List.of()), request);
    }

    /** Logs that bottles were heated closed or filled hot: {@code of} such as "bottles 1-6", all that are filled when empty. */
    public Outcome pasteurised(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        MeantOf of = typing.has("of") ? MeantOf.of(typing.text("of")) : MeantOf.of(MeantOf.ALL);
        if (of.isOfVessel()) {
            typing.object(
                    "of",
                    "bottles-wanted",
                    "Only closed bottles are pasteurised; “" + of.vessel() + "” is none.",
                    "Write such as bottles 1-6, once they are filled.");
        }
        Instant at = moment(typing, batch);
        EventBodies.PasteurisedBody body = new EventBodies.PasteurisedBody(at, of.numbers(), typing.kept());
        return keep(batch, typing, new Wish(EventBodies.PASTEURISED, body, List.of()), request);
    }

    /** Logs what was added: {@code what}, a lot's id or one of {@link #KITCHEN}, and {@code amount}. */
    public Outcome added(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        String what = typing.text("what");
        Lot lot = store.lots().lot(what).orElse(null);
        Resolved ingredient = lot == null ? generic(what) : resolved(lot);
        Amount amount = typing.required("amount", "");
        if (ingredient == null) {
            typing.object(
                    "what",
                    "ingredient-not-known",
                    "It is not known what is in it.",
                    "Choose a bottle of the shelf that says enough, or water or sugar.");
        }
        Double grams = ingredient == null || amount == null ? null : grams(amount, ingredient);
        if (ingredient != null && amount != null && grams == null) {
            typing.object("amount", "density-not-known", "What a mL of it weighs is not known.", "Give a weight.");
        }
        Instant at = moment(typing, batch);
        if (ingredient == null || amount == null || grams == null) {
            return new Outcome.NotKept(typing.problems());
        }
        if (lot != null) {
            refuseMoreThanIsLeft(typing, lot, ingredient, grams, amount);
        }
        Contents contents = ingredient.perGram().times(grams);
        List<BatchSheet.Taken> lots = lot == null ? List.of() : drawn(lot, grams, ingredient);
        Outlay cost = LotPrices.of(ingredient, grams);
        EventBodies.AddedBody body = new EventBodies.AddedBody(
                at,
                typing.text("vessel"),
                lot == null ? what : lot.sheet().name(),
                LiquidSheet.of(contents),
                cost.money(),
                cost.complete(),
                lots,
                SlipSheet.of(slips(lot == null ? what : lot.sheet().name(), ingredient, grams, amount)),
                typing.kept());
        return keep(batch, typing, new Wish(EventBodies.ADDED, body, lots), request);
    }

    /** Returns how far the label of what was added and the measure of it may be off. */
    private static List<Poured.Slip> slips(String name, Resolved ingredient, double grams, Amount amount) {
        double[] perGram = ingredient.perGram().toGrams();
        double[] label = ingredient.perGramAtUpperLabel().toGrams();
        double[] measure = new double[perGram.length];
        for (int i = 0; i < perGram.length; i++) {
            label[i] = grams * (label[i] - perGram[i]);
            measure[i] = grams * perGram[i] * Portion.off(amount);
        }
        return List.of(
                new Poured.Slip("the label of " + name, label), new Poured.Slip("the measure of " + name, measure));
    }

    private static @Nullable Resolved generic(String name) {
        Generic generic = KITCHEN.contains(name) ? Generics.find(name) : null;
        return generic == null ? null : Resolution.of(generic.ingredient()).resolved();
    }

    private @Nullable Resolved resolved(Lot lot) {
        LotOnShelf onShelf = new ShelfLots(ounce()).of(lot);
        Ingredient ingredient = onShelf.ingredient();
        return ingredient == null ? null : Resolution.of(ingredient).resolved();
    }

    private static @Nullable Double grams(Amount amount, Resolved ingredient) {
        if (amount instanceof Mass mass) {
            return mass.grams();
        }
        OptionalDouble density = ingredient.gramsPerMillilitre();
        return density.isPresent() ? Double.valueOf(((Volume) amount).millilitres() * density.getAsDouble()) : null;
    }

    /** A measure may show a little more than the shelf says is left. */
    private static void refuseMoreThanIsLeft(Typing typing, Lot lot, Resolved ingredient, double grams, Amount amount) {
        OptionalDouble wanted = wanted(lot, grams, ingredient);
        double left = Math.max(0.0, lot.left());
        if (Stock.isKnown(lot) && wanted.isPresent() && wanted.getAsDouble() > left * (1.0 + Portion.off(amount))) {
            String unit = lot.sheet().unit();
            typing.object(
                    "amount",
                    "more-than-on-shelf",
                    "Only " + rounded(left, unit) + " of “" + lot.sheet().name() + "” are on the shelf; "
                            + rounded(wanted.getAsDouble(), unit) + " cannot come from there.",
                    "Take less, or weigh on the shelf how much there is.");
        }
    }

    private static String rounded(double amount, String unit) {
        return QuantityWords.fixed(amount, amount < 100.0 ? 1 : 0) + " " + unit;
    }

    /** Returns how much of a lot so many grams are, in its unit; empty where that is not known. */
    private static OptionalDouble wanted(Lot lot, double grams, Resolved ingredient) {
        OptionalDouble density = ingredient.gramsPerMillilitre();
        return switch (lot.sheet().unit()) {
            case Stock.GRAMS -> OptionalDouble.of(grams);
            case Stock.MILLILITRES ->
                density.isPresent() ? OptionalDouble.of(grams / density.getAsDouble()) : OptionalDouble.empty();
            default -> OptionalDouble.empty();
        };
    }

    /** Returns what a lot gives, never more than the shelf knows of. */
    private static List<BatchSheet.Taken> drawn(Lot lot, double grams, Resolved ingredient) {
        OptionalDouble all = wanted(lot, grams, ingredient);
        if (all.isEmpty()) {
            return List.of();
        }
        double wanted = all.getAsDouble();
        double amount = Stock.isKnown(lot) ? Math.min(wanted, Math.max(0.0, lot.left())) : 0.0;
        return amount > 0.0
                ? List.of(new BatchSheet.Taken(
                        lot.id(), lot.sheet().label(), amount, lot.sheet().unit()))
                : List.of();
    }

    /**
     * Logs that it was moved: {@code to} another vessel, {@code batch} it belongs to, {@code amount} (all when empty), and what was lost
     * on the way: {@code sediment}, {@code filter}, {@code sample}.
     */
    public Outcome moved(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        if (!typing.has("to")) {
            typing.object(
                    "to",
                    "vessel-missing",
                    "Into which vessel is not said.",
                    "Write what you call it, such as demijohn.");
        }
        Amount taken = typing.amount("amount", "");
        List<LossBody> losses = losses(typing);
        Instant at = moment(typing, batch);
        EventBodies.MovedBody body = new EventBodies.MovedBody(
                at,
                typing.text("vessel"),
                into(typing, batch),
                typing.text("to"),
                taken == null ? null : AmountBody.of(taken),
                losses,
                typing.kept());
        return keep(batch, typing, new Wish(EventBodies.MOVED, body, List.of()), request);
    }

    /** Returns the id of the batch that it is moved to, which may be named by its number. */
    private String into(Typing typing, Batch from) {
        if (!typing.has("batch")) {
            return from.id();
        }
        List<Batch> batches = store.makes().batches();
        Batch named = Book.named(batches, typing.text("batch")).orElse(null);
        if (named == null) {
            typing.object(
                    "batch",
                    "batch-not-known",
                    "There is no batch “" + typing.text("batch") + "”.",
                    "Name one by its number: "
                            + batches.stream()
                                    .map(batch -> "" + batch.number())
                                    .sorted()
                                    .collect(Collectors.joining(", "))
                            + ".");
        }
        return named == null ? "" : named.id();
    }

    private static List<LossBody> losses(Typing typing) {
        List<LossBody> losses = new ArrayList<>();
        for (Wastage.Cause cause : Wastage.Cause.values()) {
            Amount amount = typing.amount(cause.name().toLowerCase(Locale.ROOT), "");
            if (amount != null) {
                losses.add(LossBody.of(new Wastage(cause, amount)));
            }
        }
        return losses;
    }

    /** Logs a loss: {@code amount} and {@code cause}. */
    public Outcome lost(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        Amount amount = typing.required("amount", "");
        Wastage.Cause cause = typing.choice("cause", Wastage.Cause.values(), Wastage.Cause.OTHER);
        Instant at = moment(typing, batch);
        if (amount == null) {
            return new Outcome.NotKept(typing.problems());
        }
        EventBodies.LostBody body = new EventBodies.LostBody(
                at, typing.text("vessel"), LossBody.of(new Wastage(cause, amount)), typing.kept());
        return keep(batch, typing, new Wish(EventBodies.LOST, body, List.of()), request);
    }

    /** Logs the angels' share: {@code amount} by weight, and {@code strength} afterwards where it was measured. */
    public Outcome evaporated(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        Amount amount = typing.required("amount", "g");
        if (amount instanceof Volume) {
            typing.object(
                    "amount",
                    "weight-wanted",
                    "What evaporated cannot be measured by volume.",
                    "Weigh the vessel before and after, and give the difference, such as 240 g.");
        }
        Span strength = typing.quantity("strength", "%", QuantityText::strengthSpan, "“41.2 %”");
        Instant at = moment(typing, batch);
        if (!(amount instanceof Mass mass)) {
            return new Outcome.NotKept(typing.problems());
        }
        EventBodies.EvaporatedBody body = new EventBodies.EvaporatedBody(
                at,
                typing.text("vessel"),
                mass.grams(),
                strength == null ? null : Double.valueOf(0.5 * (strength.low() + strength.high())),
                typing.kept());
        return keep(batch, typing, new Wish(EventBodies.EVAPORATED, body, List.of()), request);
    }

    /**
     * Logs that bottles were filled: {@code fills} such as "3 x 500 ml; 1 x 420 ml", what was lost as {@code filter}, and the empty
     * bottles, labels and stoppers that the shelf gave, {@code lots} such as "id:4; id:4", by id or by name.
     */
    public Outcome bottled(Batch batch, Map<String, String> typed, String request) {
        Outcome outcome = bottledFrom(batch, typed, request);
        for (int tries = 1; tries < NUMBERING && isNumberTaken(outcome); tries++) {
            outcome = bottledFrom(batch, typed, request); // somebody else has filled bottles meanwhile
        }
        return outcome;
    }

    private static boolean isNumberTaken(Outcome outcome) {
        return outcome instanceof Outcome.NotKept not
                && not.problems().stream().anyMatch(problem -> problem.rule().equals("bottle-numbers-taken"));
    }

    private Outcome bottledFrom(Batch batch, Map<String, String> typed, String request) {
        Typing typing = typing(typed);
        List<Event.Fill> fills = new ArrayList<>();
        for (String each : typing.text("fills").split(";", -1)) {
            Bottles bottles = typing.parsed("fills", each, QuantityText::bottles, "“3 x 500 ml”");
            if (bottles != null) {
                fills.add(new Event.Fill(bottles.count(), bottles.each().millilitres()));
            }
        }
        List<LossBody> losses = losses(typing);
        if (typing.text(LabelBottles.CODE).length() > LabelBottles.LONGEST_CODE) {
            typing.object(
                    LabelBottles.CODE,
                    "code-too-long",
                    "The code of a lot has more than " + LabelBottles.LONGEST_CODE + " characters.",
                    "Write a shorter one, or leave it empty for batch and day.");
        }
        Packaged packaged = Packaged.of(fills, typing, store);
        Instant at = moment(typing, batch);
        int first = Book.open(store).cellar().nextBottle(batch.id());
        EventBodies.BottledBody body = new EventBodies.BottledBody(
                at,
                typing.text("vessel"),
                packaged.fills().stream().map(EventBodies.FillBody::of).toList(),
                first,
                losses,
                packaged.lots(),
                typing.kept());
        return keep(batch, typing, new Wish(EventBodies.BOTTLED, body, packaged.lots()), request);
    }

    /** Takes an entry back by one of its own; what it took from the shelf goes back there. */
    public Outcome undone(Batch batch, long entry, String request) {
        Book book = Book.open(store);
        HistoryEntry of = book.entry(entry);
        String vessel = vessel(of);
        EventBodies.UndoneBody body = new EventBodies.UndoneBody(clock.instant(), vessel);
        List<BatchSheet.Taken> back = lotsBack(book, of, -1.0);
        return write(
                new Batches.Writing(
                        of.subject().substring("batch:".length()),
                        EventBodies.UNDONE,
                        LogBodies.write(body),
                        entry,
                        moves(back, title(batch))),
                request);
    }

    private static String vessel(HistoryEntry entry) {
        Event event = EventBodies.event(entry);
        return event == null ? "" : event.places().get(0).vessel();
    }

    /** An undo of an undo takes it from the shelf again. */
    private static List<BatchSheet.Taken> lotsBack(Book book, HistoryEntry entry, double sign) {
        Long undoes = entry.undoes();
        if (undoes != null) {
            return lotsBack(book, book.entry(undoes), -sign);
        }
        return EventBodies.lots(entry).stream()
                .map(taken -> new BatchSheet.Taken(taken.lot(), taken.label(), sign * taken.amount(), taken.unit()))
                .toList();
    }

    private static String title(Batch batch) {
        return "batch " + batch.number();
    }

    private static List<LotMove> moves(List<BatchSheet.Taken> taken, String why) {
        return taken.stream()
                .map(each -> new LotMove(each.lot(), -each.amount(), why))
                .toList();
    }

    private Outcome keep(Batch batch, Typing typing, Wish wish, String request) {
        if (!typing.problems().isEmpty()) {
            return new Outcome.NotKept(typing.problems());
        }
        return write(
                new Batches.Writing(
                        batch.id(), wish.kind(), LogBodies.write(wish.body()), null, moves(wish.lots(), title(batch))),
                request);
    }

    private Outcome write(Batches.Writing writing, String request) {
        Map<String, Book.Left> begun = Book.begun(store.makes().batches(), store);
        try {
            return new Outcome.Kept(store.batches()
                    .append(writing, (batches, log) -> judge(Book.of(batches, log, begun), writing), request));
        } catch (Objected objected) {
            return new Outcome.NotKept(objected.findings);
        }
    }

    private void judge(Book book, Batches.Writing writing) {
        HistoryEntry next = new HistoryEntry(
                Long.MAX_VALUE,
                clock.instant(),
                "batch:" + writing.batch(),
                writing.kind(),
                writing.body(),
                writing.undoes());
        Event event = EventBodies.event(next);
        if (event == null || (event instanceof Event.Undone undo && !book.isOfVessels(undo.entry()))) {
            return;
        }
        Entry entry = new Entry(next.id(), EventBodies.at(next), event);
        List<Refused> objections = book.cellar().objections(entry);
        if (!objections.isEmpty()) {
            throw new Objected(objections.stream()
                    .map(refused -> refused.entry().id() == entry.id() ? refused.finding() : resting(refused, clock))
                    .toList());
        }
    }

    private static Finding resting(Refused refused, Clock clock) {
        return Finding.of(
                "later-entry-rests-on-it",
                Severity.STOP,
                "",
                "cannot be",
                "What was entered for "
                        + refused.entry().at().atZone(clock.getZone()).toLocalDate()
                        + " would be impossible then: " + refused.finding().message(),
                "Take that entry back first.");
    }
}

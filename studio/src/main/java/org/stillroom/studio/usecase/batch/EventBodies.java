package org.stillroom.studio.usecase.batch;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.BottleNumbers;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.batch.Place;
import org.stillroom.core.batch.Portion;
import org.stillroom.core.batch.Slips;
import org.stillroom.core.batch.Wastage;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.safety.Assay;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.LiquidSheet;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.make.SlipSheet;
import org.stillroom.studio.usecase.shelf.Stock;

/** The JSON in which entries of batches are kept, by the kind of the entry; beside each value stands what was typed. */
final class EventBodies {
    static final String MEASURED = "batch.measured";
    static final String ADDED = "batch.added";
    static final String MOVED = "batch.moved";
    static final String LOST = "batch.lost";
    static final String EVAPORATED = "batch.evaporated";
    static final String BOTTLED = "batch.bottled";
    static final String PH = "batch.ph";
    static final String ANALYSED = "batch.analysed";
    static final String PASTEURISED = "batch.pasteurised";
    static final String UNDONE = "batch.undone";

    private EventBodies() {}

    /** A weight or a volume at 20 °C. */
    record AmountBody(double amount, String unit) {
        static AmountBody of(Amount amount) {
            return amount instanceof Mass mass
                    ? new AmountBody(mass.grams(), Stock.GRAMS)
                    : new AmountBody(((Volume) amount).millilitres(), Stock.MILLILITRES);
        }

        Amount value() {
            return unit.equals(Stock.GRAMS) ? new Mass(amount) : new Volume(amount);
        }
    }

    record LossBody(Wastage.Cause cause, AmountBody amount) {
        static LossBody of(Wastage loss) {
            return new LossBody(loss.cause(), AmountBody.of(loss.amount()));
        }

        Wastage value() {
            return new Wastage(cause, amount.value());
        }
    }

    record MeasuredBody(
            Instant at,
            String vessel,
            Map<Asked, Double> figures,
            Map<Asked, Double> doubt,
            Map<String, String> typed) {}

    record AddedBody(
            Instant at,
            String vessel,
            String name,
            LiquidSheet liquid,
            Map<String, Double> cost,
            boolean costKnown,
            List<BatchSheet.Taken> lots,
            @Nullable List<SlipSheet> slips,
            Map<String, String> typed) {}

    record MovedBody(
            Instant at,
            String vessel,
            String toBatch,
            String toVessel,
            @Nullable AmountBody taken,
            List<LossBody> losses,
            Map<String, String> typed) {}

    record LostBody(Instant at, String vessel, LossBody loss, Map<String, String> typed) {}

    record EvaporatedBody(
            Instant at,
            String vessel,
            double grams,
            @Nullable Double strength,
            Map<String, String> typed) {}

    /** Money, and whether it is all that was spent. */
    record MoneyBody(Map<String, Double> money, boolean known) {}

    record FillBody(int count, double millilitres, @Nullable MoneyBody bottle) {
        static FillBody of(Event.Fill fill) {
            Outlay bottle = fill.bottle();
            return new FillBody(
                    fill.count(),
                    fill.millilitres(),
                    bottle == null ? null : new MoneyBody(bottle.money(), bottle.complete()));
        }

        Event.Fill value() {
            return new Event.Fill(
                    count, millilitres, bottle == null ? null : new Outlay(bottle.money(), bottle.known()));
        }
    }

    record BottledBody(
            Instant at,
            String vessel,
            List<FillBody> fills,
            int first,
            List<LossBody> losses,
            List<BatchSheet.Taken> lots,
            Map<String, String> typed) {}

    /** Numbers of bottles; of all that are filled, none are named. */
    record NumbersBody(int first, int last) {
        static @Nullable BottleNumbers value(@Nullable NumbersBody of) {
            return of == null ? null : new BottleNumbers(of.first(), of.last());
        }
    }

    record PhBody(
            Instant at,
            String vessel,
            Event.Of of,
            @Nullable NumbersBody bottles,
            double ph,
            Map<String, String> typed) {}

    /** What was found of one substance, in mg/kg or mg/L. */
    record FoundBody(String name, double milligrams, boolean perLitre, boolean bounded) {
        static FoundBody of(Assay.Part part) {
            return part.share() instanceof MassConcentration perLitre
                    ? new FoundBody(part.name(), 1e3 * perLitre.gramsPerLitre(), true, part.bounded())
                    : new FoundBody(part.name(), 1e6 * ((MassFraction) part.share()).fraction(), false, part.bounded());
        }

        Assay.Part value() {
            Share share = perLitre ? new MassConcentration(milligrams / 1e3) : new MassFraction(milligrams / 1e6);
            return new Assay.Part(name, share, bounded);
        }
    }

    record AnalysedBody(
            Instant at,
            String vessel,
            Event.Of of,
            @Nullable NumbersBody bottles,
            List<FoundBody> found,
            Map<String, String> typed) {}

    record PasteurisedBody(Instant at, @Nullable NumbersBody bottles, Map<String, String> typed) {}

    record UndoneBody(Instant at, String vessel) {}

    /** What every entry says. */
    private record Anyone(
            Instant at,
            @Nullable Map<String, String> typed,
            @Nullable List<BatchSheet.Taken> lots) {}

    /** Returns when it happened. */
    static Instant at(HistoryEntry entry) {
        return LogBodies.read(entry.body(), Anyone.class).at();
    }

    /** Returns what was typed, by field. */
    static Map<String, String> typed(HistoryEntry entry) {
        Map<String, String> typed = LogBodies.read(entry.body(), Anyone.class).typed();
        return typed == null ? Map.of() : typed;
    }

    /** Returns what was taken from the shelf for it. */
    static List<BatchSheet.Taken> lots(HistoryEntry entry) {
        List<BatchSheet.Taken> lots = LogBodies.read(entry.body(), Anyone.class).lots();
        return lots == null ? List.of() : lots;
    }

    /** Returns what happened to the vessels, or null when the entry is about none. */
    static @Nullable Event event(HistoryEntry entry) {
        String batch = entry.subject().substring("batch:".length());
        String body = entry.body();
        return switch (entry.kind()) {
            case MEASURED -> {
                MeasuredBody said = LogBodies.read(body, MeasuredBody.class);
                yield new Event.Measured(new Place(batch, said.vessel()), said.figures(), said.doubt());
            }
            case ADDED -> {
                AddedBody said = LogBodies.read(body, AddedBody.class);
                Outlay cost = new Outlay(said.cost(), said.costKnown());
                yield new Event.Added(
                        new Place(batch, said.vessel()),
                        said.name(),
                        said.liquid().contents(),
                        cost,
                        said.slips() == null
                                ? Slips.UNKNOWN
                                : Slips.of("entry " + entry.id(), SlipSheet.slips(said.slips())));
            }
            case MOVED -> moved(batch, LogBodies.read(body, MovedBody.class));
            case LOST -> {
                LostBody said = LogBodies.read(body, LostBody.class);
                yield new Event.Wasted(
                        new Place(batch, said.vessel()), said.loss().value());
            }
            case EVAPORATED -> {
                EvaporatedBody said = LogBodies.read(body, EvaporatedBody.class);
                yield new Event.Evaporated(new Place(batch, said.vessel()), new Mass(said.grams()), said.strength());
            }
            case BOTTLED -> {
                BottledBody said = LogBodies.read(body, BottledBody.class);
                List<Event.Fill> fills =
                        said.fills().stream().map(FillBody::value).toList();
                yield new Event.Bottled(new Place(batch, said.vessel()), fills, said.first(), values(said.losses()));
            }
            case PH -> {
                PhBody said = LogBodies.read(body, PhBody.class);
                yield new Event.PhMeasured(
                        new Place(batch, said.vessel()), said.of(), NumbersBody.value(said.bottles()), said.ph());
            }
            case ANALYSED -> {
                AnalysedBody said = LogBodies.read(body, AnalysedBody.class);
                yield new Event.Analysed(
                        new Place(batch, said.vessel()),
                        said.of(),
                        NumbersBody.value(said.bottles()),
                        new Assay(said.found().stream().map(FoundBody::value).toList()));
            }
            case PASTEURISED -> {
                PasteurisedBody said = LogBodies.read(body, PasteurisedBody.class);
                yield new Event.Pasteurised(new Place(batch, ""), NumbersBody.value(said.bottles()));
            }
            case UNDONE -> {
                UndoneBody said = LogBodies.read(body, UndoneBody.class);
                Long undoes = entry.undoes();
                yield undoes == null ? null : new Event.Undone(new Place(batch, said.vessel()), undoes);
            }
            default -> null;
        };
    }

    private static Event moved(String batch, MovedBody said) {
        AmountBody taken = said.taken();
        return new Event.Moved(
                new Place(batch, said.vessel()),
                new Place(said.toBatch(), said.toVessel()),
                taken == null ? new Portion.Whole() : new Portion.Some(taken.value()),
                values(said.losses()));
    }

    private static List<Wastage> values(List<LossBody> losses) {
        return losses.stream().map(LossBody::value).toList();
    }
}

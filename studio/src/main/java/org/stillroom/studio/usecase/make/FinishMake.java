package org.stillroom.studio.usecase.make;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotMove;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.usecase.shelf.LotPrices;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.Stock;

/** Makes a batch of a make: what went in, by lot; the shelf is drawn down in the same moment, and what stages leave put there. */
public final class FinishMake {
    private final Store store;

    public FinishMake(Store store) {
        this.store = store;
    }

    /**
     * Finishes a make; one that is finished already answers with its batch.
     *
     * @throws IllegalStateException when something is still to be poured
     */
    public Batch answer(MakeState state, String request) {
        Batch there = store.makes().batchOf(state.make().id()).orElse(null);
        if (there != null) {
            return there;
        }
        if (!state.isPoured()) {
            throw new IllegalStateException("Something is still to be poured. Do those steps, or leave them out.");
        }
        Drawing drawing = new Drawing(store, state.start());
        List<Lots.NewLot> left = StageLeft.of(state, LocalDate.now(ZoneId.systemDefault()));
        BatchSheet sheet = sheet(state, drawing, left);
        return store.makes()
                .finish(state.make().id(), LogBodies.write(sheet), drawing.moves(sheet.title()), left, request);
    }

    /** Returns what a finished make would take from the shelf and put there, to be looked at before. */
    public BatchSheet preview(MakeState state) {
        List<Lots.NewLot> left =
                state.isPoured() ? StageLeft.of(state, LocalDate.now(ZoneId.systemDefault())) : List.of();
        return sheet(state, new Drawing(store, state.start()), left);
    }

    /** Returns what is kept of a batch. */
    public static BatchSheet sheet(Batch batch) {
        return LogBodies.read(batch.body(), BatchSheet.class);
    }

    private static BatchSheet sheet(MakeState state, Drawing drawing, List<Lots.NewLot> left) {
        List<BatchSheet.LineSheet> lines = new ArrayList<>();
        for (MakePart part : state.parts()) {
            for (MakeStep step : part.steps()) {
                MakeStep.Pour pour = step.pour();
                if (pour != null && !step.entries().isEmpty()) {
                    lines.add(drawing.line(part, part.planned().lines().get(pour.line()), pour));
                }
            }
        }
        Contents liquid = liquid(state);
        Essentials result = liquid.total() > 0.0 ? Essentials.of(liquid.toGrams()) : new Essentials(0, 0, 0, 0, 0);
        List<String> notes = state.log().stream()
                .filter(entry -> entry.counts() && entry.kind().equals(Logged.NOTE))
                .map(entry -> entry.said().typed())
                .map(String::valueOf)
                .toList();
        return new BatchSheet(
                state.revision().title(),
                state.revision().number(),
                result.millilitres(),
                result.strength(),
                result.sugar(),
                result.density(),
                lines,
                notes,
                LiquidSheet.of(liquid),
                drawing.cost.money(),
                drawing.cost.complete(),
                left.stream()
                        .map(lot -> new BatchSheet.LeftSheet(
                                lot.sheet().name(), lot.left(), lot.sheet().full()))
                        .toList(),
                kept(slips(state)));
    }

    private static @Nullable List<SlipSheet> kept(@Nullable List<Poured.Slip> slips) {
        return slips == null ? null : SlipSheet.of(slips);
    }

    /** Returns how far labels and measures of what was poured may have been off; null where that cannot be worked out any more. */
    public static @Nullable List<Poured.Slip> slips(MakeState state) {
        return state.parts().isEmpty() || !state.problems().isEmpty()
                ? null
                : GaugeVessel.poured(state.whole().measured()).slips();
    }

    /** Returns what is in the vessel when all that was poured is in it. */
    private static Contents liquid(MakeState state) {
        return state.parts().isEmpty() ? Contents.NONE : PouredPlan.of(state).liquid();
    }

    /** Returns what a make left when it became a batch. */
    public static Contents liquid(Batch batch, ShowMake show) {
        LiquidSheet kept = sheet(batch).liquid();
        return kept == null ? liquid(show.answer(batch.make())) : kept.contents();
    }

    /** Takes amounts from the lots that were chosen, one lot after the other, never more than the shelf knows of. */
    private static final class Drawing {
        private final Store store;
        private final MakeStart start;
        private final Map<String, Double> left = new HashMap<>();
        private final Map<String, Double> taken = new HashMap<>();
        private final LotPrices prices;
        private Outlay cost = Outlay.NONE;

        Drawing(Store store, MakeStart start) {
            this.store = store;
            this.start = start;
            this.prices = new LotPrices(MakersOunce.of(store.settings()));
        }

        BatchSheet.LineSheet line(MakePart part, PlannedLine planned, MakeStep.Pour pour) {
            double wanting = pour.grams();
            List<BatchSheet.Taken> from = new ArrayList<>();
            List<String> lots = start.lots().getOrDefault(planned.name(), List.of());
            for (String id : lots) {
                Lot lot = store.lots().lot(id).orElse(null);
                Double perGram = lot == null ? null : unitsPerGram(lot, planned.ingredient());
                if (lot != null && perGram != null && wanting > 0.0) {
                    double amount = draw(lot, wanting * perGram);
                    wanting -= amount / perGram;
                    cost = cost.plus(prices.of(lot, amount));
                    from.add(new BatchSheet.Taken(
                            id, lot.sheet().label(), amount, lot.sheet().unit()));
                }
            }
            double missing = lots.isEmpty() || wanting < 1e-6 ? 0.0 : wanting;
            if (wanting > 1e-6 && planned.ingredient().ingredient().from() == null) {
                cost = cost.plus(LotPrices.of(planned.ingredient(), wanting));
            }
            return new BatchSheet.LineSheet(
                    part.title(), planned.name(), pour.grams(), planned.grams(), from, missing, !lots.isEmpty());
        }

        /** Returns how much of it a lot gives; one of which nobody knows how much there is gives all and is not drawn down. */
        private double draw(Lot lot, double wanted) {
            if (!Stock.isKnown(lot)) {
                return wanted;
            }
            double there = left.getOrDefault(lot.id(), Math.max(0.0, lot.left()));
            double amount = Math.min(wanted, there);
            left.put(lot.id(), there - amount);
            taken.merge(lot.id(), amount, Double::sum);
            return amount;
        }

        /** Returns how many units of a lot a gram is; null where pieces are counted or the density is not known. */
        private static @Nullable Double unitsPerGram(Lot lot, Resolved ingredient) {
            OptionalDouble density = ingredient.gramsPerMillilitre();
            return switch (lot.sheet().unit()) {
                case Stock.GRAMS -> 1.0;
                case Stock.MILLILITRES -> density.isPresent() ? 1.0 / density.getAsDouble() : null;
                default -> null;
            };
        }

        List<LotMove> moves(String why) {
            List<LotMove> moves = new ArrayList<>();
            taken.forEach((lot, amount) -> {
                if (amount > 0.0) {
                    moves.add(new LotMove(lot, -amount, why));
                }
            });
            return moves;
        }
    }
}

package org.stillroom.planner.marks;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.LineAmount;

/**
 * An amount that the maker wrote, or all of what there is: it is taken as it stands.
 *
 * @param amount what is taken
 * @param words as typed
 * @param manner as typed, or all
 */
record TypedAmount(Amount amount, String words, Reading.Manner manner) {
    private static final double SAME = 1e-6;

    static TypedAmount of(PlannedLine line) {
        if (line.line().amount() instanceof LineAmount.Fixed fixed) {
            return new TypedAmount(fixed.amount().value(), fixed.amount().text(), Reading.Manner.AS_TYPED);
        }
        Typed<Amount> atHand = line.ingredient().ingredient().atHand();
        return atHand == null
                ? all(new Mass(line.grams()), QuantityWords.metric(new Mass(line.grams())))
                : all(atHand.value(), atHand.text());
    }

    private static TypedAmount all(Amount amount, String words) {
        return new TypedAmount(amount, words, Reading.Manner.ALL);
    }

    /** Returns the instrument that shows just this amount, the most exact where several do, or null. */
    @Nullable
    Instrument shownBy(Bench bench, Portion portion) {
        String with = portion.line().line().with();
        Instrument best = null;
        for (Instrument instrument : bench.instruments()) {
            boolean meant = with == null || instrument.name().equals(with);
            if (meant && shows(instrument, portion) && (best == null || isFiner(instrument, best, portion))) {
                best = instrument;
            }
        }
        return best == null && amount instanceof Drops && with == null ? new Dropper("dropper") : best;
    }

    private static boolean isFiner(Instrument instrument, Instrument than, Portion portion) {
        return instrument.nearest(portion).toleranceGrams()
                < than.nearest(portion).toleranceGrams();
    }

    private boolean shows(Instrument instrument, Portion portion) {
        if (!instrument.canTake(portion)) {
            return false;
        }
        Take nearest = instrument.nearest(portion);
        return Bench.isHandy(nearest.reading())
                && nearest.reading().amount().getClass() == amount.getClass()
                && Math.abs(nearest.grams() - portion.grams()) <= SAME * portion.grams();
    }

    /** Returns whether it is drops and a part of one, as a recipe in another size has them: whole ones are counted. */
    boolean isSplitDrops() {
        return manner == Reading.Manner.AS_TYPED
                && amount instanceof Drops drops
                && Math.abs(drops.count() - Math.rint(drops.count())) > SAME
                && Math.rint(drops.count()) > 0.0;
    }

    /** Returns the reading in the maker's own words. */
    Reading reading(Reading nearest) {
        return new Reading(
                amount, nearest.value(), nearest.unit(), nearest.instrument(), nearest.fillings(), words, manner);
    }

    /** Returns the reading where the instrument has no mark for it. */
    Reading offTheMarks(Instrument instrument) {
        return Reading.offTheMarks(amount, instrument.name(), words, manner);
    }
}

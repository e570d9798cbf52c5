package org.stillroom.studio.usecase.essence;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.planner.drops.Essence;
import org.stillroom.planner.drops.PreDilution;

/**
 * How a single batch is dosed with dilutions, and what they are made up with: the carrier, or strong spirit where oils would not stay
 * dissolved in it.
 *
 * @param dilution of which oils, and how they are counted
 * @param spirit a litre of what they are made up with
 * @param isCarrier whether that is the carrier of the essence
 * @param carrierLoad the oil of the worst of them over what stays dissolved of it in the carrier
 * @param load the same in what they are made up with
 */
record Diluted(PreDilution dilution, Contents spirit, boolean isCarrier, double carrierLoad, double load) {
    /** The strongest spirit that is sold. Common practice, no source. */
    private static final Contents STRONG = MadeUp.spirit(AlcoholByVolume.at20(96.0));

    /** Returns how it is dosed so, or null where whole drops do without or no dilution comes nearer. */
    static @Nullable Diluted of(Essence asked, Contents carrier) {
        PreDilution inCarrier = PreDilution.of(asked, OfficialDropper.gramsPerDrop(carrier));
        if (inCarrier == null) {
            return null;
        }
        double load = load(asked, inCarrier, carrier);
        PreDilution inStrong = load > 1.0 ? PreDilution.of(asked, OfficialDropper.gramsPerDrop(STRONG)) : null;
        return inStrong == null
                ? new Diluted(inCarrier, carrier, true, load, load)
                : new Diluted(inStrong, STRONG, false, load, load(asked, inStrong, STRONG));
    }

    private static double load(Essence asked, PreDilution dilution, Contents spirit) {
        return dilution.dilutions().stream()
                .map(each -> contents(asked, each, spirit))
                .mapToDouble(each -> Oils.of(each).load(Medium.of(each, Temperature.TWENTY_CELSIUS)))
                .max()
                .orElse(0.0);
    }

    private static Contents contents(Essence asked, PreDilution.Dilution each, Contents spirit) {
        double grams = each.drops() * asked.oils().get(each.oil()).gramsPerDrop();
        return FilledEssence.oil(asked.oils().get(each.oil()).name(), grams)
                .plus(spirit.times(each.spirit() / spirit.total()));
    }

    /** Returns what a drop of a dilution is taken to weigh, g. */
    double gramsPerDrop() {
        return OfficialDropper.gramsPerDrop(spirit);
    }

    PlanEssence.Dilutions told() {
        double strength = Essentials.of(spirit.toGrams()).strength();
        return new PlanEssence.Dilutions(dilution, isCarrier, strength, spirit.total() / 1000.0);
    }
}

package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Finishing;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.usecase.Macerate.Added;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.Macerate.End;
import org.stillroom.studio.usecase.Macerate.Liqueur;
import org.stillroom.studio.usecase.Macerate.UpTo;

/** What is added to a macerate: the same solvent up to a volume, or what makes a liqueur of it. */
final class MacerateEnd {
    private MacerateEnd() {}

    static @Nullable Added added(
            Asked asked, Contents drained, Estimate comes, MacerateDoubt doubt, List<Finding> findings) {
        End end = asked.end();
        if (end instanceof UpTo upTo) {
            return washed(asked, drained, comes, upTo.volume(), doubt.strength(), findings);
        }
        return end instanceof Liqueur liqueur ? finished(drained, comes, doubt.sugar(), liqueur) : null;
    }

    private static Added washed(
            Asked asked, Contents drained, Estimate comes, double volume, double doubt, List<Finding> findings) {
        Estimate none = new Estimate(0.0, 0.0);
        if (comes.value() >= volume) {
            findings.add(Finding.of(
                    "more-comes",
                    Severity.NOTE,
                    "make-up-to",
                    "",
                    QuantityWords.fixed(comes.value(), 0) + " mL come already, where so much plant is to be made up to "
                            + QuantityWords.fixed(volume, 0) + " mL.",
                    "Add nothing, unless less comes: the marc may hold more than is counted."));
            double strength = Essentials.of(drained.toGrams()).strength();
            return new Added(none, none, none, none, comes, new Estimate(strength, doubt));
        }
        Contents litre = MadeUp.spirit(asked.strength());
        double low = 0.0;
        double high = volume / 1000.0;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            boolean over =
                    Essentials.of(drained.plus(litre.times(middle)).toGrams()).millilitres() > volume;
            low = over ? low : middle;
            high = over ? middle : high;
        }
        double strength =
                Essentials.of(drained.plus(litre.times(low)).toGrams()).strength();
        return new Added(
                new Estimate(1000.0 * low, comes.doubt()),
                none,
                none,
                none,
                new Estimate(volume, 0.0),
                new Estimate(strength, doubt));
    }

    private static Added finished(Contents drained, Estimate comes, double sugarDoubt, Liqueur liqueur) {
        Finishing finishing = Impossible.unless(
                "make-up-to", "", () -> Finishing.of(drained, liqueur.wanted(), MadeUp.spirit(liqueur.spirit())));
        double ethanol = Essentials.of(drained.toGrams()).strength()
                / Essentials.of(MadeUp.spirit(liqueur.spirit()).toGrams()).strength();
        double sugarInIt = Essentials.of(drained.toGrams()).sugar();
        double ofSugar = liqueur.wanted().sugar().isEmpty()
                ? 0.0
                : MacerateDoubt.length(sugarInIt * comes.doubt(), sugarDoubt * comes.value()) / 1000.0;
        return new Added(
                new Estimate(0.0, 0.0),
                new Estimate(finishing.spirit(), ethanol * comes.doubt()),
                new Estimate(finishing.sugar(), ofSugar),
                new Estimate(finishing.water(), (1.0 - ethanol) * comes.doubt()),
                new Estimate(liqueur.wanted().volume(), 0.0),
                new Estimate(
                        finishing.strength(),
                        ModelDoubt.of(
                                        finishing.made().toGrams(),
                                        liqueur.wanted().volume())
                                .strengthHalfWidth()));
    }
}

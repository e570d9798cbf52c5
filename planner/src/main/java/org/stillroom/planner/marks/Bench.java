package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** The instruments at hand, and which of them a line is measured with. */
final class Bench {
    /** More fillings than this are miscounted. Common practice, no source. */
    private static final int MOST_FILLINGS = 6;

    /** Once a measure errs by no more than this part of the amount, fewer fillings count for more. Common practice, no source. */
    private static final double FINE_ENOUGH = 0.005;

    /** More drops than this are miscounted. Common practice, no source. */
    private static final int MOST_DROPS = 60;

    private final List<Instrument> instruments = new ArrayList<>();
    private final Recipe recipe;
    private final List<Finding> findings;

    /** @param findings takes what the maker should know */
    Bench(Recipe recipe, List<Finding> findings) {
        this.recipe = recipe;
        this.findings = findings;
        OunceMeaning ounce =
                recipe.ounce() == null ? OunceMeaning.US_FLUID : recipe.ounce().value();
        InstrumentReader reader = new InstrumentReader(ounce, findings);
        for (Measure measure : recipe.measures()) {
            instruments.add(reader.read(measure));
        }
        if (instruments.stream().allMatch(Dropper.class::isInstance)) {
            String none = instruments.isEmpty() ? "No measures are named" : "No measure but a dropper is named";
            instruments.add(InstrumentReader.assumedScale());
            findings.add(new Finding(
                    "scale-assumed",
                    Severity.NOTE,
                    "measures",
                    "",
                    "assumed",
                    none + "; assumed: a scale that shows 0.1 g.",
                    "",
                    "Write what you measure with under measures.",
                    null,
                    Source.TRADE));
        }
    }

    List<Instrument> instruments() {
        return instruments;
    }

    /** Returns what a line is measured with: the measure that it names, else the one with the least error for its amount. */
    Instrument forLine(Portion portion, String where) {
        String with = portion.line().line().with();
        if (with != null) {
            Instrument named = named(with);
            if (named != null && named.canTake(portion)) {
                return named;
            }
            findings.add(cannotTake(portion, where, with));
        }
        Instrument best = portion.line().line().isInDrops() ? dropper(portion) : best(portion);
        if (best != null) {
            return best;
        }
        findings.add(Finding.of(
                "no-measure-fits",
                Severity.CAUTION,
                where,
                "no measure fits",
                "None of your measures can take " + portion.line().name()
                        + "; it is shown as on a scale that shows 0.1 g.",
                "Weigh it, or write what a measured volume of it weighs as its density."));
        return InstrumentReader.assumedScale();
    }

    private static Finding cannotTake(Portion portion, String where, String with) {
        return Finding.of(
                "measure-cannot-take",
                Severity.CAUTION,
                where,
                "cannot be measured so",
                portion.line().name() + " is to be measured with " + with
                        + ", which cannot take it: there is no such measure, or how much a millilitre weighs is not known.",
                "Name another measure, or write what a measured volume of it weighs as its density.");
    }

    @Nullable
    Instrument named(String name) {
        for (Instrument instrument : instruments) {
            if (instrument.name().equals(name)) {
                return instrument;
            }
        }
        return null;
    }

    /** Who doses in drops has a dropper, listed or not. */
    private Instrument dropper(Portion portion) {
        Measure dropper = recipe.dropper(portion.line().line());
        return new Dropper(dropper == null ? "dropper" : dropper.name());
    }

    private @Nullable Instrument best(Portion portion) {
        Instrument best = null;
        for (Instrument instrument : able(portion)) {
            if (best == null || isBetter(instrument.nearest(portion), best.nearest(portion), portion)) {
                best = instrument;
            }
        }
        return best;
    }

    private List<Instrument> able(Portion portion) {
        List<Instrument> able = instruments.stream()
                .filter(instrument -> instrument.canTake(portion))
                .filter(instrument -> !(instrument instanceof Dropper) || instrument.equals(dropper(portion)))
                .toList();
        List<Instrument> scales = able.stream().filter(Bench::isScale).toList();
        return portion.isSolid() && !scales.isEmpty() ? scales : able;
    }

    static boolean isScale(Instrument instrument) {
        return instrument instanceof Graduated graduated && graduated.weighs();
    }

    private static boolean isBetter(Take take, Take than, Portion portion) {
        boolean handy = isHandy(take.reading());
        boolean otherHandy = isHandy(than.reading());
        if (handy != otherHandy) {
            return handy;
        }
        if (!handy && isInDrops(take) != isInDrops(than)) {
            return isInDrops(than);
        }
        int fewer = Integer.compare(take.reading().timesFilled(), than.reading().timesFilled());
        double error = error(take, portion);
        double otherError = error(than, portion);
        double fineEnough = FINE_ENOUGH * portion.grams();
        boolean bothFineEnough = error <= fineEnough && otherError <= fineEnough;
        if (fewer != 0 && (!handy || bothFineEnough)) {
            return fewer < 0;
        }
        return error < otherError;
    }

    private static boolean isInDrops(Take take) {
        return take.reading().amount() instanceof Drops;
    }

    /** Returns what to know where a line takes more fillings or drops than anybody counts, or null. */
    static @Nullable Finding tooLarge(Reading reading, String where, String name) {
        if (isHandy(reading)) {
            return null;
        }
        boolean drops = reading.amount() instanceof Drops;
        String many = drops
                ? QuantityWords.metric(reading.amount()) + " of " + name
                : name + " fills " + reading.instrument() + " " + reading.timesFilled() + " times";
        return new Finding(
                "measure-too-small",
                drops ? Severity.NOTE : Severity.CAUTION,
                where,
                "",
                "easily miscounted",
                many + (drops ? " are more than anybody counts." : ": that is easily miscounted."),
                "",
                drops
                        ? "Weigh it, or take a measure that holds it at once."
                        : "Take a scale or a vessel that holds more, or make less; else write down each filling as it goes in.",
                (drops ? MOST_DROPS + " drops" : MOST_FILLINGS + " fillings"),
                Source.TRADE);
    }

    static boolean isHandy(Reading reading) {
        return reading.amount() instanceof Drops drops
                ? drops.count() <= MOST_DROPS
                : reading.timesFilled() <= MOST_FILLINGS;
    }

    private static double error(Take take, Portion portion) {
        double density = take.reading().isByVolume()
                ? portion.line().ingredient().relativeDensityDoubt() * portion.grams()
                : 0.0;
        return take.error() + density;
    }
}

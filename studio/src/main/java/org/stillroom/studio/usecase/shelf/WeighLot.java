package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.shelffile.LotKeys;

/** Tells how much is left in a jar from what it weighs with what is in it, and what it weighs empty. */
public final class WeighLot {
    private WeighLot() {}

    /**
     * What the scale told.
     *
     * @param grams what is in it
     * @param millilitres the same at 20 °C where the lot is kept by volume, else null
     * @param left what is left, in the unit of the lot
     */
    public record Weighed(double grams, @Nullable Estimate millilitres, Stock left) {}

    /**
     * Returns what is left.
     *
     * @param tare weight of the empty vessel as typed
     * @param reading weight of the vessel with what is in it as typed
     */
    public static SheetReading<Weighed> answer(LotOnShelf lot, String tare, String reading, OunceMeaning ounce) {
        SheetReader reader = new SheetReader(ounce);
        List<SheetProblem> problems = new ArrayList<>();
        double empty = grams(reader, LotKeys.TARE, tare, problems);
        double together = grams(reader, "reading", reading, problems);
        if (problems.isEmpty() && together < empty) {
            problems.add(problem(
                    "reading",
                    "jar-lighter-than-empty",
                    "The jar with what is in it weighs less than the empty jar: " + new Stock(together, "g").text()
                            + " against " + new Stock(empty, "g").text() + ".",
                    "Check both weights; a lid weighed once and not the other time is the usual reason."));
        }
        @Nullable Estimate density = density(lot);
        boolean byVolume = lot.lot().sheet().unit().equals(Stock.MILLILITRES);
        if (lot.lot().sheet().unit().equals(Stock.PIECES)) {
            problems.add(problem("reading", "stock-pieces", "It is kept in pieces.", "Count them instead."));
        } else if (byVolume && density == null) {
            problems.add(problem(
                    "reading",
                    "density-not-known",
                    "It is kept in mL, and its density is not known, so a weight says nothing about the volume.",
                    "Write its density on its sheet, such as 0.854 g/ml."));
        }
        if (!problems.isEmpty()) {
            return new SheetReading.Refused<>(problems);
        }
        return new SheetReading.Understood<>(weighed(together - empty, byVolume ? density : null), List.of());
    }

    private static Weighed weighed(double grams, @Nullable Estimate density) {
        if (density == null) {
            return new Weighed(grams, null, new Stock(grams, Stock.GRAMS));
        }
        double millilitres = grams / density.value();
        Estimate volume = new Estimate(millilitres, millilitres * density.doubt() / density.value());
        return new Weighed(grams, volume, new Stock(millilitres, Stock.MILLILITRES));
    }

    /** Returns the density at 20 °C, g/mL, or null where it is not known or nothing is measured by it. */
    private static @Nullable Estimate density(LotOnShelf lot) {
        return LotFacts.of(lot).stream()
                .flatMap(known -> known.facts().stream())
                .filter(fact -> fact.what() == LotFacts.What.DENSITY)
                .map(LotFacts.Fact::estimate)
                .findFirst()
                .orElse(null);
    }

    private static double grams(SheetReader reader, String key, String text, List<SheetProblem> problems) {
        if (text.isBlank()) {
            boolean ofEmpty = key.equals(LotKeys.TARE);
            problems.add(problem(
                    key,
                    "field-missing",
                    ofEmpty ? "What the empty jar weighs is not said." : "What the scale shows is not said.",
                    "Write it such as " + (ofEmpty ? "312 g" : "655.5 g") + "."));
            return 0.0;
        }
        SheetReading<Typed<Mass>> mass = reader.quantity(key, text.strip(), QuantityText::mass, "“312 g”");
        if (mass instanceof SheetReading.Understood<Typed<Mass>> understood) {
            return understood.value().value().grams();
        }
        problems.addAll(((SheetReading.Refused<Typed<Mass>>) mass).problems());
        return 0.0;
    }

    private static SheetProblem problem(String key, String rule, String message, String remedy) {
        return new SheetProblem(key, Finding.of(rule, Severity.STOP, key, "cannot be used", message, remedy));
    }
}

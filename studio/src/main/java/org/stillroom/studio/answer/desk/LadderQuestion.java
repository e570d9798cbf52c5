package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.tasting.DoseLadder;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;

/** Tells doses for a trial: each so many times the one before, per litre and in the glass. */
final class LadderQuestion extends DeskQuestion {
    private static final double LITRE = 1000.0;
    private static final int MOST_RUNGS = 15;

    /** How a dose is told: in what it was typed, and in a smaller unit in the glass. */
    private record Units(Name perLitre, Name inGlass, double smaller) {
        static Units of(Amount amount) {
            if (amount instanceof Mass) {
                return new Units(dose("g_per_l", "g/L", Name.IN_FIGURES), glass("mg", "mg", Name.IN_FIGURES), 1000.0);
            }
            return amount instanceof Volume
                    ? new Units(dose("ml_per_l", "mL/L", Name.IN_FIGURES), glass("ul", "µL", Name.IN_FIGURES), 1000.0)
                    : new Units(dose("drops_per_l", "drops/L", 1), glass("drops", "drops", 2), 1.0);
        }

        private static Name dose(String key, String unit, int decimals) {
            return new Name(key, "dose", unit, decimals);
        }

        private static Name glass(String key, String unit, int decimals) {
            return new Name(key, "in the glass", unit, decimals);
        }
    }

    @Override
    public String name() {
        return "ladder";
    }

    @Override
    public String summary() {
        return "Doses for a trial by taste: each so many times the one before, per litre and in the glass.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("dose", "that is thought right, per litre, such as 0.4g/L, 8ml/L or 24drops/L"),
                Part.usual("glass", "50ml", "what is poured into each glass before the dose"),
                Part.usual("rungs", "5", "how many glasses, an odd number: the dose is the middle one"),
                Part.usual("times", "2", "from one to the next: 2 for a first look, 1.41 for a fine setting"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("dose", "0.4g/L"),
                new Manner.Given("glass", "50ml"),
                new Manner.Given("rungs", "5"),
                new Manner.Given("times", "2"));
    }

    @Override
    public List<String> figures() {
        return List.of("base_ml");
    }

    @Override
    public List<String> tables() {
        return List.of("ladder");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Dose> dose = asked.read("dose", TEXT::dose);
        Optional<Volume> glass = asked.read("glass", TEXT::volume);
        Optional<Double> rungs = asked.read("rungs", TEXT::number);
        Optional<Double> times = asked.read("times", TEXT::number);
        refuse(asked, dose, glass, rungs, times);
        asked.refuseIfAnyWrong();
        Amount perLitre = dose.orElseThrow().perLitre();
        Units units = Units.of(perLitre);
        double glasses = glass.orElseThrow().millilitres();
        List<Double> ladder =
                DoseLadder.around(amount(perLitre), times.orElseThrow(), (int) Math.round(rungs.orElseThrow()));
        List<Told.Series.Line> lines = new ArrayList<>();
        for (int i = 0; i < ladder.size(); i++) {
            double inGlass = ladder.get(i) * units.smaller * glasses / LITRE;
            lines.add(new Told.Series.Line("glass " + (i + 1), List.of(ladder.get(i), inGlass)));
            workings.step("dose of glass " + (i + 1), ladder.get(i), units.perLitre.unit(), Source.TRADE);
        }
        Told told = new Told("Doses around " + asked.text("dose"));
        if (perLitre instanceof Mass mass) {
            Slips.ofAnyOil(mass).ifPresent(told::before);
        }
        told.put(new Name("base_ml", "to pour for all glasses", "mL", 0), new Estimate(glasses * ladder.size(), 0.0))
                .table(new Told.Series("ladder", "From weak to strong", List.of(units.perLitre, units.inGlass), lines));
        if (perLitre instanceof Drops
                && lines.stream().anyMatch(line -> isNoWhole(line.numbers().get(1)))) {
            told.finding(broken());
        }
        return told;
    }

    private static void refuse(
            AskedTexts asked,
            Optional<Dose> dose,
            Optional<Volume> glass,
            Optional<Double> rungs,
            Optional<Double> times) {
        if (dose.isPresent() && !(amount(dose.get().perLitre()) > 0.0)) {
            asked.object("dose", "a dose of nothing has no ladder.", "Write one above 0, such as 0.4g/L.");
        }
        if (glass.isPresent() && !(glass.get().millilitres() > 0.0)) {
            asked.object("glass", "there is nothing in the glass.", "Write what is poured, such as 50ml.");
        }
        if (rungs.isPresent() && !isOddAndFew(rungs.get())) {
            asked.object(
                    "rungs",
                    QuantityWords.plain(rungs.get()) + " is not an odd number from 1 to " + MOST_RUNGS + ".",
                    "Write 3, 5 or 7, so that the dose is in the middle.");
        }
        if (times.isPresent() && !(times.get() > 1.0 && times.get() <= 10.0)) {
            asked.object(
                    "times",
                    QuantityWords.plain(times.get()) + " does not lie above 1 and up to 10.",
                    "Write 2 for a first look, 1.41 for a fine setting.");
        }
    }

    private static boolean isOddAndFew(double rungs) {
        return rungs == Math.rint(rungs) && rungs >= 1.0 && rungs <= MOST_RUNGS && rungs % 2.0 == 1.0;
    }

    /** Returns how much it is, in g, mL or drops. */
    static double amount(Amount amount) {
        if (amount instanceof Mass mass) {
            return mass.grams();
        }
        return amount instanceof Volume volume ? volume.millilitres() : ((Drops) amount).count();
    }

    private static boolean isNoWhole(double drops) {
        return Math.abs(drops - Math.rint(drops)) > 0.02;
    }

    private static Finding broken() {
        return Finding.of(
                "ladder-of-drops",
                Severity.NOTE,
                "drops",
                "not whole",
                "Drops are whole, and in some glasses they would not be.",
                "Dilute the oil 1:10 in strong spirit and take ten times as many, or pour larger glasses.");
    }
}

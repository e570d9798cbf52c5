package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stillroom.core.extraction.Maceration;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.extraction.SteepingFit;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.safety.Yeast;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.Macerate.Order;
import org.stillroom.studio.usecase.Macerate.Sugaring;

/** What is to be known about plants in spirit. */
public final class MacerateFindings {
    /** Fruit below this strength may ferment or spoil, % vol. From memory. */
    private static final double LEAST_FOR_FRUIT = 25.0;

    /** Wood chips, g/L, as they are usually taken. Common practice, no source. */
    private static final double CHIPS_FROM = 2.0;

    private static final double CHIPS_TO = 5.0;

    /** Fresh fruit with more on a mL of spirit is hardly covered, g/mL. Own judgement. */
    private static final double MOST_FRESH = 2.5;

    /** Dry plants soak up as much as they weigh and more, g/mL. Own judgement. */
    private static final double MOST_DRY = 1.0;

    /** A jar that was closed at it stands under no pressure, °C. */
    private static final double ROOM = 20.0;

    /** Warmer than a room in summer: spirit is warmed on purpose, °C. Own judgement. */
    private static final double WARM = 30.0;

    private MacerateFindings() {}

    /** Asks whether so much plant is meant, which the spirit would not cover; on sugar the juice comes to it. */
    public static Optional<Finding> overfull(Asked asked) {
        double grams = asked.charges().stream().mapToDouble(Charge::grams).sum();
        boolean fresh =
                asked.charges().stream().allMatch(each -> each.plant().sort().fresh());
        double most = fresh ? MOST_FRESH : MOST_DRY;
        double perMillilitre = grams / asked.solvent();
        if (asked.sugaring() != null || !(perMillilitre > most)) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "plant-over-solvent",
                Severity.CAUTION,
                "solvent",
                "",
                "is this meant?",
                "On each millilitre of spirit come " + QuantityWords.figures(perMillilitre)
                        + " g of plant; so little spirit hardly covers it.",
                "Own judgement: up to " + QuantityWords.plain(most) + " g to the mL "
                        + (fresh ? "of fresh plants" : "where plants are dry") + ".",
                "Look at the units, and whether mass and volume, or the sides of the ratio, are the right way round: 1:5 is"
                        + " five times as much spirit as plant.",
                QuantityWords.plain(most) + " g/mL",
                Source.RULE_OF_THUMB));
    }

    /** Returns what is to be known. */
    static List<Finding> of(Asked asked, MacerateCourse course) {
        List<Finding> findings = new ArrayList<>();
        double solvent =
                Essentials.of(MadeUp.spirit(asked.strength()).toGrams()).strength();
        for (Charge charge : asked.charges()) {
            onPlant(charge.plant(), solvent, findings);
        }
        boolean fruit =
                asked.charges().stream().anyMatch(each -> each.plant().sort().isFruit());
        if (fruit) {
            inSpiritAlone(asked, course).stream()
                    .filter(strength -> strength < LEAST_FOR_FRUIT)
                    .forEach(strength -> findings.add(weakFruit(strength)));
        }
        weakestAgain(asked, course).stream()
                .filter(strength -> strength < (fruit ? LEAST_FOR_FRUIT : Yeast.STOPS))
                .forEach(strength -> findings.add(
                        weakDraw("again", "With what the marc holds, plants stand again in ", strength, fruit)));
        inSpiritAlone(asked, course).stream()
                .filter(strength -> !fruit && strength < Yeast.STOPS)
                .forEach(strength -> findings.add(weakDraw("strength", "The plants stand in ", strength, false)));
        MacerateSugar.judge(asked, course, findings);
        ofWay(asked, findings);
        return findings;
    }

    /** Returns the strength in which the plants stand without sugar, % vol; empty where sugar is on them from the start. */
    private static OptionalDouble inSpiritAlone(Asked asked, MacerateCourse course) {
        Sugaring sugaring = asked.sugaring();
        if (sugaring == null) {
            return OptionalDouble.of(course.draws().get(0).strength());
        }
        Maceration before = course.before();
        return before == null || sugaring.order() == Order.SUGAR_FIRST
                ? OptionalDouble.empty()
                : OptionalDouble.of(before.strength());
    }

    /** Returns the strength in which the marc stands again, where it is least, % vol; sugar is judged by itself. */
    private static OptionalDouble weakestAgain(Asked asked, MacerateCourse course) {
        int first = course.draws().size() - asked.again().size();
        return asked.through().isPresent() || asked.sugaring() != null
                ? OptionalDouble.empty()
                : course.draws().stream()
                        .skip(first)
                        .mapToDouble(Maceration::strength)
                        .min();
    }

    private static Finding weakDraw(String where, String stand, double strength, boolean fruit) {
        String least = QuantityWords.plain(fruit ? LEAST_FOR_FRUIT : Yeast.STOPS) + " % vol";
        return new Finding(
                "draw-weak",
                Severity.CAUTION,
                where,
                "",
                "may spoil",
                stand + QuantityWords.fixed(strength, 1) + " % vol, which does not keep them.",
                least + " is the least that is counted as keeping, from memory.",
                "Take stronger spirit; or keep it in the fridge, strain it after a day or two, and put it to stronger spirit or"
                        + " a stronger draw at once.",
                least,
                Source.EXTRACTION_PRACTICE);
    }

    private static void ofWay(Asked asked, List<Finding> findings) {
        switch (asked.way()) {
            case JAR -> {}
            case BATH -> {
                if (asked.celsius() > ROOM) {
                    findings.add(bath(asked.celsius()));
                }
            }
            case SIPHON -> findings.add(siphon());
        }
        if (asked.way() != Macerate.Way.BATH && asked.celsius() >= WARM) {
            findings.add(warm(asked.celsius()));
        }
        SteepingFit fit = asked.samples();
        if (fit != null) {
            SteepingFinding.of(fit, findings);
        } else if (asked.way() != Macerate.Way.SIPHON) {
            findings.add(weakDays(asked.celsius()));
        }
        double wood = asked.charges().stream()
                .filter(each -> each.plant().sort().key().equals("wood"))
                .mapToDouble(Charge::grams)
                .sum();
        if (wood > 0.0) {
            findings.add(wood(1000.0 * wood / asked.solvent()));
        }
    }

    private static Finding bath(double celsius) {
        return new Finding(
                "sealed-warm",
                Severity.CAUTION,
                "temperature",
                "",
                "keep fire away",
                "A sealed jar at " + QuantityWords.plain(celsius)
                        + " °C stands under pressure, and vapour of spirit burns when it is opened warm.",
                "The pressure is that of a jar a fifth of which is empty; less room gives more.",
                "Take a jar whose lid gives (rubber and clip), a bath without flame, a cloth over it; open it cold. Taste for what is cooked.",
                null,
                Source.TRADE);
    }

    private static Finding warm(double celsius) {
        return new Finding(
                "spirit-warm",
                Severity.CAUTION,
                "temperature",
                "",
                "keep fire away",
                "At " + QuantityWords.plain(celsius)
                        + " °C spirit gives off vapour that burns, the more the warmer; a jar that was closed cold stands under pressure.",
                "",
                "Keep flame and spark away and the room aired; warm it in a bath without flame, in a jar whose lid gives, and open it cold.",
                null,
                Source.TRADE);
    }

    private static Finding siphon() {
        return new Finding(
                "siphon",
                Severity.CAUTION,
                "way",
                "",
                "under pressure",
                "In a siphon gas drives the spirit into the plant and back; minutes do what days do, and no rate is known.",
                "Common practice; nothing of it could be read.",
                "Taste after 1, 5 and 20 minutes. Two charges for half a litre; let the pressure off upright, "
                        + "before it is opened, and strain what could block the valve.",
                null,
                Source.TRADE);
    }

    private static Finding wood(double gramsPerLitre) {
        boolean usual = gramsPerLitre >= CHIPS_FROM && gramsPerLitre <= CHIPS_TO;
        return new Finding(
                "wood-chips",
                usual ? Severity.NOTE : Severity.CAUTION,
                "mass",
                "",
                usual ? "usual" : "is this meant?",
                QuantityWords.fixed(gramsPerLitre, 1) + " g/L of chips; 2 to 5 g/L are usual.",
                "Common practice, no source.",
                "Taste on every third day: chips are done in two or three weeks, and nothing takes too much wood out again.",
                "2 to 5 g/L",
                Source.TRADE);
    }

    private static void onPlant(Plant plant, double solvent, List<Finding> findings) {
        PlantSort sort = plant.sort();
        if (plant.standing() == Standing.OWN) {
            findings.add(plantOfNoTable(plant));
        }
        if (plant.waterBy() == Plant.By.MAKER) {
            findings.add(own(plant, "water", plant.water()));
        } else if (plant.standing() == Standing.FROM_MEMORY) {
            findings.add(note(
                    "plant-from-memory",
                    plant.name(),
                    "Its water is recalled, not read: " + QuantityWords.fixed(100.0 * plant.water(), 0) + " %.",
                    "Give your own, if you dried a sample."));
        }
        if (plant.sugarBy() == Plant.By.MAKER) {
            findings.add(own(plant, "sugar", plant.sugar()));
        } else if (plant.sugarBy() == Plant.By.NOBODY && plant.sugarDoubt() > 0.0) {
            findings.add(note(
                    "plant-sugar-unknown",
                    plant.name(),
                    "Its sugar is not known; from none to " + QuantityWords.fixed(200.0 * plant.sugar(), 0)
                            + " % is counted as possible.",
                    "Give its sugar, from a refractometer or a table of foods."));
        } else if (plant.sugarBy() == Plant.By.NOBODY && sort.fresh()) {
            findings.add(note(
                    "plant-sugar-unknown", plant.name(), "The source states no sugar for it, so none is counted.", ""));
        }
        if (solvent < sort.strengthLow() - 1e-6 || solvent > sort.strengthHigh() + 1e-6) {
            findings.add(strengthOff(plant, solvent));
        }
    }

    private static Finding own(Plant plant, String what, double part) {
        return note(
                "plant-own",
                plant.name(),
                "Its " + what + " is your own: " + QuantityWords.plain(Math.round(1e5 * part) / 1e3)
                        + " %, taken as exact.",
                "");
    }

    private static Finding plantOfNoTable(Plant plant) {
        return new Finding(
                "plant-of-no-table",
                Severity.NOTE,
                plant.name(),
                "",
                "by your word",
                "No table has it. What its marc holds, how fast it gives and what strength suits it are those of "
                        + plant.sort().words() + ".",
                "The sort is yours, or else guessed from its name and its water.",
                "Say another sort where that is wrong, and weigh what your marc holds.",
                null,
                Source.RETAINED);
    }

    private static Finding weakDays(double celsius) {
        return new Finding(
                "steeping-weak",
                Severity.NOTE,
                "days",
                "",
                "weakly known",
                "The days are those of the slowest plant at " + QuantityWords.plain(celsius)
                        + " °C, by rates of an order of magnitude.",
                "Off by a factor of 3 either way, and more for powder or whole fruit.",
                "Taste on these days, write down what you find, and give three samples or more.",
                null,
                Source.STEEPING);
    }

    private static Finding note(String rule, String where, String message, String remedy) {
        return Finding.of(rule, Severity.NOTE, where, "", message, remedy);
    }

    private static Finding strengthOff(Plant plant, double solvent) {
        PlantSort sort = plant.sort();
        boolean weak = solvent < sort.strengthLow();
        return new Finding(
                weak ? "solvent-weak" : "solvent-strong",
                Severity.NOTE,
                plant.name(),
                "",
                weak ? "weak for it" : "strong for it",
                "For " + sort.words() + " " + QuantityWords.fixed(sort.strengthLow(), 0) + " to "
                        + QuantityWords.fixed(sort.strengthHigh(), 0) + " % vol are usual, not "
                        + QuantityWords.fixed(solvent, 1) + " % vol: "
                        + (weak
                                ? "oils and resins come out less, acids, tannin and colour more."
                                : "oils and resins come out more, bitterness, sugar and colour less."),
                "",
                "",
                null,
                Source.EXTRACTION_PRACTICE);
    }

    private static Finding weakFruit(double strength) {
        return new Finding(
                "fruit-weak",
                Severity.CAUTION,
                "solvent",
                "",
                "may spoil",
                "With the juice of the fruit it comes to " + QuantityWords.fixed(strength, 1) + " % vol.",
                "25 % vol is what handbooks ask for, from memory.",
                "Take stronger spirit or less fruit, so that at least 25 % vol are left.",
                "25 % vol",
                Source.EXTRACTION_PRACTICE);
    }
}

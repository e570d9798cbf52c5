package org.stillroom.studio.usecase;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Maceration;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.safety.WaterActivity;
import org.stillroom.core.safety.Yeast;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.Macerate.Before;
import org.stillroom.studio.usecase.Macerate.Order;
import org.stillroom.studio.usecase.Macerate.Sugared;
import org.stillroom.studio.usecase.Macerate.Sugaring;

/** What sugar on fruit comes to: what stands before the rest goes on, what does not dissolve, and what can ferment. */
final class MacerateSugar {
    /** Halvings until the spirit to begin with is found to a millilitre in a thousand litres. */
    private static final int HALVINGS = 30;

    /** What the model of water activity claims: docs/how-it-works/growth.md. */
    private static final double WATER_ACTIVITY = 0.02;

    private static final String BEFORE_SPIRIT = "Before the spirit goes on, at ";
    private static final String WITH_SUGAR = "With juice and sugar, at ";

    /** What goes with every advice by units of Delle: they are from memory, and memory clears nothing. */
    private static final String CLEARS_NOTHING =
            " The 78 units of Delle are a figure from memory and common practice and clear nothing: below about 17 % vol"
                    + " it can ferment again. ";

    private MacerateSugar() {}

    /** Returns what sugar on the plants comes to, or null where none is put on. */
    static @Nullable Sugared of(Asked asked, MacerateCourse course) {
        Sugaring sugaring = asked.sugaring();
        if (sugaring == null) {
            return null;
        }
        Maceration last = course.last();
        boolean pouredOff = sugaring.order() == Order.MARC;
        Estimate back = new Estimate(last.volume(), PlantSort.HELD_DOUBT * last.held());
        return new Sugared(
                sugaring.order(), last.undissolvedInDoubt(), before(asked, course, pouredOff), pouredOff ? back : null);
    }

    private static @Nullable Before before(Asked asked, MacerateCourse course, boolean pouredOff) {
        Maceration before = course.before();
        Maceration wetter =
                MacerateCourse.of(asked, MacerateCourse.Known.WETTER).before();
        Maceration sweeter =
                MacerateCourse.of(asked, MacerateCourse.Known.SWEETER).before();
        if (before == null || wetter == null || sweeter == null) {
            return null;
        }
        Told told = new Told(before, wetter, sweeter, before.lessDissolved());
        double keepsShape = pouredOff ? PlantSort.HELD_DOUBT * before.held() : 0.0;
        return new Before(
                told.estimate(Maceration::volume, keepsShape),
                told.estimate(Maceration::strength, 0.0),
                told.estimate(each -> Yeast.in(each.liquid()).sugar(), 0.0),
                told.estimate(each -> Yeast.in(each.liquid()).delle(), 0.0),
                told.estimate(each -> WaterActivity.of(each.liquid()), WATER_ACTIVITY),
                before.undissolvedInDoubt());
    }

    /** The same jar as known, with plants wetter and sweeter, with less sugar dissolved: how far a figure moves is its doubt. */
    private record Told(Maceration known, Maceration wetter, Maceration sweeter, Maceration less) {
        Estimate estimate(ToDoubleFunction<Maceration> figure, double besides) {
            double value = figure.applyAsDouble(known);
            return new Estimate(
                    value,
                    MacerateDoubt.length(
                            value - figure.applyAsDouble(wetter),
                            value - figure.applyAsDouble(sweeter),
                            value - figure.applyAsDouble(less),
                            besides));
        }
    }

    /** Adds what is to be known of it. */
    static void judge(Asked asked, MacerateCourse course, List<Finding> findings) {
        Sugaring sugaring = asked.sugaring();
        if (sugaring == null) {
            return;
        }
        findings.add(draws());
        boolean fresh =
                asked.charges().stream().anyMatch(each -> each.plant().sort().fresh());
        Maceration before = course.before();
        if (fresh && before != null && sugaring.order() == Order.SUGAR_FIRST) {
            Yeast juice = Yeast.in(before.liquid());
            if (juice.canWork()) {
                findings.add(juiceFerments(asked, sugaring, before.liquid()));
            } else if (juice.findsFood()) {
                findings.add(likelyHeld("order", BEFORE_SPIRIT, juice));
            }
        }
        if (fresh) {
            weakest(course)
                    .map(fruit -> fruit.canWork() ? fruitFerments(fruit) : likelyHeld("solvent", WITH_SUGAR, fruit))
                    .ifPresent(findings::add);
        }
        Estimate undissolved = course.last().undissolvedInDoubt();
        if (undissolved.value() + undissolved.doubt() > 0.0) {
            findings.add(undissolved(undissolved.value(), course.last().liquid()));
        }
    }

    /** Returns what yeast finds in the jar that holds it least, of all in which it finds food. */
    private static Optional<Yeast> weakest(MacerateCourse course) {
        return course.draws().stream()
                .map(each -> Yeast.in(each.liquid()))
                .filter(Yeast::findsFood)
                .min(Comparator.comparingDouble(Yeast::delle));
    }

    private static Finding draws() {
        return new Finding(
                "sugar-draws",
                Severity.NOTE,
                "sugar-on-fruit",
                "",
                "takes days",
                "Sugar draws the juice in one to three days; the figures are those of when fruit and liquid have become alike.",
                "Common practice, no source; until then less comes, and it is stronger or sweeter outside the fruit than in it.",
                "Cut or prick the fruit, and shake it daily until no sugar lies on the bottom.",
                null,
                Source.TRADE);
    }

    private static Finding juiceFerments(Asked asked, Sugaring sugaring, Contents juice) {
        double first = leastSpirit(asked, sugaring);
        return ferments(
                "juice-ferments",
                "order",
                BEFORE_SPIRIT,
                Yeast.in(juice),
                (first > asked.solvent()
                                ? "Take stronger spirit or more sugar."
                                : "Put at least " + QuantityWords.fixed(Math.ceil(first), 0)
                                        + " mL of the spirit on it from the start, which comes to 78 units of Delle.")
                        + CLEARS_NOTHING
                        + "So keep it in the fridge, the lid loose, and put the rest of the spirit on as soon as the sugar"
                        + " has dissolved.");
    }

    private static Finding fruitFerments(Yeast yeast) {
        return ferments(
                "fruit-ferments",
                "solvent",
                WITH_SUGAR,
                yeast,
                "Take stronger spirit or less fruit, up to 18 % vol, or more sugar." + CLEARS_NOTHING
                        + "So keep it in the fridge, the lid loose.");
    }

    /** The units of Delle are from memory, and memory clears nothing. */
    private static Finding likelyHeld(String where, String when, Yeast yeast) {
        return new Finding(
                "yeast-likely-held",
                Severity.CAUTION,
                where,
                "",
                "yeast likely held",
                when + QuantityWords.fixed(yeast.strength(), 1) + " % vol and "
                        + QuantityWords.fixed(yeast.sugar(), 0) + " g/L of sugar, yeast of the fruit is likely held, "
                        + QuantityWords.fixed(yeast.delle(), 0)
                        + " units of Delle, from 78 on; if it is not, a closed jar can burst.",
                "from memory, so that it clears nothing",
                "Below about 17 % vol it can ferment again: keep it in the fridge, the lid loose.",
                "18 % vol",
                Source.DELLE);
    }

    private static Finding ferments(String rule, String where, String when, Yeast yeast, String remedy) {
        return new Finding(
                rule,
                Severity.CAUTION,
                where,
                "",
                "can ferment",
                when + QuantityWords.fixed(yeast.strength(), 1) + " % vol and "
                        + QuantityWords.fixed(yeast.sugar(), 0)
                        + " g/L of sugar, yeast of the fruit can work, and a closed jar can burst: "
                        + QuantityWords.fixed(yeast.delle(), 0)
                        + " units of Delle, from 78 on yeast is likely held, from memory.",
                "below about 17 to 18 % vol by common practice, no source; the units from memory",
                remedy,
                "18 % vol",
                Source.DELLE);
    }

    /** Returns the least spirit on fruit and sugar from the start with which yeast is likely held, mL; more than there is where none is enough. */
    private static double leastSpirit(Asked asked, Sugaring sugaring) {
        double low = sugaring.first();
        double high = asked.solvent();
        if (worksWith(asked, sugaring, high)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean works = worksWith(asked, sugaring, middle);
            low = works ? middle : low;
            high = works ? high : middle;
        }
        return high;
    }

    private static boolean worksWith(Asked asked, Sugaring sugaring, double spirit) {
        Maceration juice = MacerateCourse.juice(asked, asked.charges(), sugaring.grams(), spirit);
        return Yeast.in(juice.liquid()).canWork();
    }

    private static Finding undissolved(double grams, Contents liquid) {
        boolean spirit = liquid.grams(Substance.ETHANOL) > 0.0;
        boolean surely = grams > 0.0;
        return new Finding(
                "sugar-undissolved",
                surely ? Severity.CAUTION : Severity.NOTE,
                "sugar-on-fruit",
                "",
                surely ? "stays on the bottom" : "may stay on the bottom",
                surely
                        ? QuantityWords.fixed(grams, 0)
                                + " g of the sugar do not dissolve at 20 °C and do not come with the liquid."
                        : "It dissolves, but not by much.",
                spirit
                        ? "How much dissolves in spirit is from memory, up to a fifth in doubt."
                        : "Tables of what water dissolves differ by 0.5 % by mass.",
                "Put less sugar on, or take weaker spirit; what stays can go into the water that is added later.",
                null,
                spirit ? Source.SOLUBILITY_IN_ALCOHOL : Source.SUCROSE_SOLUBILITY);
    }
}

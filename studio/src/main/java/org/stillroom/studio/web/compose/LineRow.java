package org.stillroom.studio.web.compose;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.ingredient.CarriedPlant;
import org.stillroom.core.ingredient.DoseUnits;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/**
 * One line of a recipe as the page shows it.
 *
 * @param index its place in the form
 * @param place its place among the lines of the plan, or −1 as long as it is empty
 * @param measured how it is measured out, or null as long as that is not known
 * @param dose per litre of what is made; null where it is no dose
 * @param plant that it brings per litre of what is made; null where nobody said how much it carries
 */
public record LineRow(
        int index,
        int place,
        String use,
        String amount,
        String note,
        @Nullable MeasuredLine measured,
        @Nullable DoseUnits dose,
        @Nullable CarriedPlant plant) {
    private static final String NOT_KNOWN = "–";
    /** Nobody counts more. */
    private static final double MOST_DROPS = 200.0;
    /** From a thousand on the larger unit is enough. */
    private static final double SMALL = 1000.0;

    public boolean isFree() {
        return amount.strip().equals("free");
    }

    /** Returns whether it is dosed in drops. */
    public boolean isInDrops() {
        return measured != null && measured.exact().line().isInDrops();
    }

    /** Returns what a drop of it weighs, by what, and how sure that is; empty where it is not measured in drops. */
    public String drop(Words words) {
        if (measured == null || !(measured.reading().amount() instanceof Drops)) {
            return "";
        }
        Resolved ingredient = measured.exact().ingredient();
        OwnDropper own = ingredient.dropper();
        return words.say(
                "compose.drop." + ingredient.dropBasis().name(),
                words.number(1000.0 * ingredient.gramsPerDrop(), 1),
                words.number(100.0 * ingredient.dropDoubt(), 0),
                own == null ? "" : own.name());
    }

    public String grams(Words words) {
        return measured == null ? NOT_KNOWN : figure(measured.exact().grams(), words);
    }

    public String millilitres(Words words) {
        return measured == null || measured.exact().millilitres().isEmpty()
                ? NOT_KNOWN
                : figure(measured.exact().millilitres().getAsDouble(), words);
    }

    private static String figure(double amount, Words words) {
        return words.number(amount, amount < 10 ? 2 : 1);
    }

    /**
     * A dose per litre in one unit.
     *
     * @param figures how much, as it is shown
     * @param unit in words
     * @param grams of one unit; by them it follows the point of the triangle
     */
    public record Way(String figures, String unit, double grams) {}

    /** Returns the dose in the units that it is measured in; none where it is no dose. */
    public List<Way> doses(Words words) {
        List<Way> ways = new ArrayList<>();
        if (dose == null) {
            return ways;
        }
        if (dose.drops() <= MOST_DROPS) {
            ways.add(way(dose.drops(), words.say("compose.dropsUnit"), words));
        }
        dose.millilitres().ifPresent(each -> ways.add(way(each, "mL", words)));
        dose.microlitres().stream().filter(each -> each < SMALL).forEach(each -> ways.add(way(each, "µL", words)));
        ways.add(way(dose.grams(), "g", words));
        if (dose.milligrams() < SMALL) {
            ways.add(way(dose.milligrams(), "mg", words));
        }
        return ways;
    }

    private Way way(double value, String unit, Words words) {
        double grams = dose == null ? 0.0 : dose.grams();
        return new Way(words.marked(QuantityWords.figures(value)), unit, grams / value);
    }

    /** Returns the plant that it brings; empty where nobody said how much it carries. */
    public String carries(Words words) {
        return plant == null
                ? ""
                : words.say("compose.plant", figures(plant.gramsPerLitre(), words), plant.plant(), plant.ratio());
    }

    private static String figures(double value, Words words) {
        return words.marked(QuantityWords.figures(value));
    }

    /** Returns what the instrument at hand shows. */
    public String reading(Words words) {
        if (measured == null) {
            return "";
        }
        String reading = words.units() == UnitSystem.US
                ? measured.reading().us()
                : measured.reading().words();
        return words.marked(words.told("instrument", reading).text()) + ", "
                + words.told("instrument", measured.reading().instrument()).text();
    }
}

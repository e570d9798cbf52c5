package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.quantity.QuantityWords;

/** The statements that stand on a label whatever is in the drink; those for single substances and allergens follow from safety. */
public final class Statements {
    /** From here on a date is not asked for, % vol. Source: Regulation (EU) 1169/2011, Annex X 1(d). */
    private static final double NO_DATE_FROM = 10.0;
    /** Above this the strength is stated, and no list of ingredients or nutrition is asked for, % vol. Source: Annex XII, article 16(4). */
    private static final double STATED_ABOVE = 1.2;
    /** From here on US bottles carry the health warning, % vol. From memory: 27 CFR 16.10 and 16.21. */
    public static final double US_WARNING_FROM = 0.5;

    /** What it says, word for word, its first two words in capitals and bold. From memory: 27 CFR 16.21 and 16.22. */
    public static final String US_WARNING = "GOVERNMENT WARNING: (1) According to the Surgeon General, women should not"
            + " drink alcoholic beverages during pregnancy because of the risk of birth defects. (2) Consumption of"
            + " alcoholic beverages impairs your ability to drive a car or operate machinery, and may cause health"
            + " problems.";

    private Statements() {}

    /**
     * A statement.
     *
     * @param words what it says or asks
     * @param basis where that stands
     */
    public record Statement(Market market, String words, String basis) {}

    /** Returns the statements for a stated strength. */
    public static List<Statement> of(StatedStrength strength) {
        List<Statement> all = new ArrayList<>();
        double percent = strength.percent();
        String stated = QuantityWords.fixed(percent, 1) + " % vol";
        if (percent > STATED_ABOVE) {
            all.add(eu(
                    "Strength: " + stated + ", at most one decimal, may follow \"alcohol\" or \"alc.\"", "Annex XII"));
            all.add(eu(
                    "No list of ingredients and no nutrition table is asked for; allergens always are",
                    "Art. 16(4), 21"));
        } else {
            all.add(eu("A list of ingredients and a nutrition table are asked for", "Art. 9"));
        }
        all.add(eu(
                percent >= NO_DATE_FROM
                        ? "No date of minimum durability is asked for"
                        : "A best-before date is asked for",
                "Annex X 1(d)"));
        if (percent >= US_WARNING_FROM) {
            all.add(new Statement(Market.US, US_WARNING, "27 CFR 16.21, from memory"));
            all.add(new Statement(
                    Market.US,
                    "Alcohol content: " + QuantityWords.fixed(percent, 1) + " % alc/vol",
                    "27 CFR 5.65, from memory"));
        }
        if (strength.leftIn() == StatedStrength.LeftIn.FRUIT_OR_PLANTS) {
            all.add(new Statement(
                    Market.US,
                    "Bottled at " + QuantityWords.fixed(percent, 1) + " percent alcohol by volume",
                    "27 CFR 5.233(c)(1)"));
        }
        return List.copyOf(all);
    }

    private static Statement eu(String words, String clause) {
        return new Statement(Market.EU, words, "Regulation (EU) 1169/2011, " + clause);
    }
}

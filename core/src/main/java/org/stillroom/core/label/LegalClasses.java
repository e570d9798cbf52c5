package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * Holds a drink against the categories of spirit drinks that are made by flavouring and sweetening.
 *
 * <p>Strength in % vol at 20 °C; sugar in the EU as invert, g/L, in the USA by weight of the finished product. Bounds compare at
 * the tenth: 95.0 g/L of sucrose are 100.0 g/L of invert sugar and count as such.
 */
public final class LegalClasses {
    /** First category made with flavouring; before it come distillates, which no recipe here makes. */
    private static final int FIRST_FLAVOURED = 19;

    /** Categories of which the text says "less than" or "more than". Source: Annex I 26, 27, 31 and 34. */
    private static final Set<String> OPEN_ENDED =
            Set.of("pastis", "pastis de Marseille", "flavoured vodka", "creme de cassis");

    /** Least sugar of a liqueur or cordial, and what a dry one stays below, % by weight. Source: 27 CFR 5.150(a). */
    private static final double US_LIQUEUR = 2.5;

    private static final double US_DRY = 10.0;
    /** Least strength of liqueurs named after a spirit and of flavoured spirits, % vol. From memory: 27 CFR 5.150(b), 5.151. */
    private static final double US_NAMED_SPIRIT = 30.0;
    /** Rock and rye and its like, % vol. Source: 27 CFR 5.150(b)(3). */
    private static final double US_ROCK_AND_RYE = 24.0;

    private static final String SUGAR = "sugar";
    /** What binary fractions add is not counted, g/L. */
    private static final double CONTENT_ROUNDING = 1e-9;

    private static final String PER_LITRE = "g/L";
    private static final String BY_WEIGHT = "% by weight";

    private LegalClasses() {}

    /**
     * Returns every class with what is missed.
     *
     * @param contained what is in it besides
     */
    public static List<LegalClass> of(Figures figures, Contained contained) {
        double strength = figures.has(Figure.STRENGTH) ? figures.value(Figure.STRENGTH) : 0.0;
        List<LegalClass> classes = new ArrayList<>();
        for (Table.Row row : Tables.open("label/eu_spirit_categories.csv").rows()) {
            if (row.number("category_no") >= FIRST_FLAVOURED || row.text("name").equals("spirit drink (general)")) {
                classes.add(european(row, strength, figures.value(Figure.SUGAR_AS_INVERT), contained));
            }
        }
        classes.addAll(american(strength, figures.value(Figure.SUGAR_BY_MASS)));
        return List.copyOf(classes);
    }

    private static LegalClass european(Table.Row row, double strength, double invert, Contained contained) {
        List<Miss> misses = new ArrayList<>();
        boolean open = OPEN_ENDED.contains(row.text("name"));
        least(misses, "strength", strength, bound(row, "min_abv_pct_vol"), "% vol", false);
        least(misses, SUGAR, invert, bound(row, "sugar_min_g_per_L_invert"), "g/L as invert", open);
        most(misses, SUGAR, invert, bound(row, "sugar_max_g_per_L_invert"), "g/L as invert", open);
        if (row.text("name").equals("mistra")) {
            most(misses, "strength", strength, 47.0, "% vol", false);
        }
        List<String> notShown = new ArrayList<>();
        for (Table.Row asked : Tables.open("label/eu_category_contents.csv").rows()) {
            if (asked.text("name").equals(row.text("name"))) {
                content(misses, notShown, asked, contained.of(asked.text("what")));
            }
        }
        return new LegalClass(
                Market.EU,
                row.text("name"),
                row.text("clause"),
                misses,
                notShown,
                row.textOrEmpty("other"),
                Source.EU_2019_787);
    }

    /** What surely lies outside is missed; what can lie on both sides, or is not known, is not shown to be met. */
    private static void content(List<Miss> misses, List<String> notShown, Table.Row asked, Contained.Part part) {
        String what = asked.text("what");
        @Nullable Double low = bound(asked, "min_g_per_L");
        @Nullable Double high = bound(asked, "max_g_per_L");
        if (low != null && part.most() < low - CONTENT_ROUNDING) {
            misses.add(new Miss(what, part.most(), low, PER_LITRE, "at least"));
        } else if (high != null && part.least() > high + CONTENT_ROUNDING) {
            misses.add(new Miss(what, part.least(), high, PER_LITRE, "at most"));
        } else if ((low != null && part.least() < low) || (high != null && part.most() > high)) {
            String wanted = high == null ? "at least " + told(low) : told(low) + " to " + told(high);
            notShown.add(what + " "
                    + (Double.isInfinite(part.most()) ? "not known" : told(part.least()) + " to " + told(part.most()))
                    + ", wanted " + wanted + " " + PER_LITRE);
        }
    }

    private static String told(@Nullable Double grams) {
        return grams == null ? "0" : QuantityWords.plain(Math.rint(100.0 * grams) / 100.0);
    }

    private static @Nullable Double bound(Table.Row row, String column) {
        return row.textOrEmpty(column).isEmpty() ? null : row.number(column);
    }

    private static List<LegalClass> american(double strength, double sugar) {
        List<LegalClass> classes = new ArrayList<>();
        classes.add(american("liqueur or cordial", "27 CFR 5.150(a)", sugar(sugar, US_LIQUEUR, null), "flavoured"));
        classes.add(
                american("liqueur or cordial, dry", "27 CFR 5.150(a)", sugar(sugar, US_LIQUEUR, US_DRY), "flavoured"));
        List<Miss> rye = sugar(sugar, US_LIQUEUR, null);
        least(rye, "strength", strength, US_NAMED_SPIRIT, "% vol", false);
        classes.add(american(
                "rye or bourbon liqueur",
                "27 CFR 5.150(b)(2)",
                rye,
                "at least 51 % of the proof gallons from the named whisky; wine at most 2.5 %"));
        List<Miss> rock = sugar(sugar, US_LIQUEUR, null);
        least(rock, "strength", strength, US_ROCK_AND_RYE, "% vol", false);
        classes.add(american(
                "rock and rye, bourbon, brandy or rum",
                "27 CFR 5.150(b)(3)",
                rock,
                "at least 51 % from the named spirit; rock candy or sugar syrup"));
        classes.add(new LegalClass(
                Market.US,
                "rum, gin or brandy liqueur",
                "27 CFR 5.150(b)",
                rye,
                List.of(),
                "the named spirit alone",
                Source.CFR_27_RECALLED));
        List<Miss> flavoured = new ArrayList<>();
        least(flavoured, "strength", strength, US_NAMED_SPIRIT, "% vol", false);
        classes.add(new LegalClass(
                Market.US,
                "flavored brandy, gin, rum, vodka or whisky",
                "27 CFR 5.151",
                flavoured,
                List.of(),
                "wine over 2.5 % is named",
                Source.CFR_27_RECALLED));
        return classes;
    }

    private static LegalClass american(String name, String clause, List<Miss> misses, String besides) {
        return new LegalClass(Market.US, name, clause, misses, List.of(), besides, Source.CFR_27_SPIRITS);
    }

    private static List<Miss> sugar(double found, double least, @Nullable Double below) {
        List<Miss> misses = new ArrayList<>();
        least(misses, SUGAR, found, least, BY_WEIGHT, false);
        most(misses, SUGAR, found, below, BY_WEIGHT, true);
        return misses;
    }

    private static void least(
            List<Miss> misses, String what, double found, @Nullable Double bound, String unit, boolean open) {
        if (bound != null && (open ? tenths(found) <= tenths(bound) : tenths(found) < tenths(bound))) {
            misses.add(new Miss(what, found, bound, unit, open ? "more than" : "at least"));
        }
    }

    private static void most(
            List<Miss> misses, String what, double found, @Nullable Double bound, String unit, boolean open) {
        if (bound != null && (open ? tenths(found) >= tenths(bound) : tenths(found) > tenths(bound))) {
            misses.add(new Miss(what, found, bound, unit, open ? "less than" : "at most"));
        }
    }

    private static long tenths(double value) {
        return Math.round(10.0 * value);
    }
}

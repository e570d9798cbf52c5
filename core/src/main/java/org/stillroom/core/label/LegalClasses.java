package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;

/**
 * Holds a drink against the categories of spirit drinks that are made by flavouring and sweetening.
 *
 * <p>Strength in % vol at 20 °C; sugar in the EU as invert, g/L, in the USA by weight of the finished product. Bounds compare at
 * the tenth: 95.0 g/L of sucrose are 100.0 g/L of invert sugar and count as such.
 */
public final class LegalClasses {
    /** Every liqueur that needs no name of its own. */
    public static final String LIQUEUR = "liqueur (general)";

    /** How the rows begin that Annex I 33 makes exceptions of; a drink by one of them is a liqueur. */
    public static final String EXCEPTIONS = "liqueur of ";

    /** Everything that is a spirit drink at all. */
    public static final String SPIRIT_DRINK = "spirit drink (general)";

    /** The same in the USA. */
    public static final String CORDIAL = "liqueur or cordial";

    /** What binary fractions add is not counted, g/L. */
    private static final double CONTENT_ROUNDING = 1e-9;

    static final String STRENGTH = "strength";
    private static final String PERCENT = "% vol";
    static final String SUGAR = "sugar";
    private static final String PER_LITRE = "g/L";

    private final TableSet tables;
    private final Figures figures;
    private final double strength;
    private final Contained contained;

    private LegalClasses(TableSet tables, Figures figures, Contained contained) {
        this.tables = tables;
        this.figures = figures;
        this.strength = figures.has(Figure.STRENGTH) ? figures.value(Figure.STRENGTH) : 0.0;
        this.contained = contained;
    }

    /**
     * Returns every class with what is missed.
     *
     * @param tables in force
     * @param contained what is in it besides
     */
    public static List<LegalClass> of(TableSet tables, Figures figures, Contained contained) {
        LegalClasses classes = new LegalClasses(tables, figures, contained);
        List<LegalClass> all = new ArrayList<>();
        tables.open("label/eu_spirit_categories.csv").rows().forEach(row -> all.add(classes.european(row)));
        all.replaceAll(each -> each.name().equals(SPIRIT_DRINK) ? asCategory(each, all) : each);
        tables.open("label/us_spirit_classes.csv").rows().forEach(row -> all.add(classes.american(row)));
        return List.copyOf(all);
    }

    /** Every category of Annex I is a spirit drink, an egg liqueur of 14 % vol too. */
    private static LegalClass asCategory(LegalClass spirit, List<LegalClass> all) {
        return all.stream()
                .filter(each -> spirit.ruledOut().isEmpty() && !each.isMissed())
                .min(Comparator.comparing(LegalClass::standing))
                .map(spirit::allowedBy)
                .orElse(spirit);
    }

    /** Returns the bounds of strength that a row of either table sets. */
    static Bounds strength(Table.Row row) {
        return Bounds.of(row, STRENGTH, PERCENT, "min_abv_pct_vol", "max_abv_pct_vol", Bounds.Open.NONE);
    }

    static Bounds asInvert(Table.Row row) {
        return Bounds.of(
                row,
                SUGAR,
                "g/L as invert",
                "sugar_min_g_per_L_invert",
                "sugar_max_g_per_L_invert",
                Bounds.Open.of(row));
    }

    static Bounds byWeight(Table.Row row) {
        return Bounds.of(
                row, SUGAR, "% by weight", "sugar_min_pct_weight", "sugar_max_pct_weight", Bounds.Open.of(row));
    }

    private LegalClass european(Table.Row row) {
        Bounds sugar = asInvert(row);
        List<Miss> misses = misses(strength(row), sugar, figures.value(Figure.SUGAR_AS_INVERT));
        List<Table.Row> holds = tables.open("label/eu_category_contents.csv").rows().stream()
                .filter(asked -> PlainLetters.of(asked.text("name")).equals(PlainLetters.of(row.text("name"))))
                .toList();
        List<String> notShown = new ArrayList<>();
        holds.forEach(asked -> content(misses, notShown, asked, contained.of(asked.text("what"))));
        @Nullable WayThere way = misses.isEmpty() ? null : WayThere.asInvert(figures, strength(row), sugar);
        if (way != null) {
            way = way.leaving(leftOpen(holds, way.thinning()));
        }
        return named(
                Market.EU, row, misses, notShown, way, isRead(row) ? Source.EU_2019_787 : Source.EU_2019_787_RECALLED);
    }

    private LegalClass american(Table.Row row) {
        Bounds sugar = byWeight(row);
        List<Miss> misses = misses(strength(row), sugar, figures.value(Figure.SUGAR_BY_MASS));
        if (strength(row).least() == null && strength < Statements.US_WARNING_FROM) {
            misses.add(new Miss(STRENGTH, strength, Statements.US_WARNING_FROM, PERCENT, "at least"));
        }
        @Nullable WayThere way = misses.isEmpty() ? null : WayThere.byWeight(figures, strength(row), sugar);
        return named(
                Market.US, row, misses, List.of(), way, isRead(row) ? Source.CFR_27_SPIRITS : Source.CFR_27_RECALLED);
    }

    private List<Miss> misses(Bounds wanted, Bounds sugar, double sweet) {
        List<Miss> misses = new ArrayList<>(wanted.misses(strength));
        misses.addAll(sugar.misses(sweet));
        return misses;
    }

    private static boolean isRead(Table.Row row) {
        return row.text("status").equals("read");
    }

    private List<Shown> shown(Market market, String name) {
        return Asked.of(market, name, strength).stream()
                .map(asked -> asked.of(contained.goneIn()))
                .toList();
    }

    private LegalClass named(
            Market market,
            Table.Row row,
            List<Miss> misses,
            List<String> notShown,
            @Nullable WayThere way,
            Source source) {
        return new LegalClass(
                market,
                row.text("name"),
                row.text("clause"),
                misses,
                shown(market, row.text("name")),
                notShown,
                strength(row).metByRounding(strength),
                row.textOrEmpty("asks_besides"),
                way,
                source);
    }

    /** What surely lies outside is missed; what can lie on both sides, or is not known, is not shown to be met. */
    private static void content(List<Miss> misses, List<String> notShown, Table.Row asked, Contained.Part part) {
        String what = asked.text("what");
        @Nullable Double low = Bounds.bound(asked, "min_g_per_L");
        @Nullable Double high = Bounds.bound(asked, "max_g_per_L");
        boolean some = low != null && low == 0.0;
        if (low != null && (part.most() < low - CONTENT_ROUNDING || (some && part.most() == 0.0))) {
            misses.add(new Miss(what, part.most(), low, PER_LITRE, some ? "more than" : "at least"));
        } else if (high != null && part.least() > high + CONTENT_ROUNDING) {
            misses.add(new Miss(what, part.least(), high, PER_LITRE, "at most"));
        } else if ((low != null && (part.least() < low || (some && part.least() == 0.0)))
                || (high != null && part.most() > high)) {
            String wanted =
                    some ? "more than 0" : high == null ? "at least " + told(low) : told(low) + " to " + told(high);
            notShown.add(what + " "
                    + (Double.isInfinite(part.most()) ? "not known" : told(part.least()) + " to " + told(part.most()))
                    + ", wanted " + wanted + " " + PER_LITRE);
        }
    }

    /** What is added thins what the drink holds: it tells what that misses then, or does not show any more. */
    private List<String> leftOpen(List<Table.Row> holds, double thinning) {
        List<String> open = new ArrayList<>();
        for (Table.Row asked : holds) {
            Contained.Part part = contained.of(asked.text("what"));
            List<String> before = new ArrayList<>();
            List<String> after = new ArrayList<>();
            List<Miss> misses = new ArrayList<>();
            content(new ArrayList<>(), before, asked, part);
            content(misses, after, asked, new Contained.Part(part.least() * thinning, part.most() * thinning));
            misses.forEach(miss -> open.add(miss.what() + " " + told(miss.found()) + ", wanted " + miss.way() + " "
                    + told(miss.wanted()) + " " + miss.unit()));
            open.addAll(before.isEmpty() ? after : List.of());
        }
        return open;
    }

    private static String told(@Nullable Double grams) {
        return grams == null ? "0" : QuantityWords.plain(Math.rint(100.0 * grams) / 100.0);
    }
}

package org.stillroom.studio.cli;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Clearing;
import org.stillroom.core.clarity.Glass;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.mixing.MixingPath;
import org.stillroom.core.mixing.PlanClarity;
import org.stillroom.core.mixing.Ring;
import org.stillroom.studio.answer.ClarityFields;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.sheet.ClarityMap;
import org.stillroom.studio.usecase.TellClarity;

/** The forecast of clouding, the same for a person and for a script. */
record ClarityAnswer(TellClarity.Found found, boolean map) implements Answer {
    /** Constituents of a ring that are shown. */
    private static final int MOST_PARTS = 5;

    /** A doubt below this factor is not worth a line. */
    private static final double WORTH_TELLING = 1.02;

    @Override
    public Fields fields() {
        return ClarityFields.of(found);
    }

    @Override
    public void print(Page page) {
        if (map) {
            List<Clarity> path =
                    found.path().stops().stream().map(MixingPath.Stop::clarity).toList();
            page.verbatim(ClarityMap.svg(found.clarity(), path, UnaryOperator.identity()));
        } else {
            words(page);
        }
    }

    private void words(Page page) {
        Clarity clarity = found.clarity();
        page.heading("At " + Figure.decimals(clarity.medium().strength(), 1) + " % vol, "
                + Figure.decimals(clarity.medium().sugar(), 0) + " g/L of sugar and "
                + Figure.decimals(clarity.medium().temperature().celsius(), 0) + " °C it will be "
                + clarity.verdict().label() + ": " + PlanClarity.chances(clarity));
        page.table(figures(clarity));
        if (!found.compositionFrom().isEmpty()) {
            page.paragraph("Ranges of composition: " + String.join("; ", found.compositionFrom()) + ".");
        }
        page.blank();
        page.heading("What would change it");
        page.table(ways());
        page.blank();
        page.heading("In the glass with " + found.glass().addition().name());
        page.table(glass());
        if (!stays().isEmpty()) {
            page.paragraph(stays());
        }
        page.blank();
        if (found.clearing() != null) {
            page.paragraph(standing(found.clearing()));
        }
        if (found.ring() != null) {
            ring(page, found.ring());
        }
        if (!found.path().stops().isEmpty()) {
            page.blank();
            page.heading("While it is mixed");
            page.table(path(found.path()));
        }
        if (!found.clearest().isEmpty()) {
            page.paragraph("Clear for longest in this order:");
            found.clearest().forEach(step -> page.paragraph("- " + step.what()));
        }
        found.findings().forEach(finding -> {
            page.blank();
            page.finding(finding);
        });
    }

    private static Table figures(Clarity clarity) {
        Table table = new Table().text("").figure("").text("");
        table.row("oil load", Figure.decimals(clarity.load(), 2), "times what it can dissolve");
        table.row(
                "  in nine cases of ten",
                Figure.decimals(clarity.chances().lowLoad(), 2) + " to "
                        + Figure.decimals(clarity.chances().highLoad(), 2),
                "");
        table.row("oil in it", Figure.decimals(clarity.oils().gramsPerLitre(), 3), "g/L");
        table.row("  would separate", Figure.decimals(clarity.separated(), 3), "g/L");
        table.row("most of the load", clarity.leading(), "");
        clarity.chances().from().stream()
                .filter(each -> each.factor() >= WORTH_TELLING)
                .forEach(each -> table.row(
                        "in doubt from " + each.what().label(),
                        Figure.decimals(each.factor(), 2),
                        "times more or less"));
        return table;
    }

    private Table ways() {
        Table table = new Table().text("").figure("").text("");
        row(table, "clear from a strength of", found.clearFrom(), 1, "% vol");
        row(table, "most oil that stays clear", found.mostOil(), 3, "g/L");
        if (found.clarity().verdict() != Verdict.CLEAR) {
            row(table, "clear with sugar below", found.clearBelowSugar(), 0, "g/L");
            table.row(
                    "without terpene hydrocarbons",
                    Figure.decimals(found.terpeneless().load(), 2),
                    "oil load, " + found.terpeneless().verdict().label());
            found.folded()
                    .forEach(each -> table.row(
                            "folded " + Figure.decimals(each.fold(), 0) + " times",
                            Figure.decimals(each.clarity().load(), 2),
                            "oil load, " + each.clarity().verdict().label() + "; as if terpenes alone were taken out"));
            table.row(
                    "chilled to 0 °C and filtered",
                    Figure.decimals(found.filtered().after().load(), 2),
                    "oil load; " + Figure.decimals(100.0 * found.filtered().part(), 0) + " % of the oil is lost");
        }
        found.cold()
                .forEach(cold -> table.row(
                        "in the " + cold.where(),
                        Figure.decimals(cold.clarity().load(), 2),
                        "oil load, " + cold.clarity().verdict().label()));
        return table;
    }

    private Table glass() {
        Glass glass = found.glass();
        Table table = new Table().text("").figure("").text("");
        String parts = "parts to one" + (glass.addition().isIce() ? " (melted)" : "");
        row(table, "hazy from", glass.hazyFrom(), 2, parts);
        row(table, TellClarity.isLouche(found) ? "louche from" : "cloudy from", glass.cloudyFrom(), 2, parts);
        glass.coldest().ifPresent(coldest -> {
            table.row("as cold as ice makes it", Figure.decimals(coldest.celsius(), 1), "°C");
            table.row("  with so much melted", Figure.decimals(coldest.parts(), 2), "parts to one");
            table.row("  its strength then", Figure.decimals(coldest.strength(), 1), "% vol");
            table.row(
                    "  it then looks",
                    Figure.decimals(coldest.load(), 2),
                    "oil load, " + coldest.verdict().label());
        });
        return table;
    }

    private String stays() {
        boolean turns = found.glass().hazyFrom().isPresent()
                || found.glass().cloudyFrom().isPresent();
        return turns ? "" : "It does not change its look, up to twenty parts.";
    }

    private static void row(Table table, String label, OptionalDouble value, int decimals, String unit) {
        if (value.isPresent()) {
            table.row(label, Figure.decimals(value.getAsDouble(), decimals), unit);
        }
    }

    private static String standing(Clearing clearing) {
        return "By standing it clears after " + Figure.decimals(Math.max(0.1, clearing.days()), 1)
                + " days at the earliest in a bottle filled 200 mm high, the oil then "
                + (clearing.sinks() ? "at the bottom" : "as a ring on top")
                + ". Waxes and colloids of the peel can hold it cloudy for months.";
    }

    private static void ring(Page page, Ring ring) {
        page.paragraph("What then has gathered is " + Figure.decimals(ring.grams(), 3) + " g ("
                + Figure.decimals(ring.millilitres(), 3) + " mL) from a litre, "
                + Figure.decimals(100.0 * ring.part(), 0)
                + " % of the oil; shaken in, it comes back as haze. Drawn off, it takes along:");
        Table table = new Table().text("").figure("% of it").figure("% lost");
        ring.parts().stream()
                .limit(MOST_PARTS)
                .forEach(part -> table.row(
                        part.name(),
                        Figure.decimals(100.0 * part.share(), 1),
                        Figure.decimals(100.0 * part.lost(), 1)));
        page.table(table);
        if (ring.odour() != null) {
            page.paragraph("Of the smell, by contents over thresholds, "
                    + Figure.decimals(100.0 * ring.odour().lost(), 0)
                    + " % goes with it; thresholds are known for "
                    + Figure.decimals(100.0 * ring.odour().known(), 0)
                    + " % of the oil, most of them in water.");
        }
    }

    private static Table path(MixingPath path) {
        Table table = new Table().text("").figure("oil load").figure("% vol").text("");
        for (MixingPath.Stop stop : path.stops()) {
            Clarity clarity = stop.clarity();
            table.row(
                    stop.step().what(),
                    Figure.decimals(clarity.load(), 2),
                    Figure.decimals(clarity.medium().strength(), 1),
                    clarity.verdict().label());
        }
        return table;
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.core.liquid.Figure.ACIDITY;
import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.SUGAR;
import static org.stillroom.core.liquid.Figure.VOLUME_20C;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.plan.Correction.Way;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.CorrectBatch.Found;
import org.stillroom.studio.usecase.CorrectBatch.Kind;

/** Tells the ways to correct a batch. */
final class CorrectionTold {
    private static final Shape.Key ADD = new Shape.Key(
            "add",
            new Shape.ListOf(Shape.group(
                    Shape.text("what", "what to add"),
                    Shape.number("mass_g", "g"),
                    Shape.number("volume_20c_ml", "mL at 20 °C by itself, of solids dissolved"))));
    private static final Shape.Key RESULT = new Shape.Key(
            "result",
            Shape.group(
                    Shape.number(VOLUME_20C.key(), "mL at 20 °C"),
                    Shape.number(STRENGTH.key(), "% vol at 20 °C"),
                    Shape.number(SUGAR.key(), "g/L at 20 °C"),
                    Shape.number(ACIDITY.key(), "g/L at 20 °C"),
                    Shape.number("strength_doubt_vol_percent", "half-width of the central 90 %, % vol"),
                    Shape.number("sugar_doubt_g_per_l", "half-width of the central 90 %, g/L")));

    static final List<Shape.Key> FURTHER = List.of(
            new Shape.Key("good_enough", new Shape.Flag("whether the batch lies on its target within its doubt")),
            ADD,
            RESULT,
            new Shape.Key(
                    "ways",
                    new Shape.ListOf(Shape.group(
                            Shape.text("way", "which"),
                            new Shape.Key("reached", new Shape.Flag("whether it lands on the target")),
                            ADD,
                            RESULT,
                            Shape.number("drawn_off_ml", "mL of the batch to take out first"),
                            Shape.number("flavour_percent", "what aroma keeps of its concentration"),
                            Shape.number(
                                    "extract_percent",
                                    "more of each extract, in per cent of what went in, that restores it")))));

    /** Less acid than this goes unsaid, g/L as citric. */
    private static final double TASTELESS = 0.005;

    private CorrectionTold() {}

    static Told told(String heading, Found found) {
        Told told = new Told(heading)
                .put("good_enough", found.goodEnough())
                .put("add", added(found.least()))
                .put("result", result(found.least()));
        List<Fields> ways = new ArrayList<>();
        for (Map.Entry<Kind, Way> each : found.ways().entrySet()) {
            Way way = each.getValue();
            ways.add(new Fields()
                    .put("way", each.getKey().label())
                    .put("reached", way.reached())
                    .put("add", added(way))
                    .put("result", result(way))
                    .put("drawn_off_ml", way.drawnOff())
                    .put("flavour_percent", 100.0 * way.flavour())
                    .put("extract_percent", extract(way)));
            told.section(heading(each.getKey(), way), sentences(way, found.restores()));
        }
        return told.put("ways", ways).findings(found.findings());
    }

    private static List<Fields> added(Way way) {
        return way.added().stream()
                .map(each -> new Fields()
                        .put("what", each.addition().name())
                        .put("mass_g", each.grams())
                        .put("volume_20c_ml", each.millilitres()))
                .toList();
    }

    private static Fields result(Way way) {
        Essentials result = way.essentials();
        return new Fields()
                .put(VOLUME_20C.key(), result.millilitres())
                .put(STRENGTH.key(), result.strength())
                .put(SUGAR.key(), result.sugar())
                .put(ACIDITY.key(), result.acidity())
                .put("strength_doubt_vol_percent", way.doubt().getOrDefault(Asked.STRENGTH, 0.0))
                .put("sugar_doubt_g_per_l", way.doubt().getOrDefault(Asked.SUGAR, 0.0));
    }

    /** Returns what aroma lacks then, in per cent of the extracts that went in. */
    private static double extract(Way way) {
        return 100.0 * (1.0 / way.flavour() - 1.0);
    }

    private static String heading(Kind kind, Way way) {
        String label = kind.label();
        String capital = label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
        return capital + (way.reached() ? "" : ": the nearest that it reaches");
    }

    private static List<String> sentences(Way way, boolean restored) {
        List<String> sentences = new ArrayList<>();
        if (way.drawnOff() > 0.0) {
            sentences.add("Draw off " + QuantityWords.fixed(way.drawnOff(), 0) + " mL first.");
        }
        way.added().forEach(each -> sentences.add("Add " + words(each) + "."));
        if (way.added().isEmpty()) {
            sentences.add(way.reached() ? "Nothing is to be added." : "Nothing of it brings it nearer.");
        }
        Essentials result = way.essentials();
        sentences.add("Then " + QuantityWords.fixed(result.millilitres(), 0) + " mL at 20 °C of "
                + QuantityWords.fixed(result.strength(), 2) + within(way, Asked.STRENGTH, 2) + " % vol"
                + (result.acidity() < TASTELESS ? " and " : ", ")
                + QuantityWords.fixed(result.sugar(), 1) + within(way, Asked.SUGAR, 1) + " g/L of sugar"
                + (result.acidity() < TASTELESS
                        ? "."
                        : " and " + QuantityWords.fixed(result.acidity(), 2) + " g/L of acid."));
        if (extract(way) >= 0.5 && !restored) {
            sentences.add("Aroma thins to " + QuantityWords.fixed(100.0 * way.flavour(), 0)
                    + " %: for each 100 mL of an extract that went in, " + QuantityWords.fixed(extract(way), 1)
                    + " mL more restore it, and add their own strength and water.");
        }
        return sentences;
    }

    private static String words(Added added) {
        double grams = added.grams();
        String mass =
                QuantityWords.fixed(grams, 1) + " g of " + added.addition().name();
        return added.addition().isSolid()
                ? mass
                : mass + " (" + QuantityWords.fixed(added.millilitres(), 1) + " mL at 20 °C)";
    }

    private static String within(Way way, Asked asked, int decimals) {
        double half = way.doubt().getOrDefault(asked, 0.0);
        return half > 0.0 ? " ± " + QuantityWords.fixed(half, decimals) : "";
    }
}

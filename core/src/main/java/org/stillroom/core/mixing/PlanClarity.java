package org.stillroom.core.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.CompositionDoubt;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.clarity.Remedies;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.OilPart;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What a plan says of its oils: nothing where they stay dissolved, else how it will look and what would help. */
public final class PlanClarity {
    /** Below this chance of being clear it is worth a word though the typical figures say clear. */
    private static final double LIKELY = 0.75;

    private PlanClarity() {}

    /** Returns all of the plan's lines together, with what is known of their oils. */
    public static Contents liquid(Plan plan) {
        return liquid(plan.lines());
    }

    static Contents liquid(List<PlannedLine> lines) {
        Contents liquid = Contents.NONE;
        for (PlannedLine line : lines) {
            liquid = liquid.plus(line.ingredient().perGram().times(line.grams()));
        }
        return liquid;
    }

    /**
     * Returns how far the constituents of the lines' oils may lie from typical: by the analyses of the lots, else by what is published
     * of each oil; what comes by a stage, by the oils of the stage.
     *
     * @param lots what analyses say of the oil of an ingredient, as {@link AnalysedPlan} takes it
     */
    public static CompositionDoubt composition(Plan plan, Function<String, Map<String, Span>> lots) {
        CompositionDoubt doubt = new CompositionDoubt();
        gather(plan, 1.0, lots, doubt);
        return doubt;
    }

    private static void gather(
            Plan plan, double factor, Function<String, Map<String, Span>> lots, CompositionDoubt doubt) {
        for (PlannedLine line : plan.lines()) {
            double oil = factor * line.grams() * line.ingredient().perGram().grams(Substance.OIL);
            if (oil > 0.0) {
                Plan stage = stage(plan, line);
                if (stage == null) {
                    add(line, oil, lots.apply(line.ingredient().name()), doubt);
                } else {
                    gather(stage, oil / liquid(stage).grams(Substance.OIL), lots, doubt);
                }
            }
        }
    }

    private static @Nullable Plan stage(Plan plan, PlannedLine line) {
        return plan.stages().stream()
                .filter(stage -> stage.ingredient().equals(line.name()))
                .map(Plan.StagePlan::plan)
                .filter(stage -> liquid(stage).grams(Substance.OIL) > 0.0)
                .findFirst()
                .orElse(null);
    }

    private static void add(PlannedLine line, double oil, Map<String, Span> analysed, CompositionDoubt doubt) {
        if (!analysed.isEmpty()) {
            doubt.add(line.ingredient().name(), analysed, oil);
            return;
        }
        for (OilPart part : line.ingredient().oilParts()) {
            EssentialOil known = part.oil();
            if (known != null) {
                doubt.add(known, oil * part.part());
            } else if (part.constituent() != null) {
                doubt.add(part.constituent().cas(), oil * part.part());
            }
        }
    }

    /**
     * Returns the names of lines that may bring oil of which the recipe does not say how much: it is not in the forecast.
     */
    public static List<String> notCounted(Plan plan) {
        return plan.lines().stream()
                .filter(line ->
                        line.grams() > 0.0 && mayHoldOil(line.ingredient().kind()))
                .filter(line -> line.ingredient().perGram().grams(Substance.OIL) == 0.0)
                .map(PlannedLine::name)
                .distinct()
                .toList();
    }

    private static boolean mayHoldOil(Kind kind) {
        return switch (kind) {
            case ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, FRESH_PLANT, DRIED_PLANT, LIQUEUR -> true;
            case SPIRIT, WINE, ESSENTIAL_OIL, SUGAR, SYRUP, HONEY, JUICE, ACID, SALT -> false;
            case GLYCEROL, DAIRY, EGG, WATER, OTHER -> false;
        };
    }

    /** Returns the findings of a plan; none where no line says that it holds oil. */
    public static List<Finding> findings(Plan plan, Doubts doubts) {
        Contents liquid = liquid(plan);
        boolean wet = liquid.grams(Substance.ETHANOL) + liquid.grams(Substance.WATER) > 0.0;
        if (!wet || liquid.grams(Substance.OIL) == 0.0) {
            return List.of();
        }
        Clarity clarity = Clarity.of(liquid, Temperature.TWENTY_CELSIUS, doubts);
        List<Finding> findings = new ArrayList<>();
        if (clarity.verdict() != Verdict.CLEAR || clarity.chances().clear() < LIKELY) {
            findings.add(looks(clarity));
        }
        List<String> notCounted = notCounted(plan);
        if (!notCounted.isEmpty()) {
            findings.add(Finding.of(
                    "oil-not-counted",
                    Severity.NOTE,
                    String.join(", ", notCounted),
                    "not known",
                    "How much oil it brings is not said, so clouding by it is not forecast.",
                    "Write it where you know it, such as contains: {oil: 5 g/L}."));
        }
        return List.copyOf(findings);
    }

    private static Finding looks(Clarity clarity) {
        Verdict verdict = clarity.verdict();
        String likely = verdict == Verdict.CLEAR ? "probably clear" : verdict.label();
        return new Finding(
                "oil-clouding",
                verdict == Verdict.CLOUDY ? Severity.CAUTION : Severity.NOTE,
                "clarity",
                "",
                likely,
                "At 20 °C it will be " + likely + ": its oils come to " + QuantityWords.fixed(clarity.load(), 2)
                        + " times what it can dissolve, " + clarity.leading() + " most of all" + estimated(clarity)
                        + ".",
                chances(clarity) + "; most in doubt from the "
                        + clarity.chances().from().get(0).what().label(),
                remedy(clarity),
                "an oil load below 0.7",
                Source.CLARITY_MODEL);
    }

    private static String estimated(Clarity clarity) {
        return clarity.estimated().isEmpty()
                ? ""
                : "; estimated for want of data: " + String.join(", ", clarity.estimated());
    }

    /** Returns how likely each look is, in words. */
    public static String chances(Clarity clarity) {
        return "clear " + percent(clarity.chances().clear()) + ", hazy "
                + percent(clarity.chances().hazy()) + ", cloudy "
                + percent(clarity.chances().cloudy());
    }

    private static String percent(double part) {
        if (part < 0.01) {
            return "below 1 %";
        }
        return part > 0.99 ? "above 99 %" : QuantityWords.fixed(100.0 * part, 0) + " %";
    }

    private static String remedy(Clarity clarity) {
        if (clarity.verdict() == Verdict.CLEAR) {
            return "Nothing is needed; a little more strength makes sure.";
        }
        List<String> ways = new ArrayList<>();
        OptionalDouble strength = Remedies.clearFrom(clarity.oils(), clarity.medium());
        strength.ifPresent(percent -> ways.add("about " + QuantityWords.fixed(Math.ceil(percent), 0) + " % vol"));
        OptionalDouble oil = Remedies.mostOil(clarity.oils(), clarity.medium());
        oil.ifPresent(grams -> ways.add("at most " + QuantityWords.fixed(grams, 2) + " g/L of this oil in place of "
                + QuantityWords.fixed(clarity.oils().gramsPerLitre(), 2)));
        return (ways.isEmpty() ? "" : "Clear by the forecast: " + String.join(", or ", ways) + ". ")
                + "Or accept it, and shake before pouring.";
    }
}

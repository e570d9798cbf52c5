package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.drops.DropWeighings;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.OilLimits;
import org.stillroom.core.safety.Rules;

/** Tells what a drop weighs: by the maker's own weighings, else by the official dropper; and restates a dose by it. */
public final class WeighDrops {
    /** A weighed drop this many times heavier or lighter than the official one is asked about; bottle lips double it. */
    private static final double UNLIKELY = 2.5;

    private static final double TEN = 10.0;

    private static final String UNLIKELY_DROP = "drop-unlikely";

    /** Drops of a run from which a pocket scale tells their weight to a few per cent. Common practice, no source. */
    private static final int FEW = 20;

    /** Half a drop of fewer is more than a tenth of them. Common practice, no source. */
    private static final double FEWEST = 5.0 * (1.0 - 1e-9);

    /** A dose of a dilution weighs so much at least, g, so that a pocket scale shows it to 10 %. Common practice, no source. */
    private static final double WEIGHABLE = 0.1;

    /** So far one dilution goes; a second takes it as far again. Common practice, no source. */
    private static final int ONE_STEP = 1000;

    private static final int MOST_DILUTED = ONE_STEP * ONE_STEP;

    private WeighDrops() {}

    /**
     * The question.
     *
     * @param liquid what drops; its density may be unknown
     * @param oil what the maker calls it where it is an oil or may be one, or null
     * @param weighings the maker's own, or null
     * @param own the maker's dropper by its drop of water, or null; other drops follow by their surface tension
     * @param dose an amount to restate, or null
     * @param batch the finished liquid that the dose goes into, or null
     * @param grounds what an oil is judged on
     */
    public record Asked(
            DropLiquid liquid,
            @Nullable String oil,
            @Nullable DropWeighings weighings,
            @Nullable OwnDropper own,
            @Nullable Amount dose,
            @Nullable Volume batch,
            Grounds grounds) {}

    /**
     * The drop.
     *
     * @param dropMass mg
     * @param withoutOdd the same without the weighings that do not go with the others, or null where all do or none
     * @param dropsPerMillilitre or null where the density is not known
     * @param spread how far drops differ, % of the mean: between weighed runs, else as the rule allows
     * @param dose the dose restated, or null
     * @param unlikely what speaks against the figures as a whole, to be told before them, or null
     * @param findings where the figures come from, and what is odd about the weighings
     */
    public record Found(
            Estimate dropMass,
            @Nullable Estimate withoutOdd,
            @Nullable Estimate dropsPerMillilitre,
            Estimate spread,
            @Nullable Restated dose,
            @Nullable Finding unlikely,
            List<Finding> findings) {}

    /**
     * One dose in every unit.
     *
     * @param drops count
     * @param grams mass
     * @param millilitres volume near 20 °C, or null where the density is not known
     * @param milligramsPerLitre of the batch, or null where none was named
     */
    public record Restated(
            Estimate drops,
            Estimate grams,
            @Nullable Estimate millilitres,
            @Nullable Estimate milligramsPerLitre) {
        /** Returns the volume in µL, or null where the density is not known. */
        public @Nullable Estimate microlitres() {
            return millilitres == null
                    ? null
                    : new Estimate(1000.0 * millilitres.value(), 1000.0 * millilitres.doubt());
        }
    }

    /**
     * Returns the drop.
     *
     * @throws Impossible when a volume is asked of a liquid whose density is not known
     */
    public static Found answer(Asked asked, Workings workings) {
        DropLiquid liquid = asked.liquid();
        DropWeighings weighings = asked.weighings();
        OwnDropper own = asked.own();
        double byRule = liquid.gramsPerDrop() * (own == null ? 1.0 : own.times());
        workings.step(
                own == null ? "drop by the official dropper" : "drop by the drop of water from this dropper",
                1000.0 * byRule,
                "mg",
                Source.SURFACE_TENSION);
        double grams = weighings == null ? byRule : weighings.gramsPerDrop();
        double part = weighings != null
                ? weighings.doubt()
                : own == null ? OfficialDropper.RELATIVE_DOUBT : own.doubtOfOthers();
        workings.step("drop", 1000.0 * grams, "mg", weighings == null ? Source.SURFACE_TENSION : Source.BALANCE);
        Estimate drop = new Estimate(grams, part * grams);
        Amount dose = asked.dose();
        Restated restated = dose == null ? null : restated(dose, liquid, drop, asked.batch());
        return new Found(
                new Estimate(1000.0 * drop.value(), 1000.0 * drop.doubt()),
                weighings == null ? null : withoutOdd(weighings),
                perMillilitre(liquid, drop),
                spread(weighings, own),
                restated,
                weighings == null ? null : unlikely(liquid, weighings.gramsPerDrop(), "weighing 1"),
                findings(asked, restated));
    }

    private static @Nullable Estimate withoutOdd(DropWeighings weighings) {
        return weighings
                .consistent()
                .map(kept -> new Estimate(1000.0 * kept.gramsPerDrop(), 1000.0 * kept.gramsPerDrop() * kept.doubt()))
                .orElse(null);
    }

    /** Where it was not measured it is what a rule allows, and nothing tells how far that is off. */
    private static Estimate spread(@Nullable DropWeighings weighings, @Nullable OwnDropper own) {
        if (weighings == null) {
            return Estimate.inDoubtNotTold(
                    100.0 * (own == null ? OfficialDropper.RELATIVE_DOUBT : OfficialDropper.ALLOWANCE));
        }
        OptionalDouble measured = weighings.spread();
        return measured.isPresent()
                ? new Estimate(100.0 * measured.getAsDouble(), 100.0 * weighings.spreadDoubt())
                : Estimate.inDoubtNotTold(100.0 * OfficialDropper.ALLOWANCE);
    }

    private static @Nullable Estimate perMillilitre(DropLiquid liquid, Estimate drop) {
        Material.Range density = liquid.density();
        if (density == null) {
            return null;
        }
        double count = density.middle() / drop.value();
        double part = Math.hypot(drop.doubt() / drop.value(), relative(density));
        return new Estimate(count, part * count);
    }

    private static double relative(Material.Range density) {
        return 0.5 * (density.high() - density.low()) / density.middle();
    }

    private static Restated restated(Amount dose, DropLiquid liquid, Estimate drop, @Nullable Volume batch) {
        Material.Range density = liquid.density();
        double ofDrop = drop.doubt() / drop.value();
        double grams;
        double part;
        if (dose instanceof Drops drops) {
            grams = drops.count() * drop.value();
            part = ofDrop;
        } else if (dose instanceof Mass mass) {
            grams = mass.grams();
            part = 0.0;
        } else if (density == null) {
            throw new Impossible(
                    "dose",
                    "the density of " + liquid.name() + " is not known.",
                    "Give its density, or the dose by mass or in drops.");
        } else {
            grams = ((Volume) dose).millilitres() * density.middle();
            part = relative(density);
        }
        double count = grams / drop.value();
        double ofCount = dose instanceof Drops ? 0.0 : Math.hypot(part, ofDrop);
        return new Restated(
                new Estimate(count, ofCount * count),
                new Estimate(grams, part * grams),
                density == null ? null : millilitres(dose, grams, part, density),
                batch == null
                        ? null
                        : new Estimate(1000.0 * grams / batch.litres(), part * 1000.0 * grams / batch.litres()));
    }

    private static Estimate millilitres(Amount dose, double grams, double part, Material.Range density) {
        double millilitres = grams / density.middle();
        double ofVolume = dose instanceof Volume ? 0.0 : Math.hypot(part, relative(density));
        return new Estimate(millilitres, ofVolume * millilitres);
    }

    private static List<Finding> findings(Asked asked, @Nullable Restated dose) {
        List<Finding> findings = new ArrayList<>();
        DropLiquid liquid = asked.liquid();
        if (asked.oil() != null) {
            // What a law or the house stops asks for care here, where nothing is poured; what nobody is to drink of
            // stops.
            OilLimits.told(List.of(asked.oil()), asked.grounds())
                    .forEach(each -> findings.add(Rules.isNotForDrinking(each) ? each : each.withoutStop()));
        }
        if (asked.weighings() != null) {
            findings.addAll(ofWeighings(asked.weighings()));
        } else {
            findings.add(asked.own() == null ? byRule() : byWater());
        }
        if (liquid.oil() != null) {
            findings.add(liquid.oil().told(liquid.name()));
        }
        if (dose != null && dose.drops().value() > 0.0 && dose.drops().value() < FEWEST) {
            findings.add(tooFew(dose));
        }
        if (dose != null && dose.milligramsPerLitre() != null) {
            double gramsPerLitre = dose.milligramsPerLitre().value() / 1000.0;
            Slips.ofDose(liquid.name(), asked.dose(), gramsPerLitre).ifPresent(findings::add);
            if (asked.oil() != null && gramsPerLitre > 0.0) {
                AmountLimits.of(Map.of(asked.oil(), gramsPerLitre), asked.grounds())
                        .forEach(each -> findings.add(each.withoutStop()));
            }
        }
        return findings;
    }

    private static Finding tooFew(Restated dose) {
        double grams = dose.grams().value();
        double drops = dose.drops().value();
        int oneIn = 10;
        while (oneIn < MOST_DILUTED && oneIn * grams < WEIGHABLE) {
            oneIn *= 10;
        }
        return new Finding(
                "dose-too-small",
                Severity.CAUTION,
                "dose",
                "",
                "too small to repeat",
                (drops < 1.0
                                ? "It is " + QuantityWords.fixed(drops, digits(drops)) + " drops"
                                : "Half a drop is " + QuantityWords.fixed(50.0 / drops, 0) + " % of "
                                        + QuantityWords.fixed(drops, 1) + " drops")
                        + ", and drops cannot be split: a dose so small cannot be repeated to 10 %.",
                "",
                oneIn * grams < WEIGHABLE
                        ? "No kitchen scale weighs so little, diluted a thousandfold twice: look at the unit."
                        : dilution(oneIn) + ", and weigh " + QuantityWords.fixed(oneIn * grams, 2)
                                + " g of that; or count its drops once you have weighed them.",
                "10 %",
                Source.TRADE);
    }

    private static int digits(double below1) {
        return Math.min(9, (int) Math.ceil(1.0 - Math.log10(below1)));
    }

    private static String dilution(int oneIn) {
        return oneIn <= ONE_STEP
                ? "Dilute it in strong spirit first, 1 g made up to " + oneIn + " g"
                : "Dilute it in strong spirit twice, 1 g made up to " + ONE_STEP + " g and 1 g of that made up to "
                        + oneIn / ONE_STEP + " g";
    }

    private static List<Finding> ofWeighings(DropWeighings weighings) {
        List<Finding> findings = new ArrayList<>();
        int runs = weighings.grams().size();
        findings.add(note(
                "drop-weighed",
                runs >= DropWeighings.ENOUGH
                        ? "Mean and spread are those of your " + runs + " weighings."
                        : "The drop is weighed; how far drops differ is the official allowance of 10 %, not measured.",
                runs >= DropWeighings.ENOUGH ? "" : "Weigh three runs or more and the spread is your dropper's own."));
        if (weighings.count() < FEW) {
            findings.add(note(
                    "few-drops",
                    "A run of " + QuantityWords.metric(new Drops(weighings.count()))
                            + " weighs little beside what a scale may be off by.",
                    "Count 20 to 50 drops into each run."));
        }
        strange(weighings, findings);
        return findings;
    }

    private static Finding note(String rule, String message, String remedy) {
        return Finding.of(rule, Severity.NOTE, "", "", message, remedy);
    }

    private static Finding byWater() {
        return new Finding(
                "drop-by-water",
                Severity.NOTE,
                "",
                "",
                "estimated",
                "The drop is that of your own dropper: its drop of water, by the ratio of the surface tensions.",
                "Within 10 %.",
                "Weigh 20 to 50 drops of this very liquid where it matters.",
                null,
                Source.SURFACE_TENSION);
    }

    private static Finding byRule() {
        return new Finding(
                "drop-by-rule",
                Severity.NOTE,
                "",
                "",
                "estimated",
                "The drop is that of the official dropper, by surface tension; bottle lips and inserts give up to twice as much.",
                "Within 10 % for the official dropper, within 30 % for ordinary ones.",
                "Weigh 20 to 50 drops of your own dropper, three times.",
                null,
                Source.SURFACE_TENSION);
    }

    private static void strange(DropWeighings weighings, List<Finding> findings) {
        weighings.inconsistent().forEach(run -> findings.add(inconsistent(run, weighings)));
    }

    static Finding inconsistent(int run, DropWeighings weighings) {
        return Finding.of(
                "drops-inconsistent",
                Severity.CAUTION,
                "weighing " + run,
                "inconsistent",
                QuantityWords.plain(weighings.grams().get(run - 1))
                        + " g lie more than 5 % from the middle weighing, and count in the mean."
                        + weighings
                                .consistent()
                                .map(kept ->
                                        " Without what does so, a drop weighs " + milligrams(kept.gramsPerDrop()) + ".")
                                .orElse(" Which weighing is wrong, these do not tell."),
                "Weigh this run again: count aloud, keep the dropper upright, let drops fall by themselves. To leave it out,"
                        + " do not type it.");
    }

    /** Returns whether a finding asks whether a drop weighs what was said. */
    public static boolean isUnlikely(Finding finding) {
        return finding.rule().equals(UNLIKELY_DROP);
    }

    /** Returns what speaks against the weight of a drop, g, or null where it is not far from that of the official dropper. */
    public static @Nullable Finding unlikely(DropLiquid liquid, double grams, String where) {
        double times = grams / liquid.gramsPerDrop();
        if (isUsual(times)) {
            return null;
        }
        return Finding.of(
                UNLIKELY_DROP,
                Severity.CAUTION,
                where,
                "is this meant?",
                "A drop of " + liquid.name() + " would weigh " + milligrams(grams)
                        + "; from the official dropper it weighs about " + milligrams(liquid.gramsPerDrop()) + ".",
                bySlipOfTen(times) + "Look whether the count is right, the scale was tared, and grams were meant.");
    }

    private static String bySlipOfTen(double times) {
        if (isUsual(times / TEN)) {
            return "A tenth of it would be usual: look at the decimal point. ";
        }
        return isUsual(times * TEN) ? "Ten times as much would be usual: look at the decimal point. " : "";
    }

    private static boolean isUsual(double times) {
        return times < UNLIKELY && times > 1.0 / UNLIKELY;
    }

    private static String milligrams(double grams) {
        return QuantityWords.fixed(1000.0 * grams, 1) + " mg";
    }
}

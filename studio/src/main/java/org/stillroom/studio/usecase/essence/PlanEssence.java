package org.stillroom.studio.usecase.essence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.OilLimits;
import org.stillroom.core.safety.Safety;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.Essence;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.planner.drops.PreDilution;
import org.stillroom.planner.drops.WholeDrops;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.usecase.AmountLimits;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.WeighDrops;

/** Plans an essence in whole drops: how large to make it so that proportions, doses and drops come out even. */
public final class PlanEssence {
    private static final int CHOICES = 5;
    /** Half a mark of a dose above this part of it is too coarse. Common practice, no source. */
    private static final double REPEATABLE = 0.10;

    private final EssenceSheet sheet;
    private final Contents carrier;
    private final Grounds grounds;
    private final List<Finding> findings = new ArrayList<>();

    private PlanEssence(EssenceSheet sheet, Grounds grounds) {
        this.sheet = sheet;
        this.grounds = grounds;
        this.carrier = MadeUp.spirit(sheet.carrier().value());
    }

    /**
     * The plan.
     *
     * @param title what the maker calls it
     * @param batch how much liqueur is made at a time, mL
     * @param asked the essence as the search saw it
     * @param choices best first
     * @param manifold the essence for the fewest batches where one batch alone does not come out whole, or null
     * @param preDilution how to dose a single batch, or null where whole drops do without or no dilution comes nearer
     * @param findings what to know, what weighs most first
     */
    public record Found(
            String title,
            double batch,
            Essence asked,
            List<Made> choices,
            @Nullable Choice manifold,
            @Nullable Dilutions preDilution,
            List<Finding> findings) {
        public Found {
            choices = List.copyOf(choices);
            findings = findings.stream()
                    .sorted(Comparator.comparing(Finding::severity).reversed())
                    .toList();
        }

        /** Returns what is read before the drops are: what stops it, and what is hardly meant. */
        public List<Finding> before() {
            return findings.stream().filter(Found::isFirst).toList();
        }

        /** Returns what else is to know. */
        public List<Finding> after() {
            return findings.stream().filter(finding -> !isFirst(finding)).toList();
        }

        private static boolean isFirst(Finding finding) {
            return finding.severity() == Severity.STOP || Slips.isOpen(finding) || WeighDrops.isUnlikely(finding);
        }

        /** Returns whether an oil of it must not go into a drink, so that it is neither put on the shelf nor handed on as a recipe. */
        public boolean isStopped() {
            return findings.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
        }
    }

    /**
     * Oils that are diluted first.
     *
     * @param how which, and how they are counted
     * @param isCarrier whether they are made up with the carrier; else with a stronger spirit, for in it they would not stay dissolved
     * @param strength of what they are made up with, % vol at 20 °C
     * @param density of it, g/mL at 20 °C
     */
    public record Dilutions(PreDilution how, boolean isCarrier, double strength, double density) {}

    /**
     * One way to make it.
     *
     * @param choice drops, batches, errors, what is left over
     * @param essence volume of the whole, mL at 20 °C
     * @param carrier strong spirit that goes into it, mL at 20 °C
     * @param strength of the finished essence, % vol at 20 °C
     * @param oils g/L of each oil, in the order asked
     * @param constituents g/L of each constituent that is known, by CAS number
     * @param contents of all of it
     */
    public record Made(
            Choice choice,
            double essence,
            double carrier,
            double strength,
            List<Double> oils,
            Map<String, Double> constituents,
            Contents contents) {}

    /**
     * Returns the plan.
     *
     * @param grounds what is known of oils, and the rules of the house
     * @throws Impossible when the essence cannot be asked so
     */
    public static Found answer(EssenceSheet sheet, Grounds grounds, Workings workings) {
        return new PlanEssence(sheet, grounds).found(workings);
    }

    private Found found(Workings workings) {
        EssenceOils oils = EssenceOils.of(sheet);
        findings.addAll(OilLimits.told(oils.drops().stream().map(OilDrop::name).toList(), grounds));
        if (!oils.byRule().isEmpty()) {
            findings.add(EssenceFindings.byRule(oils.byRule()));
        }
        findings.addAll(oils.told());
        Map<String, Double> inDrink = new LinkedHashMap<>();
        for (OilDrop oil : oils.drops()) {
            double gramsPerLitre = oil.part() * sheet.together().grams();
            Slips.ofDose(oil.name(), null, gramsPerLitre).ifPresent(findings::add);
            inDrink.merge(oil.name(), gramsPerLitre, Double::sum);
        }
        findings.addAll(AmountLimits.of(inDrink, grounds));
        double perBatch = sheet.together().grams() * sheet.batch().litres();
        Essence asked = new Essence(
                oils.drops(), perBatch, dose(), sheet.mark().millilitres(), sheet.tolerance() / 100.0, sheet.batches());
        workings.step("oils in a batch", 1000.0 * perBatch, "mg", Source.BALANCE);
        for (int i = 0; i < asked.oils().size(); i++) {
            workings.step(
                    "drops of " + asked.oils().get(i).name() + " in a batch",
                    asked.dropsPerBatch().get(i),
                    "drops",
                    Source.BALANCE);
        }
        List<Choice> choices = WholeDrops.choices(asked, CHOICES);
        Diluted diluted = Diluted.of(asked, carrier);
        if (choices.isEmpty() && diluted == null) {
            throw new Impossible(
                    "",
                    "no whole drops come anywhere near in " + EssenceFindings.batches(sheet.batches())
                            + ", diluted or not.",
                    "Allow more batches, or make a batch larger.");
        }
        List<FilledEssence> filled = choices.stream()
                .map(choice -> FilledEssence.of(asked, choice, carrier))
                .toList();
        List<Made> made = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            made.add(made(asked, choices.get(i), filled.get(i)));
        }
        Choice smallest = WholeDrops.smallest(asked);
        if (choices.isEmpty()) {
            findings.add(EssenceFindings.dilutedAlone(asked));
        } else {
            tell(asked, choices.get(0), smallest, filled.get(0));
            findings.add(Safety.ofEssence(
                    made.get(0).oils().stream().mapToDouble(each -> each).sum()));
        }
        if (diluted != null) {
            findings.add(EssenceFindings.dilutionByRule(diluted.gramsPerDrop()));
            if (!diluted.isCarrier()) {
                findings.add(EssenceFindings.dilutedInStrong(diluted));
            }
            if (diluted.load() > 1.0) {
                findings.add(EssenceFindings.dilutionNotClear(diluted));
            }
        }
        return new Found(
                sheet.title(),
                sheet.batch().millilitres(),
                asked,
                made,
                smallest == null || smallest.batches() == 1 ? null : smallest,
                diluted == null ? null : diluted.told(),
                findings);
    }

    /** Returns the dose of a batch on the nearest mark, one mark at least; the carrier makes up for the difference. */
    private double dose() {
        double wanted = sheet.dose().millilitres() * sheet.batch().litres();
        double mark = sheet.mark().millilitres();
        double marks = Math.max(1.0, Math.rint(wanted / mark));
        double dose = marks * mark;
        if (Math.abs(dose - wanted) > 1e-9 * wanted) {
            findings.add(EssenceFindings.onMark(dose, wanted));
        }
        if (0.5 * mark > REPEATABLE * dose) {
            findings.add(EssenceFindings.tooSmall(sheet.measure(), dose, mark));
        }
        return dose;
    }

    private Made made(Essence asked, Choice choice, FilledEssence filled) {
        List<Double> perLitre = new ArrayList<>();
        for (int i = 0; i < asked.oils().size(); i++) {
            double grams = choice.drops().get(i) * asked.oils().get(i).gramsPerDrop();
            perLitre.add(1000.0 * grams / filled.millilitres());
        }
        return new Made(
                choice,
                filled.millilitres(),
                filled.carrier(),
                filled.strength(),
                List.copyOf(perLitre),
                filled.constituents(),
                filled.contents());
    }

    /** @param smallest for the fewest batches that keep the tolerance, or null where none does */
    private void tell(Essence asked, Choice best, @Nullable Choice smallest, FilledEssence filled) {
        if (smallest == null || smallest.batches() > 1) {
            findings.add(EssenceFindings.notWhole(asked, smallest == null ? best : smallest));
        }
        if (!best.toleranceKept()) {
            findings.add(EssenceFindings.toleranceNotKept(asked, best));
        }
        double load = filled.load();
        if (load > 1.0) {
            findings.add(EssenceFindings.notClear(filled.strength(), load));
        }
    }
}

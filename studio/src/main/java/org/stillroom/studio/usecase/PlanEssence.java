package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.Essence;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.planner.drops.PreDilution;
import org.stillroom.planner.drops.WholeDrops;
import org.stillroom.studio.recipefile.EssenceSheet;

/** Plans an essence in whole drops: how large to make it so that proportions, doses and drops come out even. */
public final class PlanEssence {
    private static final int CHOICES = 5;
    /** Half a mark of a dose above this part of it is too coarse. Common practice, no source. */
    private static final double REPEATABLE = 0.10;

    private final EssenceSheet sheet;
    private final Contents carrier;
    private final List<Finding> findings = new ArrayList<>();

    private PlanEssence(EssenceSheet sheet) {
        this.sheet = sheet;
        this.carrier = MadeUp.spirit(sheet.carrier().value());
    }

    /**
     * The plan.
     *
     * @param title what the maker calls it
     * @param batch how much liqueur is made at a time, mL
     * @param asked the essence as the search saw it
     * @param choices best first
     * @param preDilution how to dose a single batch, or null where whole drops do without
     * @param findings what to know
     */
    public record Found(
            String title,
            double batch,
            Essence asked,
            List<Made> choices,
            @Nullable PreDilution preDilution,
            List<Finding> findings) {
        public Found {
            choices = List.copyOf(choices);
            findings = List.copyOf(findings);
        }
    }

    /**
     * One way to make it.
     *
     * @param choice drops, batches, errors, what is left over
     * @param essence volume of the whole, mL at 20 °C
     * @param carrier strong spirit that goes into it, mL at 20 °C
     * @param strength of the finished essence, % vol at 20 °C
     * @param oils g/L of each oil, in the order asked
     * @param constituents g/L of each constituent that is known, by CAS number
     */
    public record Made(
            Choice choice,
            double essence,
            double carrier,
            double strength,
            List<Double> oils,
            Map<String, Double> constituents) {}

    /**
     * Returns the plan.
     *
     * @throws Impossible when the essence cannot be asked so
     */
    public static Found answer(EssenceSheet sheet, Workings workings) {
        return new PlanEssence(sheet).found(workings);
    }

    private Found found(Workings workings) {
        List<OilDrop> oils = oils();
        double perBatch = sheet.together().grams() * sheet.batch().litres();
        Essence asked = new Essence(
                oils, perBatch, dose(), sheet.mark().millilitres(), sheet.tolerance() / 100.0, sheet.batches());
        workings.step("oils in a batch", 1000.0 * perBatch, "mg", Source.BALANCE);
        for (int i = 0; i < oils.size(); i++) {
            workings.step(
                    "drops of " + oils.get(i).name() + " in a batch",
                    asked.dropsPerBatch().get(i),
                    "drops",
                    Source.BALANCE);
        }
        List<Choice> choices = WholeDrops.choices(asked, CHOICES);
        if (choices.isEmpty()) {
            throw new Impossible(
                    "",
                    "no whole drops come anywhere near in " + sheet.batches() + " batches.",
                    "Allow more batches, or make a batch larger.");
        }
        List<Made> made = choices.stream().map(choice -> made(asked, choice)).toList();
        tell(asked, made.get(0));
        return new Found(
                sheet.title(),
                sheet.batch().millilitres(),
                asked,
                made,
                PreDilution.of(asked, OfficialDropper.gramsPerDrop(carrier)),
                findings);
    }

    private List<OilDrop> oils() {
        List<Double> grams = new ArrayList<>();
        List<Double> drops = new ArrayList<>();
        List<String> byRule = new ArrayList<>();
        for (EssenceSheet.Oil oil : sheet.oils()) {
            Mass weighed = oil.drop();
            if (weighed == null) {
                byRule.add(oil.name());
            }
            double drop = weighed == null ? liquid(oil).gramsPerDrop() : weighed.grams();
            drops.add(drop);
            grams.add(oil.parts()
                    * switch (sheet.by()) {
                        case MASS -> 1.0;
                        case VOLUME -> density(oil);
                        case DROPS -> drop;
                    });
        }
        if (!byRule.isEmpty()) {
            findings.add(EssenceFindings.byRule(byRule));
        }
        double sum = grams.stream().mapToDouble(each -> each).sum();
        List<OilDrop> oils = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            oils.add(new OilDrop(sheet.oils().get(i).name(), grams.get(i) / sum, drops.get(i)));
        }
        return oils;
    }

    private static DropLiquid liquid(EssenceSheet.Oil oil) {
        DropLiquid known = DropLiquid.named(oil.name());
        return known == null ? DropLiquid.oil(oil.name()) : known;
    }

    private static double density(EssenceSheet.Oil oil) {
        Density own = oil.density();
        if (own != null) {
            return own.kilogramsPerCubicMetre() / 1000.0;
        }
        Material.Range range = liquid(oil).density();
        if (range == null) {
            throw new Impossible(
                    oil.name(),
                    "its density is not known, and the parts are by volume.",
                    "Give its density, such as 0.9 g/ml.");
        }
        return range.middle();
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

    private Made made(Essence asked, Choice choice) {
        Contents oils = Contents.NONE;
        double volume = choice.essenceMillilitres(asked);
        List<Double> perLitre = new ArrayList<>();
        for (int i = 0; i < asked.oils().size(); i++) {
            double grams = choice.drops().get(i) * asked.oils().get(i).gramsPerDrop();
            oils = oils.plus(oil(asked.oils().get(i).name(), grams));
            perLitre.add(1000.0 * grams / volume);
        }
        Contents essence = filled(oils, volume);
        double spirit = essence.grams(Substance.ETHANOL) / carrier.grams(Substance.ETHANOL);
        Map<String, Double> constituents = new TreeMap<>();
        essence.aroma().forEach((cas, grams) -> constituents.put(cas, 1000.0 * grams / volume));
        return new Made(
                choice,
                volume,
                1000.0 * spirit,
                Essentials.of(essence.toGrams()).strength(),
                List.copyOf(perLitre),
                constituents);
    }

    private static Contents oil(String name, double grams) {
        Contents oil = Contents.of(Substance.OIL, grams);
        EssentialOil known = EssentialOils.find(name);
        return known == null ? oil : oil.knowingOil(known.shares());
    }

    /** Returns the oils with so much carrier that both together fill the volume. */
    private Contents filled(Contents oils, double volume) {
        VolumeModel model = VolumeModel.atTwenty();
        if (!(carrier.grams(Substance.ETHANOL) > 0.0)) {
            throw new Impossible("carrier", "oils do not dissolve in water.", "Take strong spirit, such as 96 %.");
        }
        if (model.millilitres(oils.toGrams()) > 0.5 * volume) {
            throw new Impossible(
                    "dose",
                    EssenceFindings.millilitres(volume) + " of essence would be more than half oil.",
                    "Dose more of it: a larger “dose” makes a weaker essence.");
        }
        double litres = volume
                / 1000.0
                * Root.of(part -> model.millilitres(
                                oils.plus(carrier.times(part * volume / 1000.0)).toGrams())
                        - volume);
        return oils.plus(carrier.times(litres));
    }

    private void tell(Essence asked, Made best) {
        boolean whole = best.choice().batches() == 1 && best.choice().toleranceKept();
        if (!whole) {
            findings.add(EssenceFindings.notWhole(asked, best.choice()));
        }
        if (!best.choice().toleranceKept()) {
            findings.add(EssenceFindings.toleranceNotKept(asked, best.choice()));
        }
        Contents oils = Contents.NONE;
        for (int i = 0; i < asked.oils().size(); i++) {
            oils = oils.plus(oil(asked.oils().get(i).name(), best.oils().get(i) / 1000.0 * best.essence()));
        }
        Contents essence = filled(oils, best.essence());
        double load = Oils.of(essence).load(Medium.of(essence, Temperature.TWENTY_CELSIUS));
        if (load > 1.0) {
            findings.add(EssenceFindings.notClear(best.strength(), load));
        }
    }
}

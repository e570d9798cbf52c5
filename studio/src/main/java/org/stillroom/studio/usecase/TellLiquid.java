package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.blend.Blend;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells every figure of a liquid from what went into it. */
public final class TellLiquid {
    private TellLiquid() {}

    /**
     * What went in.
     *
     * @param substances by mass; ethanol and water also by volume, measured pure at 20 °C
     * @param invert invert sugar, half glucose and half fructose
     * @param oils aroma oil by the name of its constituent
     * @param temperature at which density and volume are wanted, −20 to 40 °C
     */
    public record Asked(
            Map<Substance, Amount> substances, Mass invert, Map<String, Mass> oils, Temperature temperature) {
        public Asked {
            substances = Map.copyOf(substances);
            oils = Map.copyOf(oils);
        }
    }

    /**
     * What is told.
     *
     * @param figures of the liquid
     * @param contraction volumes at 20 °C of what went in, each pure, less that of the liquid, mL
     * @param warming when all are mixed at 20 °C and no heat is lost, °C; dissolving solids, which cools a little, is left out
     * @param findings what to know about them
     */
    public record Found(Figures figures, Estimate contraction, Estimate warming, List<Finding> findings) {
        public Found {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Returns the figures.
     *
     * @throws Impossible when there is nothing in it, or outside the range of temperature
     */
    public static Found answer(Asked asked, Workings workings) {
        Range.refuseOutside(asked.temperature());
        Contents contents = contents(asked, workings);
        if (contents.total() == 0.0) {
            throw new Impossible(
                    "",
                    "there is nothing in this liquid.",
                    "Give what is in it, such as 300 g of ethanol and 600 g of water.");
        }
        Figures figures = Liquid.figures(contents, asked.temperature(), workings);
        Blend blend = Blend.of(apart(contents));
        workings.step("contraction", blend.contraction(), "mL at 20 °C", Source.VOLUME_MODEL);
        workings.step("warming, if no heat is lost", blend.warming().value(), "°C", Source.LARKIN_1975);
        List<Finding> findings = new ArrayList<>(figures.findings());
        findings.addAll(unknownOils(asked));
        Estimate contraction = new Estimate(blend.contraction(), figures.doubt(Figure.VOLUME_20C));
        return new Found(figures, contraction, blend.warming(), findings);
    }

    private static List<Contents> apart(Contents contents) {
        List<Contents> apart = new ArrayList<>();
        for (Substance substance : Substance.values()) {
            if (contents.grams(substance) > 0.0) {
                apart.add(Contents.of(substance, contents.grams(substance)));
            }
        }
        return apart;
    }

    private static Contents contents(Asked asked, Workings workings) {
        Contents contents = Contents.NONE;
        for (Substance substance : Substance.values()) {
            Amount amount = asked.substances().getOrDefault(substance, new Mass(0.0));
            contents = contents.with(substance, grams(substance, amount, workings));
        }
        double half = asked.invert().grams() / 2;
        contents = contents.plus(Contents.of(Substance.GLUCOSE, half).with(Substance.FRUCTOSE, half));
        for (Map.Entry<String, Mass> oil : asked.oils().entrySet()) {
            contents = plusOil(contents, oil.getKey(), oil.getValue());
        }
        return contents;
    }

    /** A constituent is kept under its CAS number; a name that is none of the table's is oil and nothing more is known of it. */
    private static Contents plusOil(Contents contents, String name, Mass mass) {
        Constituent constituent = Constituents.find(name);
        return constituent == null
                ? contents.with(Substance.OIL, contents.grams(Substance.OIL) + mass.grams())
                : contents.plusConstituent(constituent.cas(), mass.grams());
    }

    private static List<Finding> unknownOils(Asked asked) {
        return asked.oils().keySet().stream()
                .filter(name -> Constituents.find(name) == null)
                .sorted()
                .map(name -> Finding.of(
                        "constituent-not-known",
                        Severity.NOTE,
                        "--oil " + name,
                        "not known",
                        name + " is no constituent of the table; it is counted as oil alone.",
                        "Write its CAS number or another of its names, if it has one."))
                .toList();
    }

    private static double grams(Substance substance, Amount amount, Workings workings) {
        if (amount instanceof Mass mass) {
            return mass.grams();
        }
        if (amount instanceof Volume volume && (substance == Substance.ETHANOL || substance == Substance.WATER)) {
            EthanolWater.Isotherm pure = EthanolWater.at(Temperature.TWENTY_CELSIUS);
            double density = substance == Substance.ETHANOL ? pure.ethanol() : pure.water();
            double grams = volume.millilitres() * density / 1000.0;
            workings.step("mass of " + substance.label(), grams, "g, measured at 20 °C", Source.OIML_R22);
            return grams;
        }
        throw new Impossible(
                substance.label(),
                "only ethanol and water are taken by volume; " + substance.label() + " is weighed.",
                "Give its mass, such as 20 g.");
    }
}

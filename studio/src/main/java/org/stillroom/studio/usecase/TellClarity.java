package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Clearing;
import org.stillroom.core.clarity.CompositionDoubt;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.clarity.Glass;
import org.stillroom.core.clarity.GlassAddition;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.clarity.Remedies;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.mixing.MixingPath;
import org.stillroom.core.mixing.PlanClarity;
import org.stillroom.core.mixing.Ring;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells whether the oils of a liquid stay dissolved, and what would help. */
public final class TellClarity {
    /** Where a bottle stands, and where it is chilled before filtering; common practice, no source. */
    private static final Temperature FRIDGE = new Temperature(5);

    private static final Temperature FREEZER = new Temperature(-18);
    private static final Temperature FILTERED_AT = new Temperature(0);

    /** Height of the liquid in a bottle of half a litre to a litre, mm; common practice, no source. */
    public static final double BOTTLE_MILLIMETRES = 200.0;

    /** Folds that are sold; common practice, no source. */
    private static final Double[] FOLDS = {5.0, 10.0};

    private static final String ANETHOLE = "4180-23-8";

    /** Anethole melts at 21 °C and may crystallise from this much on in the cold, g/L. Own estimate. */
    private static final double CRYSTALS_FROM = 0.5;

    private TellClarity() {}

    /**
     * What is asked.
     *
     * @param strength of the liquid, at 20 °C
     * @param sugar of it
     * @param temperature at which it is looked at
     * @param oils grams per litre of essential oils by name
     * @param constituents grams per litre of single constituents by name or CAS number
     */
    public record Asked(
            AlcoholByVolume strength,
            MassConcentration sugar,
            Temperature temperature,
            Map<String, Double> oils,
            Map<String, Double> constituents) {
        public Asked {
            oils = Map.copyOf(oils);
            constituents = Map.copyOf(constituents);
        }
    }

    /**
     * What happens to it in the glass.
     *
     * @param addition what comes to it
     * @param temperature of the glass, with ice of the liqueur before; null where it is that at which the liquid is looked at
     */
    public record InGlass(GlassAddition addition, @Nullable Temperature temperature) {
        /** Water, as warm as the liquid. */
        public static final InGlass WATER = new InGlass(GlassAddition.WATER, null);
    }

    /** The same liquid at another temperature. */
    public record Cold(String where, Clarity clarity) {}

    /**
     * What is told.
     *
     * @param clarity the forecast
     * @param compositionFrom what states the ranges of the oils' constituents, by oil
     * @param clearFrom least strength that is clear, % vol, empty where none is
     * @param mostOil most oil of this composition that stays clear, g/L, empty where any amount does
     * @param clearBelowSugar most sugar that stays clear at this strength, g/L, empty where less sugar is no way
     * @param terpeneless the forecast without terpene hydrocarbons
     * @param folded the forecast with folded oils, as far as the oils can be folded so
     * @param filtered what chilling to 0 °C and filtering would do
     * @param cold in fridge and freezer
     * @param glass as something comes to it in the glass
     * @param clearing how soon a haze can clear, or null where no oil separates
     * @param ring the oil that then has gathered, or null where none separates
     * @param path after each step of mixing; empty where no recipe was asked
     * @param clearest the adding steps in the order that stays clear longest; empty where that is the order already
     * @param findings what to know
     */
    public record Found(
            Clarity clarity,
            List<String> compositionFrom,
            OptionalDouble clearFrom,
            OptionalDouble mostOil,
            OptionalDouble clearBelowSugar,
            Clarity terpeneless,
            List<Remedies.Folded> folded,
            Remedies.Filtered filtered,
            List<Cold> cold,
            Glass glass,
            @Nullable Clearing clearing,
            @Nullable Ring ring,
            MixingPath path,
            List<MixingStep> clearest,
            List<Finding> findings) {
        public Found {
            compositionFrom = List.copyOf(compositionFrom);
            folded = List.copyOf(folded);
            cold = List.copyOf(cold);
            clearest = List.copyOf(clearest);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Returns the forecast for a liquid by its figures.
     *
     * @throws Impossible when there is no oil, or the liquid cannot be
     */
    public static Found answer(Asked asked, InGlass glass, Workings workings) {
        Range.refuseOutside(asked.temperature());
        refuseOutside(glass);
        Map<String, Double> parts = new TreeMap<>(asked.constituents());
        List<Finding> findings = new ArrayList<>();
        CompositionDoubt composition = new CompositionDoubt();
        asked.constituents().forEach(composition::add);
        asked.oils().forEach((name, grams) -> addOil(parts, composition, name, grams, findings));
        if (parts.values().stream().allMatch(grams -> grams == 0.0)) {
            throw new Impossible("oil", "there is no oil in it.", "Give what is in it, such as \"lemon=1.2g/L\".");
        }
        Medium medium = Impossible.unless(
                "sugar",
                "Give less sugar or less strength.",
                () -> Medium.of(asked.strength(), asked.sugar(), asked.temperature()));
        Contents liquid = Impossible.unless(
                "sugar", "Give less sugar or less strength.", () -> MadeUp.sweetened(asked.strength(), asked.sugar()));
        for (Map.Entry<String, Double> part : parts.entrySet()) {
            liquid = liquid.plusConstituent(part.getKey(), part.getValue());
        }
        Doubts doubts = new Doubts(0.0, 0.0, composition.spans());
        Clarity clarity = Clarity.of(Oils.of(parts), medium, doubts);
        return found(
                clarity, liquid, doubts, composition, glass, new MixingPath(List.of()), List.of(), findings, workings);
    }

    private static void refuseOutside(InGlass glass) {
        if (glass.temperature() != null) {
            Range.refuseOutside(glass.temperature());
        }
    }

    private static void addOil(
            Map<String, Double> parts,
            CompositionDoubt composition,
            String name,
            double grams,
            List<Finding> findings) {
        EssentialOil oil = EssentialOils.find(name);
        double rest = 1.0;
        if (oil == null) {
            findings.add(Finding.of(
                    "oil-not-known",
                    Severity.CAUTION,
                    name,
                    "not known",
                    "The composition of " + name
                            + " is not in the table; it is counted as oil of which nothing is known,"
                            + " with a wide doubt.",
                    "Give its main constituents, such as limonene=1g/L."));
        } else {
            composition.add(oil, grams);
            for (Map.Entry<String, Double> share : oil.shares().entrySet()) {
                parts.merge(share.getKey(), grams * share.getValue(), Double::sum);
                rest -= share.getValue();
            }
        }
        if (rest > 1e-9) {
            parts.merge(ConstituentGroup.UNKNOWN.label(), grams * rest, Double::sum);
        }
    }

    /**
     * Returns the forecast for a recipe that was worked out.
     *
     * @throws Impossible when no line says that it holds oil
     */
    public static Found answer(WorkedPlan worked, Temperature temperature, InGlass glass, Workings workings) {
        Range.refuseOutside(temperature);
        refuseOutside(glass);
        Contents liquid = PlanClarity.liquid(worked.plan());
        List<String> notCounted = PlanClarity.notCounted(worked.plan());
        if (liquid.grams(Substance.OIL) == 0.0) {
            throw new Impossible(
                    "recipe",
                    "none of its lines says how much oil it holds"
                            + (notCounted.isEmpty() ? "." : "; not known of " + String.join(", ", notCounted) + "."),
                    "Write it where you know it, such as contains: {oil: 5 g/L}.");
        }
        Doubts doubts = PlanRecipe.doubts(worked.measured(), worked.bands(), worked.grounds());
        Clarity clarity = Clarity.of(liquid, temperature, doubts);
        MixingPath path = MixingPath.of(worked.plan(), worked.steps(), temperature);
        List<MixingStep> clearest = MixingPath.clearest(worked.plan(), worked.steps(), temperature);
        List<MixingStep> adding =
                worked.steps().stream().filter(step -> !step.lines().isEmpty()).toList();
        return found(
                clarity,
                liquid,
                doubts,
                PlanClarity.composition(worked.plan(), worked.grounds().analyses()::oil),
                glass,
                path,
                clearest.equals(adding) ? List.of() : clearest,
                PlanClarity.findings(worked.plan(), doubts),
                workings);
    }

    private static Found found(
            Clarity clarity,
            Contents liquid,
            Doubts doubts,
            CompositionDoubt composition,
            InGlass glass,
            MixingPath path,
            List<MixingStep> clearest,
            List<Finding> known,
            Workings workings) {
        workings.step("oil load", clarity.load(), "times what it can dissolve", Source.CLARITY_MODEL);
        workings.step("oil that would separate", clarity.separated(), "g/L", Source.CLARITY_MODEL);
        Oils oils = clarity.oils();
        Medium medium = clarity.medium();
        List<Finding> findings = new ArrayList<>(known);
        findings.addAll(estimated(clarity));
        findings.addAll(crystals(clarity));
        return new Found(
                clarity,
                List.copyOf(composition.from()),
                Remedies.clearFrom(oils, medium),
                Remedies.mostOil(oils, medium),
                Remedies.clearBelowSugar(oils, medium),
                Remedies.withoutTerpenes(clarity, doubts),
                Stream.of(FOLDS)
                        .flatMap(fold -> Remedies.folded(clarity, fold, doubts).stream())
                        .toList(),
                Remedies.chilledAndFiltered(clarity, FILTERED_AT, doubts),
                List.of(
                        new Cold("fridge", Clarity.of(oils, medium.at(FRIDGE), doubts)),
                        new Cold("freezer", Clarity.of(oils, medium.at(FREEZER), doubts))),
                Glass.of(
                        liquid,
                        glass.addition(),
                        glass.temperature() == null ? medium.temperature() : glass.temperature()),
                clarity.separated() > 0.0 ? Clearing.of(liquid, clarity, BOTTLE_MILLIMETRES) : null,
                Ring.of(clarity),
                path,
                clearest,
                findings);
    }

    private static List<Finding> estimated(Clarity clarity) {
        if (clarity.estimated().isEmpty()) {
            return List.of();
        }
        return List.of(new Finding(
                "solubility-estimated",
                Severity.NOTE,
                String.join(", ", clarity.estimated()),
                "",
                "estimated",
                "No solubility was found; it is taken from the family that the name points to, with a wider doubt.",
                "within a factor of two to five",
                "",
                null,
                Source.JAIN_2001));
    }

    private static List<Finding> crystals(Clarity clarity) {
        double anethole = 0.0;
        for (int i = 0; i < clarity.oils().parts().size(); i++) {
            boolean found = clarity.oils().parts().get(i).key().equals(ANETHOLE);
            anethole += found ? clarity.oils().gramsPerLitre(i) : 0.0;
        }
        if (anethole < CRYSTALS_FROM) {
            return List.of();
        }
        return List.of(Finding.of(
                "anethole-crystals",
                Severity.NOTE,
                "cold",
                "may crystallise",
                "Anethole melts near 21 °C: in fridge or freezer it may come out as crystals, which is not forecast.",
                "Keep it at room temperature; warmed and shaken, the crystals go back."));
    }

    /** Returns whether a wanted louche is meant: an aniseed drink that is clear in the bottle and turns in the glass. */
    public static boolean isLouche(Found found) {
        return found.clarity().verdict() == Verdict.CLEAR
                && found.clarity().leading().equals("trans-anethole")
                && found.glass().cloudyFrom().isPresent();
    }
}

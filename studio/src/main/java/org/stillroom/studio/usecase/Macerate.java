package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Finishing;
import org.stillroom.core.extraction.Maceration;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Maceration.Pressing;
import org.stillroom.core.extraction.Percolation;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.extraction.Steeping;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells what comes of plants in spirit, what the marc holds, when to taste, and what makes a liqueur of it. */
public final class Macerate {
    /** So much of what there is to gain has come when it is time to taste, and when little is left. Own judgement. */
    public static final double TASTE_FROM = 0.6;

    static final double LITTLE_LEFT = 0.95;

    private Macerate() {}

    /** How it is drawn. */
    public enum Way {
        JAR("jar"),
        BATH("bath"),
        SIPHON("siphon");

        private final String label;

        Way(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * A sealed jar in a warm bath.
     *
     * @param tasteFrom hour
     * @param littleLeft hour
     * @param pressure over that of the room, bar
     */
    public record Bath(Estimate tasteFrom, Estimate littleLeft, Estimate pressure) {}

    /**
     * A cream siphon.
     *
     * @param fillings of half a litre
     * @param charges of gas, two for each
     */
    public record Siphon(int fillings, int charges) {}

    /**
     * The question.
     *
     * @param charges plants as used
     * @param solvent mL at 20 °C
     * @param strength of it
     * @param held mL per gram that the marc holds, or empty for what is usual
     * @param pressing how the marc is emptied
     * @param again mL of the same solvent for the marc once more, each time; mostly none
     * @param through mL of the same solvent that run through the marc, or empty
     * @param way how it is drawn
     * @param celsius where the jar stands
     * @param steeping fitted to the maker's samples, or null
     * @param end what is made of it, or null
     */
    public record Asked(
            List<Charge> charges,
            double solvent,
            Strength strength,
            OptionalDouble held,
            Pressing pressing,
            List<Double> again,
            OptionalDouble through,
            Way way,
            double celsius,
            @Nullable Steeping steeping,
            @Nullable End end) {
        public Asked {
            charges = List.copyOf(charges);
            again = List.copyOf(again);
        }
    }

    /** What is made of a macerate. */
    public sealed interface End {}

    /** Washed through with the same solvent up to a volume, mL. */
    public record UpTo(double volume) implements End {}

    /** A liqueur, fortified with a spirit. */
    public record Liqueur(Finishing.Wanted wanted, Strength spirit) implements End {}

    /**
     * What comes.
     *
     * @param volume mL
     * @param strength % vol
     * @param held by the marc, mL
     * @param yield of what the plants gave, %
     * @param plantPerLitre g of plant per litre of it
     * @param tasteFrom day, or null where no rate is known
     * @param littleLeft day, or null where no rate is known
     * @param bath what a warm bath comes to, or null
     * @param siphon how a siphon is filled, or null
     * @param end what is added, or null
     * @param findings what to know
     */
    public record Found(
            Estimate volume,
            Estimate strength,
            Estimate held,
            Estimate yield,
            Estimate plantPerLitre,
            @Nullable Estimate tasteFrom,
            @Nullable Estimate littleLeft,
            @Nullable Bath bath,
            @Nullable Siphon siphon,
            @Nullable Added end,
            List<Finding> findings) {
        public Found {
            findings = List.copyOf(findings);
        }
    }

    /**
     * What is added to all that came.
     *
     * @param solvent mL of the same solvent
     * @param spirit mL of the spirit to fortify with
     * @param sugar g
     * @param water g
     * @param volume mL that it comes to
     * @param strength % vol that it comes to
     */
    public record Added(
            Estimate solvent, Estimate spirit, Estimate sugar, Estimate water, Estimate volume, Estimate strength) {}

    /**
     * Returns what comes.
     *
     * @throws Impossible when it cannot be
     */
    public static Found answer(Asked asked, Workings workings) {
        Maceration maceration = maceration(asked, 0.0);
        Contents litre = MadeUp.spirit(asked.strength());
        List<Contents> more =
                asked.again().stream().map(each -> litre.times(each / 1000.0)).toList();
        Contents through = litre.times(asked.through().orElse(0.0) / 1000.0);
        boolean percolated = asked.through().isPresent();
        Contents drained = percolated ? maceration.percolated(through, Percolation.USUAL) : maceration.withOthers(more);
        Essentials comes = Essentials.of(drained.toGrams());
        double heldDoubt = asked.held().isPresent() ? 0.0 : PlantSort.HELD_DOUBT * maceration.held();
        workings.step(
                "liquid with the juice of the plants",
                maceration.volume() + maceration.held(),
                "mL at 20 °C",
                Source.VOLUME_MODEL);
        workings.step("held by the marc", maceration.held(), "mL", Source.RETAINED);
        workings.step("comes", comes.millilitres(), "mL at 20 °C", Source.BALANCE);
        workings.step("strength of it", comes.strength(), "% vol at 20 °C", Source.VOLUME_MODEL);
        double comesThrough = 100.0
                * (percolated
                        ? maceration.partThatComesThrough(through, Percolation.USUAL)
                        : maceration.partThatComesOf(more));
        double ofFlow = percolated
                ? 50.0
                        * (maceration.partThatComesThrough(through, Percolation.BEST)
                                - maceration.partThatComesThrough(through, Percolation.WORST))
                : 0.0;
        double strengthDoubt = strengthDoubt(asked, maceration.strength());
        double perLitre = 1000.0 * maceration.plants() / comes.millilitres();
        Estimate volume = new Estimate(comes.millilitres(), heldDoubt);
        List<Finding> findings = MacerateFindings.of(asked, comes.strength());
        return new Found(
                volume,
                new Estimate(comes.strength(), strengthDoubt),
                new Estimate(maceration.held(), heldDoubt),
                new Estimate(
                        comesThrough,
                        Math.hypot(ofFlow, 100.0 * heldDoubt / (maceration.volume() + maceration.held()))),
                new Estimate(perLitre, perLitre * heldDoubt / comes.millilitres()),
                MacerateTime.days(asked, TASTE_FROM),
                MacerateTime.days(asked, LITTLE_LEFT),
                MacerateTime.bath(asked, maceration.liquid()),
                MacerateTime.siphon(asked),
                MacerateEnd.added(asked, drained, volume, strengthDoubt, findings),
                findings);
    }

    /** Returns the maceration when the plants hold so many times the doubt of their water more than the table says. */
    private static Maceration maceration(Asked asked, double wetter) {
        List<Charge> charges = new ArrayList<>();
        double grams = 0.0;
        for (Charge charge : asked.charges()) {
            Plant plant = charge.plant();
            double water = Math.max(0.0, Math.min(1.0, plant.water() + wetter * plant.waterDoubt()));
            charges.add(wetter == 0.0 ? charge : new Charge(plant.withWater(water), charge.grams()));
            grams += charge.grams();
        }
        Contents solvent = MadeUp.spirit(asked.strength()).times(asked.solvent() / 1000.0);
        double held = asked.held().orElse(0.0) * grams;
        return Impossible.unless(
                "solvent",
                "Take more solvent, or less of the plant.",
                () -> asked.held().isPresent()
                        ? Maceration.holding(solvent, charges, held)
                        : Maceration.of(solvent, charges, asked.pressing()));
    }

    private static double strengthDoubt(Asked asked, double strength) {
        Maceration wetter = maceration(asked, 1.0);
        double model = ModelDoubt.of(wetter.liquid().toGrams(), wetter.volume() + wetter.held())
                .strengthHalfWidth();
        return Math.hypot(strength - wetter.strength(), model);
    }
}

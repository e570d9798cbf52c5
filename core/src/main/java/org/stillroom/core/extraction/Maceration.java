package org.stillroom.core.extraction;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.SugarLimit;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.QuantityWords;

/**
 * Plants in spirit once they have given what they give: the liquid, and how it parts into what comes and what the marc holds.
 *
 * <p>The water and the sugar of the plants are taken to be one liquid with the solvent; other extract, a few per cent at most, is not
 * counted. What the marc holds has the strength of the rest. Volumes are at 20 °C.
 *
 * <p>Sugar that is put on fruit draws its juice until fruit and syrup are alike, so it is one liquid with them too, as far as it
 * dissolves at 20 °C; what does not stays on the bottom of the jar.
 *
 * @param liquid all of it, the part in the marc too
 * @param undissolved sugar on the bottom of the jar, g
 * @param held mL that the marc holds
 * @param plants grams of plant as used
 */
public record Maceration(Contents liquid, double undissolved, double held, double plants) {
    /** How the marc is emptied: drained and squeezed by hand, or through a press. */
    public enum Pressing {
        BY_HAND,
        PRESSED
    }

    /** A plant and how much of it, g as used. */
    public record Charge(Plant plant, double grams) {
        /** So much is in no jar and no vat, g. */
        public static final double TOO_MUCH = 1e9;

        public Charge {
            if (!(grams > 0.0 && grams < TOO_MUCH)) {
                throw new IllegalArgumentException(plant.name() + " weighs above 0 g and less than "
                        + QuantityWords.plain(TOO_MUCH) + " g, not " + grams + " g");
            }
        }
    }

    /**
     * Returns what becomes of plants in a solvent.
     *
     * @param solvent grams of it
     * @throws IllegalArgumentException when the marc would hold all of it, with a text for people
     */
    public static Maceration of(Contents solvent, List<Charge> charges, Pressing pressing) {
        return holding(solvent, charges, heldBy(charges, pressing));
    }

    /** Returns what a marc of these plants usually holds, mL. */
    public static double heldBy(List<Charge> charges, Pressing pressing) {
        double held = 0.0;
        for (Charge charge : charges) {
            PlantSort sort = charge.plant().sort();
            held += charge.grams()
                    * switch (pressing) {
                        case BY_HAND -> sort.drainedPerGram();
                        case PRESSED -> sort.pressedPerGram();
                    };
        }
        return held;
    }

    /** Returns what becomes of plants in a solvent when the marc holds so many mL. */
    public static Maceration holding(Contents solvent, List<Charge> charges, double held) {
        double plants = charges.stream().mapToDouble(Charge::grams).sum();
        return new Maceration(solvent.plus(juice(charges)), 0.0, held, plants).thatComes();
    }

    /** Returns the water and the sugar that plants bring. */
    public static Contents juice(List<Charge> charges) {
        Contents juice = Contents.NONE;
        for (Charge charge : charges) {
            juice = juice.plus(Contents.of(Substance.WATER, charge.plant().water() * charge.grams())
                    .with(Substance.SUCROSE, charge.plant().sugar() * charge.grams()));
        }
        return juice;
    }

    private Maceration thatComes() {
        if (!(volume() > 0.0)) {
            throw new IllegalArgumentException("the marc would hold all of the liquid: " + Math.round(held) + " mL of "
                    + Math.round(volume(liquid)) + " mL");
        }
        return this;
    }

    /**
     * Returns what becomes of it when sugar is put into the jar as well.
     *
     * @param grams of sugar, zero or more
     * @throws IllegalArgumentException above 90 % vol, where nobody tells how much dissolves, with a text for people
     */
    public Maceration sugared(double grams) {
        return grams == 0.0
                ? this
                : dissolving(liquid, undissolved + grams, held).thatComes();
    }

    /**
     * Returns what becomes of the marc when sugar is put on it once the liquid was poured off: it draws what the marc held.
     *
     * @param grams of sugar, zero or more
     * @param then mL that the marc holds afterwards, when it has shrunk
     * @throws IllegalArgumentException as {@link #sugared}
     */
    public Maceration marcSugared(double grams, double then) {
        return dissolving(inMarc(), undissolved + grams, then).thatComes();
    }

    private Maceration dissolving(Contents dry, double solid, double holds) {
        boolean wet = dry.grams(Substance.WATER) > 0.0;
        if (wet && !SugarLimit.knows(dry)) {
            throw new IllegalArgumentException(
                    "above 90 % vol no table tells how much sugar dissolves; it is next to nothing");
        }
        double room = wet ? SugarLimit.dissolved(dry).value() - dry.grams(Substance.SUCROSE) : 0.0;
        double dissolves = Math.max(0.0, Math.min(solid, room));
        return new Maceration(dry.plus(Contents.of(Substance.SUCROSE, dissolves)), solid - dissolves, holds, plants);
    }

    /** Returns the sugar on the bottom of the jar, g, as much in doubt as the solubility is. */
    public Estimate undissolvedInDoubt() {
        if (!SugarLimit.knows(liquid)) {
            return new Estimate(undissolved, 0.0);
        }
        Estimate most = SugarLimit.dissolved(liquid);
        double all = liquid.grams(Substance.SUCROSE) + undissolved;
        double least = Math.max(0.0, all - most.value() - most.doubt());
        double highest = Math.max(0.0, all - most.value() + most.doubt());
        return new Estimate(undissolved, Math.max(highest - undissolved, undissolved - least));
    }

    /** Returns the same jar when as much less of its sugar dissolves as the solubility is in doubt. */
    public Maceration lessDissolved() {
        double less =
                Math.min(liquid.grams(Substance.SUCROSE), undissolvedInDoubt().doubt());
        Contents thinner = liquid.with(Substance.SUCROSE, liquid.grams(Substance.SUCROSE) - less);
        return new Maceration(thinner, undissolved + less, held, plants);
    }

    /** Returns the volume that comes, mL. */
    public double volume() {
        return volume(liquid) - held;
    }

    /** Returns the strength of what comes, % vol. */
    public double strength() {
        return Essentials.of(liquid.toGrams()).strength();
    }

    /** Returns what comes. */
    public Contents drained() {
        return liquid.times(volume() / volume(liquid));
    }

    /** Returns the part of what the plants gave that comes with the liquid, 0 to 1; the rest stays in the marc. */
    public double partThatComes() {
        return volume() / volume(liquid);
    }

    /** Returns what comes when the marc is macerated again in further solvents, one after the other: all liquids together. */
    public Contents withOthers(List<Contents> solvents) {
        return draws(solvents).stream().map(Maceration::drained).reduce(Contents.NONE, Contents::plus);
    }

    /**
     * Returns this and what becomes of the marc when it is macerated again in further solvents, one after the other: each begins with
     * what the marc held of the one before.
     */
    public List<Maceration> draws(List<Contents> solvents) {
        List<Maceration> draws = new ArrayList<>(List.of(this));
        for (Contents solvent : solvents) {
            draws.add(draws.get(draws.size() - 1).again(solvent));
        }
        return draws;
    }

    /** Returns the part of what the plants gave that comes with all liquids, if all of it was given in the first. */
    public double partThatComesOf(List<Contents> solvents) {
        double stays = 1.0;
        for (Maceration draw : draws(solvents)) {
            stays *= 1.0 - draw.partThatComes();
        }
        return 1.0 - stays;
    }

    private Maceration again(Contents solvent) {
        Contents together = inMarc().plus(solvent);
        Maceration once = undissolved == 0.0
                ? new Maceration(together, 0.0, held, plants)
                : dissolving(together, undissolved, held);
        return once.thatComes();
    }

    private Contents inMarc() {
        return liquid.times(held / volume(liquid));
    }

    /**
     * Returns what comes when more solvent runs through the marc once the plants have given what they give: all liquids together.
     *
     * @param flow how it runs
     */
    public Contents percolated(Contents solvent, Percolation flow) {
        double stays = flow.partThatStays(volume(solvent), held);
        double ofLiquid = stays * held / volume(liquid); // what the marc holds in the end, as parts of each
        double ofSolvent = (1.0 - stays) * held / volume(solvent);
        return liquid.times(1.0 - ofLiquid).plus(solvent.times(Math.max(0.0, 1.0 - ofSolvent)));
    }

    /** Returns the part of what the plants gave that comes with both liquids when more solvent runs through. */
    public double partThatComesThrough(Contents solvent, Percolation flow) {
        return 1.0 - (1.0 - partThatComes()) * flow.partThatStays(volume(solvent), held);
    }

    private static double volume(Contents contents) {
        return VolumeModel.atTwenty().millilitres(contents.toGrams());
    }
}

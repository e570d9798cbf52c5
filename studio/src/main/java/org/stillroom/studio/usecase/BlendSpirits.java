package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.blend.SpiritBlend;
import org.stillroom.core.blend.SpiritBlend.Part;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Warming;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells what comes of spirits and water together, or how much of one more brings them to a strength. */
public final class BlendSpirits {
    private BlendSpirits() {}

    /**
     * Something poured.
     *
     * @param amount mass, or volume at the temperature of the basis
     * @param strength zero for water
     */
    public record Poured(Amount amount, Strength strength) {}

    /**
     * What is wanted beyond pouring together.
     *
     * @param strength wanted
     * @param with strength of what is added until it is reached
     */
    public record Reach(Strength strength, Strength with) {}

    /**
     * The question.
     *
     * @param poured at least one
     * @param reach a strength to reach, if any
     * @param basis temperature of volumes and of the strength that comes out
     */
    public record Asked(List<Poured> poured, Optional<Reach> reach, VolumeBasis basis) {
        public Asked {
            poured = List.copyOf(poured);
        }
    }

    /**
     * What comes of it, volumes on the basis.
     *
     * @param added what was added to reach the strength, g; empty where none was asked
     * @param addedVolume the same, mL
     * @param volume of it all, mL
     * @param mass of it all, g
     * @param strength % vol on the basis
     * @param contraction mL; below zero where the volume grows
     * @param warming °C, of all at the temperature of the basis, if no heat is lost
     */
    public record Found(
            Optional<Estimate> added,
            Optional<Estimate> addedVolume,
            Estimate volume,
            Estimate mass,
            Estimate strength,
            Estimate contraction,
            Estimate warming) {}

    /**
     * Returns what comes of it.
     *
     * @throws Impossible when there is nothing to blend, or the strength cannot be reached
     */
    public static Found answer(Asked asked, Workings workings) {
        List<Part> parts = new ArrayList<>();
        for (Poured poured : asked.poured()) {
            parts.add(part(poured, asked.basis()));
        }
        Optional<Part> more = asked.reach().map(reach -> toReach(parts, reach, workings));
        more.ifPresent(parts::add);
        SpiritBlend blend = Impossible.unless(
                "add", "Give an amount above zero.", () -> SpiritBlend.of(parts, asked.basis(), workings));
        Found found = found(asked.basis(), parts, more, blend);
        workings.step("warming, if no heat is lost", found.warming().value(), "°C", Source.LARKIN_1975);
        return found;
    }

    private static Found found(VolumeBasis basis, List<Part> parts, Optional<Part> more, SpiritBlend blend) {
        List<Contents> contents = parts.stream().map(Part::contents).toList();
        Figures whole =
                Liquid.figures(contents.stream().reduce(Contents.NONE, Contents::plus), Temperature.TWENTY_CELSIUS);
        double ofVolume = whole.doubt(Figure.VOLUME_20C) / whole.value(Figure.VOLUME_20C);
        double volume = blend.volume().millilitres();
        double ofAdded = more.map(added -> doubtOfAdded(added, whole)).orElse(0.0);
        return new Found(
                more.map(added -> part(added.mass().grams(), ofAdded)),
                more.map(added -> part(added.volume(basis).millilitres(), ofAdded)),
                part(volume, ofVolume),
                new Estimate(blend.mass().grams(), 0.0),
                new Estimate(blend.strength().percent(), whole.doubt(Figure.STRENGTH)),
                new Estimate(blend.contraction(), ofVolume * volume),
                Warming.of(contents, basis.temperature()));
    }

    private static Estimate part(double value, double doubt) {
        return new Estimate(value, doubt * value);
    }

    /** Part of the amount added that the doubt of the strength reached leaves open. */
    private static double doubtOfAdded(Part added, Figures whole) {
        double mass = added.mass().grams();
        if (mass == 0.0 || whole.value(Figure.STRENGTH) == 0.0) {
            return 0.0;
        }
        double reached = whole.value(Figure.STRENGTH_BY_MASS) / 100.0;
        double open = reached * whole.doubt(Figure.STRENGTH) / whole.value(Figure.STRENGTH);
        return whole.value(Figure.MASS) * open / Math.abs(added.ethanol().fraction() - reached) / mass;
    }

    private static Part toReach(List<Part> parts, Reach reach, Workings workings) {
        return Impossible.unless(
                "to",
                "Ask for a strength between the two, or add something weaker or stronger.",
                () -> SpiritBlend.toReach(parts, reach.with(), reach.strength(), workings));
    }

    private static Part part(Poured poured, VolumeBasis basis) {
        if (poured.amount() instanceof Mass mass) {
            return Part.of(mass, poured.strength());
        }
        if (poured.amount() instanceof Volume volume) {
            return Part.of(volume, poured.strength(), basis);
        }
        throw new Impossible("add", "spirits are blended by volume or by mass, not in drops.", "Give mL or g.");
    }
}

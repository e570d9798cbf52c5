package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Maceration;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Percolation;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.Macerate.Order;
import org.stillroom.studio.usecase.Macerate.Sugaring;

/**
 * How plants, spirit and sugar meet, one after the other.
 *
 * @param before what stands before the last of them comes to it, or null where all meet at once
 * @param last what stands at the end
 * @param draws what stands in the jar each time that liquid is taken off; percolated, the first time only
 * @param comes all that comes
 * @param part of what the plants gave that comes, 0 to 1
 */
record MacerateCourse(
        @Nullable Maceration before, Maceration last, List<Maceration> draws, Contents comes, double part) {
    /** How far what is known of the plants is off: so many times its doubt. */
    enum Known {
        AS_KNOWN(0.0, 0.0, 0.0),
        WETTER(1.0, 0.0, 0.0),
        SWEETER(0.0, 1.0, 0.0),
        HOLDING_LESS(0.0, 0.0, -1.0);

        private final double water;
        private final double sugar;
        private final double holding;

        Known(double water, double sugar, double holding) {
            this.water = water;
            this.sugar = sugar;
            this.holding = holding;
        }

        private double holding(double usual) {
            return usual * (1.0 + holding * PlantSort.HELD_DOUBT);
        }

        private Charge of(Charge charge) {
            if (this == AS_KNOWN) {
                return charge;
            }
            Plant plant = charge.plant();
            double wet = Math.max(0.0, Math.min(1.0, plant.water() + water * plant.waterDoubt()));
            Plant wetter = water == 0.0 ? plant : plant.withWater(wet);
            Plant off =
                    sugar == 0.0 ? wetter : wetter.withSugar(Math.min(1.0, plant.sugar() + sugar * plant.sugarDoubt()));
            return new Charge(off, charge.grams());
        }
    }

    /**
     * Returns how it goes.
     *
     * @throws Impossible when it cannot be
     */
    static MacerateCourse of(Asked asked, Known plants) {
        List<Charge> charges = asked.charges().stream().map(plants::of).toList();
        Sugaring sugaring = asked.sugaring();
        if (sugaring == null) {
            return ended(asked, null, maceration(asked, charges, plants));
        }
        Contents spirit = spirit(asked, asked.solvent());
        return Impossible.unless("sugar-on-fruit", "Take weaker spirit.", () -> switch (sugaring.order()) {
            case TOGETHER ->
                ended(asked, null, maceration(asked, charges, plants).sugared(sugaring.grams()));
            case SUGAR_FIRST ->
                ended(
                        asked,
                        juice(asked, charges, sugaring.grams(), sugaring.first()),
                        maceration(asked, charges, plants).sugared(sugaring.grams()));
            case SPIRIT_FIRST ->
                ended(
                        asked,
                        Maceration.holding(spirit, charges, 0.0),
                        maceration(asked, charges, plants).sugared(sugaring.grams()));
            case MARC -> {
                double held = maceration(asked, charges, plants).held();
                double plump = VolumeModel.atTwenty()
                        .millilitres(Maceration.juice(charges).toGrams());
                Maceration pouredOff = Maceration.holding(spirit, charges, Math.max(plump, held));
                yield ended(asked, pouredOff, pouredOff.marcSugared(sugaring.grams(), held));
            }
        });
    }

    /** Returns the jar before the rest of the spirit goes on: nothing is drained, so that the fruit's part counts too. */
    static Maceration juice(Asked asked, List<Charge> charges, double sugar, double spirit) {
        return Maceration.holding(spirit(asked, spirit), charges, 0.0).sugared(sugar);
    }

    private static MacerateCourse ended(Asked asked, @Nullable Maceration before, Maceration last) {
        List<Contents> more = asked.again().stream().map(MacerateCourse::spirit).toList();
        if (asked.through().isPresent()) {
            Contents through = spirit(asked, asked.through().getAsDouble());
            return new MacerateCourse(
                    before,
                    last,
                    List.of(last),
                    last.percolated(through, Percolation.USUAL),
                    last.partThatComesThrough(through, Percolation.USUAL));
        }
        List<Maceration> draws = new ArrayList<>(last.draws(more));
        Contents comes = last.withOthers(more);
        double part = last.partThatComesOf(more);
        Sugaring sugaring = asked.sugaring();
        if (before != null && sugaring != null && sugaring.order() == Order.MARC) {
            draws.add(0, before);
            return new MacerateCourse(
                    before,
                    last,
                    draws,
                    before.drained().plus(comes),
                    1.0 - (1.0 - before.partThatComes()) * (1.0 - part));
        }
        return new MacerateCourse(before, last, draws, comes, part);
    }

    private static Maceration maceration(Asked asked, List<Charge> charges, Known plants) {
        double grams = charges.stream().mapToDouble(Charge::grams).sum();
        Contents solvent = spirit(asked, asked.solvent());
        double held = asked.held().isPresent()
                ? asked.held().getAsDouble() * grams
                : plants.holding(Maceration.heldBy(charges, asked.pressing()));
        return Impossible.unless(
                "solvent",
                "Take more solvent, or less of the plant.",
                () -> Maceration.holding(solvent, charges, held));
    }

    /** Returns each time that liquid comes off, with what went on for it; sugar on the marc draws without. */
    List<Macerate.Draw> told(Asked asked) {
        List<Double> poured = new ArrayList<>(List.of(asked.solvent()));
        for (int i = 1; i < draws.size() - asked.again().size(); i++) {
            poured.add(0.0);
        }
        asked.again().forEach(each -> poured.add(each.volume()));
        return IntStream.range(0, draws.size())
                .mapToObj(i -> new Macerate.Draw(
                        poured.get(i), draws.get(i).volume(), draws.get(i).strength()))
                .toList();
    }

    private static Contents spirit(Macerate.Again again) {
        return MadeUp.spirit(again.strength()).times(again.volume() / 1000.0);
    }

    private static Contents spirit(Asked asked, double millilitres) {
        return MadeUp.spirit(asked.strength()).times(millilitres / 1000.0);
    }

    /** Returns half of how far the percolated part lies apart between the best and the worst flow, 0 to 1. */
    double flowDoubt(Asked asked) {
        if (asked.through().isEmpty()) {
            return 0.0;
        }
        Contents through = spirit(asked, asked.through().getAsDouble());
        return 0.5
                * (last.partThatComesThrough(through, Percolation.BEST)
                        - last.partThatComesThrough(through, Percolation.WORST));
    }
}

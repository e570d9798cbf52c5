package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Finishing;
import org.stillroom.core.extraction.Maceration;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Maceration.Pressing;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.extraction.SteepingFit;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;

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

    /** In what order sugar and spirit come to the plants. */
    public enum Order {
        TOGETHER("together"),
        /** Sugar draws the juice; the spirit, or the rest of it, goes on later. */
        SUGAR_FIRST("sugar-first"),
        /** The plants stand in spirit; sugar goes into the same jar later. */
        SPIRIT_FIRST("spirit-first"),
        /** The spirit is poured off; sugar then goes on the fruit that is left and draws what it held. */
        MARC("on-the-marc");

        private final String label;

        Order(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * Sugar that is put on the plants.
     *
     * @param grams of it, above zero
     * @param order what comes first
     * @param first mL of the spirit that go on with the sugar, where it comes first; mostly none
     */
    public record Sugaring(double grams, Order order, double first) {}

    /**
     * What stands in the jar before the last of plants, spirit and sugar comes to it.
     *
     * @param volume mL, the part of the fruit too unless it is what was poured off
     * @param strength % vol
     * @param sugar g/L
     * @param delle units of Delle
     * @param waterActivity 0 to 1
     * @param undissolved g of sugar on the bottom
     */
    public record Before(
            Estimate volume,
            Estimate strength,
            Estimate sugar,
            Estimate delle,
            Estimate waterActivity,
            Estimate undissolved) {}

    /**
     * What sugar on the plants comes to.
     *
     * @param undissolved g of it on the bottom in the end
     * @param before what stood before, or null where all met at once
     * @param comesBack mL that the sugar draws out of plants from which the spirit was poured off, or null
     */
    public record Sugared(
            Order order,
            Estimate undissolved,
            @Nullable Before before,
            @Nullable Estimate comesBack) {}

    /**
     * A sealed jar in a warm bath.
     *
     * @param tasteFrom hour, or null where the maker's samples leave it open
     * @param littleLeft hour, likewise
     * @param pressure over that of the room, bar
     */
    public record Bath(
            @Nullable Bounded tasteFrom, @Nullable Bounded littleLeft, Estimate pressure) {}

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
     * @param again for the marc once more, each time; mostly none
     * @param through mL of the same solvent that run through the marc, or empty
     * @param sugaring sugar that is put on the plants, or null
     * @param way how it is drawn
     * @param celsius where the jar stands
     * @param samples what fits the maker's own, or null
     * @param end what is made of it, or null
     * @param grounds what the plants are judged on
     */
    public record Asked(
            List<Charge> charges,
            double solvent,
            Strength strength,
            OptionalDouble held,
            Pressing pressing,
            List<Again> again,
            OptionalDouble through,
            @Nullable Sugaring sugaring,
            Way way,
            double celsius,
            @Nullable SteepingFit samples,
            @Nullable End end,
            Grounds grounds) {
        public Asked {
            charges = List.copyOf(charges);
            again = List.copyOf(again);
        }

        /** Returns the same with another spirit. */
        Asked with(Strength other) {
            return new Asked(
                    charges, solvent, other, held, pressing, again, through, sugaring, way, celsius, samples, end,
                    grounds);
        }

        /** Returns the same in a place of another temperature, °C. */
        Asked at(double other) {
            return new Asked(
                    charges, solvent, strength, held, pressing, again, through, sugaring, way, other, samples, end,
                    grounds);
        }
    }

    /**
     * Spirit, or water, that goes on the marc once more.
     *
     * @param volume mL at 20 °C
     */
    public record Again(double volume, Strength strength) {
        /** Returns so many times as much of it. */
        public Again times(double factor) {
            return new Again(factor * volume, strength);
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
     * @param sugar g/L of it
     * @param ownSugar g/L of it that the plants brought
     * @param held by the marc, mL
     * @param yield of what the plants gave, %
     * @param plantPerLitre g of plant per litre of it
     * @param tasteFrom day, or null where no rate is known or samples leave it open
     * @param littleLeft day, likewise
     * @param fit what the maker's own samples say, or null
     * @param sugared what sugar on the plants comes to, or null
     * @param bath what a warm bath comes to, or null
     * @param siphon how a siphon is filled, or null
     * @param end what is added, or null
     * @param draws each time that liquid came off the plants, in order
     * @param spirits what would come with other spirits
     * @param warmer when to taste in warmer places
     * @param findings what to know
     */
    public record Found(
            Bounded volume,
            Estimate strength,
            Estimate sugar,
            Estimate ownSugar,
            Estimate held,
            Bounded yield,
            Bounded plantPerLitre,
            @Nullable Bounded tasteFrom,
            @Nullable Bounded littleLeft,
            @Nullable SteepingFit fit,
            @Nullable Sugared sugared,
            @Nullable Bath bath,
            @Nullable Siphon siphon,
            @Nullable Added end,
            List<Draw> draws,
            List<OtherSpirit> spirits,
            List<Warmer> warmer,
            List<Finding> findings) {
        public Found {
            draws = List.copyOf(draws);
            spirits = List.copyOf(spirits);
            warmer = List.copyOf(warmer);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Liquid that came off the plants at one time.
     *
     * @param poured mL that went on for it
     * @param comes mL
     * @param strength of what comes, % vol
     */
    public record Draw(double poured, double comes, double strength) {}

    /**
     * What would come of the same plants in another spirit.
     *
     * @param spirit its strength, % vol
     * @param comes mL
     * @param strength of what comes, % vol
     */
    public record OtherSpirit(double spirit, double comes, double strength) {}

    /**
     * When to taste in a warmer place.
     *
     * @param celsius how warm
     * @param tasteFrom day
     * @param littleLeft day
     */
    public record Warmer(double celsius, double tasteFrom, double littleLeft) {}

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
        MacerateTime.requireBelowBoiling(asked);
        MacerateCourse course = MacerateCourse.of(asked, MacerateCourse.Known.AS_KNOWN);
        Maceration last = course.last();
        Essentials comes = Essentials.of(course.comes().toGrams());
        double heldDoubt = asked.held().isPresent() ? 0.0 : PlantSort.HELD_DOUBT * last.held();
        workings.step(
                "liquid with the juice of the plants", last.volume() + last.held(), "mL at 20 °C", Source.VOLUME_MODEL);
        workings.step("held by the marc", last.held(), "mL", Source.RETAINED);
        workings.step("comes", comes.millilitres(), "mL at 20 °C", Source.BALANCE);
        workings.step("strength of it", comes.strength(), "% vol at 20 °C", Source.VOLUME_MODEL);
        MacerateDoubt doubt = MacerateDoubt.of(asked, course);
        double own = 1000.0 * Maceration.juice(asked.charges()).sugars() * course.part() / comes.millilitres();
        Estimate volume = new Estimate(comes.millilitres(), heldDoubt);
        Bounded bounded = Bounded.within(volume, 0.0, Double.POSITIVE_INFINITY);
        double plants = 1000.0 * last.plants();
        List<Finding> findings = new ArrayList<>(MacerateSafety.of(asked));
        findings.addAll(MacerateFindings.of(asked, course));
        findings.add(MacerateOthers.told());
        return new Found(
                bounded,
                new Estimate(comes.strength(), doubt.strength()),
                sugar(asked, comes.sugar(), doubt.sugar()),
                sugar(asked, own, doubt.ownSugar()),
                new Estimate(last.held(), heldDoubt),
                Bounded.within(
                        new Estimate(
                                100.0 * course.part(),
                                100.0 * Math.hypot(course.flowDoubt(asked), heldDoubt / (last.volume() + last.held()))),
                        0.0,
                        100.0),
                new Bounded(plants / bounded.value(), plants / bounded.high(), plants / bounded.low()),
                MacerateTime.days(asked, TASTE_FROM),
                MacerateTime.days(asked, LITTLE_LEFT),
                asked.samples(),
                MacerateSugar.of(asked, course),
                MacerateTime.bath(asked, last.liquid()),
                MacerateTime.siphon(asked),
                MacerateEnd.added(asked, course.comes(), volume, doubt, findings),
                course.told(asked),
                MacerateOthers.spirits(asked),
                MacerateOthers.warmer(asked),
                findings);
    }

    /** Sugar of plants of which nobody says how much they hold is not counted, and nothing tells how far that is off. */
    private static Estimate sugar(Asked asked, double gramsPerLitre, double doubt) {
        boolean open = asked.charges().stream().anyMatch(each -> each.plant().isSugarNotSaid());
        return open && doubt == 0.0 ? Estimate.inDoubtNotTold(gramsPerLitre) : new Estimate(gramsPerLitre, doubt);
    }
}

package org.stillroom.core.safety;

import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Source;

/**
 * Whether a drink keeps, where and until when, by strength, water activity, pH and what is in it.
 *
 * <p>Bounds are from memory, times are common practice, no source; both are on the cautious side. Nothing that is not known
 * makes it keep: docs/how-it-works/growth.md.
 *
 * @param where it is to be kept
 * @param days from filling, closed; 0 where microbes set no end
 * @param waterActivity 0 to 1
 * @param sourness its pH, or that it is not known
 * @param delle units of Delle: grams of sugar in 100 mL and 4.5 times % vol
 * @param reason why it keeps or does not, one sentence
 * @param source what the reason rests on
 */
public record Keeping(
        Where where, int days, double waterActivity, Sourness sourness, double delle, String reason, Source source) {
    /** Where a drink is kept. */
    public enum Where {
        SHELF("keeps on the shelf"),
        /** Closed on the shelf, once open in the cold. */
        COLD_ONCE_OPEN("cold once open"),
        FRIDGE("keep it cold");

        private final String label;

        Where(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** From here on nothing grows, % vol. From memory. */
    static final double HELD = 20.0;
    /** Below this alcohol does not hold spores of botulism for certain, % vol. From memory. */
    static final double SPORES_HELD = 10.0;
    /** Above this pH and water activity a food without alcohol counts as low in acid. Source: 21 CFR 114.3, from memory. */
    static final double ACID = 4.6;

    static final double DRY = 0.85;
    /** So many days a fresh plant under oil stands in the cold. From memory. */
    static final int UNDER_OIL = 4;

    private static final int TWO_WEEKS = 14;
    private static final int MONTH = 30;
    private static final int QUARTER = 90;
    private static final int HALF_YEAR = 180;
    private static final int YEAR = 365;

    /** Returns how it keeps. */
    static Keeping of(Drink drink) {
        return new Judged(drink).keeping();
    }

    /** Returns whether it has to stand in the cold from the first day. */
    public boolean isCold() {
        return where == Where.FRIDGE;
    }

    /** Returns until when, in words; empty where microbes set no end. */
    public String until() {
        return switch (days) {
            case 0 -> "";
            case TWO_WEEKS -> "two weeks";
            case MONTH -> "a month";
            case QUARTER -> "three months";
            case HALF_YEAR -> "six months";
            case YEAR -> "a year";
            default -> days + " days";
        };
    }

    /** Returns what a label says of it; empty where nothing follows. */
    public String label() {
        return switch (where) {
            case SHELF -> "";
            case COLD_ONCE_OPEN -> "Keep in the fridge once open";
            case FRIDGE -> "Keep in the fridge, best within " + until() + " of filling";
        };
    }

    static boolean hasMilkOrEgg(Drink drink) {
        return drink.lines().stream().anyMatch(line -> Brought.isMilkOrEgg(line, drink.knowledge()));
    }

    /** Returns whether something in it is known to bring yeast that can work in it: fruit, wine, honey, or a fresh plant. */
    static boolean canFerment(Drink drink) {
        return brings(drink) == Brought.YeastIn.YES && yeast(drink).findsFood();
    }

    private static Yeast yeast(Drink drink) {
        return new Yeast(drink.strength(), sugar(drink));
    }

    private static Brought.YeastIn brings(Drink drink) {
        Set<Brought.YeastIn> all = drink.lines().stream().map(Brought::yeast).collect(Collectors.toSet());
        if (all.contains(Brought.YeastIn.YES)) {
            return Brought.YeastIn.YES;
        }
        return all.contains(Brought.YeastIn.NOT_KNOWN) ? Brought.YeastIn.NOT_KNOWN : Brought.YeastIn.NO;
    }

    static double sugar(Drink drink) {
        return drink.figures().value(Figure.SUGAR);
    }

    /** One drink with its figures. */
    private static final class Judged {
        private final Drink drink;
        private final double strength;
        private final double activity;
        private final Sourness sourness;
        private final double delle;
        private final boolean pasteurised;

        Judged(Drink drink) {
            this.drink = drink;
            this.strength = drink.strength();
            this.activity = WaterActivity.of(drink.plan().liquid());
            this.sourness = Sourness.of(drink);
            this.delle = yeast(drink).delle();
            this.pasteurised = drink.condition().isPasteurised();
        }

        Keeping keeping() {
            if (Growth.isPlantUnderOil(drink)) {
                return found(
                        Where.FRIDGE,
                        UNDER_OIL,
                        "A fresh plant under oil has no air and no acid: spores of botulism can grow there.",
                        Source.HANDLING_CAUTIONS);
            }
            if (hasMilkOrEgg(drink)) {
                return milk();
            }
            if (strength >= HELD) {
                return found(
                        Where.SHELF, 0, "Its alcohol alone holds yeast, mould and bacteria.", Source.GROWTH_LIMITS);
            }
            @Nullable Keeping sealed = sealed();
            if (sealed != null) {
                return sealed;
            }
            if (delle >= Yeast.DELLE_HOLDS && strength >= SPORES_HELD) {
                return likelyHeld();
            }
            return strength >= SPORES_HELD ? fermenting() : weak();
        }

        private Keeping likelyHeld() {
            String units = ": " + QuantityWords.fixed(delle, 0) + " units of Delle, from 78 on, from memory.";
            Brought.YeastIn brought = brings(drink);
            if (brought == Brought.YeastIn.NO) {
                return found(
                        Where.COLD_ONCE_OPEN,
                        YEAR,
                        "Nothing in it brings yeast, and alcohol and sugar together likely hold what falls in" + units,
                        Source.DELLE);
            }
            if (strength >= Yeast.STOPS) {
                return found(
                        Where.COLD_ONCE_OPEN,
                        YEAR,
                        "What is in it may bring yeast; from 18 % vol on yeast does not work, from memory.",
                        Source.DELLE);
            }
            return found(
                    Where.FRIDGE,
                    QUARTER,
                    brought == Brought.YeastIn.YES
                            ? "Alcohol and sugar together likely hold the yeast that fresh plants, fruit, wine or honey bring"
                                    + units
                            : "Whether something in it brings yeast is not known; alcohol and sugar together likely hold it"
                                    + units,
                    Source.DELLE);
        }

        private Keeping milk() {
            return strength >= HELD
                    ? found(
                            Where.FRIDGE,
                            QUARTER,
                            "With milk, nut milk or egg in it bacteria are mostly held down at this strength, fat turns.",
                            Source.HANDLING_CAUTIONS)
                    : found(
                            Where.FRIDGE,
                            TWO_WEEKS,
                            "With milk, nut milk or egg in it bacteria are not reliably held down below 20 % vol.",
                            Source.HANDLING_CAUTIONS);
        }

        /** Heat in the closed bottle helps where acid or alcohol holds the spores that outlive it. */
        private @Nullable Keeping sealed() {
            boolean sporesHeld = sourness.isAtMost(ACID) || strength >= SPORES_HELD || activity <= DRY;
            return pasteurised && sporesHeld
                    ? found(
                            Where.COLD_ONCE_OPEN,
                            YEAR,
                            "Pasteurised in the closed bottle; spores that outlive it are held by acid, alcohol or sugar.",
                            Source.GROWTH_LIMITS)
                    : null;
        }

        private Keeping fermenting() {
            return found(
                    Where.FRIDGE,
                    TWO_WEEKS,
                    "Alcohol and sugar do not hold yeast: " + QuantityWords.fixed(delle, 0)
                            + " units of Delle, wanted 78.",
                    Source.DELLE);
        }

        private Keeping weak() {
            if (activity <= DRY) {
                return found(
                        Where.FRIDGE,
                        HALF_YEAR,
                        "So much sugar leaves bacteria no water; moulds and some yeasts can still grow on it.",
                        Source.GROWTH_LIMITS);
            }
            return sourness.isAtMost(ACID)
                    ? found(
                            Where.FRIDGE,
                            MONTH,
                            "Acid holds bacteria; yeasts and moulds it does not.",
                            Source.GROWTH_LIMITS)
                    : found(
                            Where.FRIDGE,
                            TWO_WEEKS,
                            "Neither alcohol nor acid is shown to hold bacteria.",
                            Source.GROWTH_LIMITS);
        }

        private Keeping found(Where where, int days, String reason, Source source) {
            return new Keeping(where, days, activity, sourness, delle, reason, source);
        }
    }
}

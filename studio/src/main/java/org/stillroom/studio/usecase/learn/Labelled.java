package org.stillroom.studio.usecase.learn;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.gauging.Learning;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.usecase.LabelTolerance;

/**
 * An ingredient by the one figure of its label that batches can tell something of.
 *
 * @param ingredient with what its kind stands for
 * @param figure which
 * @param value on its label, in the unit of the figure
 * @param tolerance half-width within which the label is right: % vol, of sugar per cent of it
 */
record Labelled(Ingredient ingredient, LearntLabel.Figure figure, double value, double tolerance) {
    /** Sugar of syrups and honeys, and of fruit, per cent of it; our own estimates. */
    private static final double OF_SYRUP = 2.0;

    private static final double OF_FRUIT = 10.0;

    /** Figures beside which the parabola through a label is laid, % vol. */
    private static final double ABOVE = 5.0;

    private static final double BELOW = 10.0;

    /** Returns the figure of an ingredient, or empty where it has none or is the result of another recipe. */
    static Optional<Labelled> of(Ingredient listed) {
        Ingredient ingredient = Generics.completed(listed);
        if (ingredient.from() != null) {
            return Optional.empty();
        }
        Typed<Strength> strength = ingredient.strength();
        if (strength != null) {
            double percent = percent(strength.value());
            return percent > 1.0
                    ? Optional.of(new Labelled(
                            ingredient,
                            LearntLabel.Figure.STRENGTH,
                            percent,
                            tolerance(ingredient, ofStrength(ingredient))))
                    : Optional.empty();
        }
        Typed<Share> sugar = ingredient.sugar();
        if (sugar == null) {
            return Optional.empty();
        }
        LearntLabel.Figure figure = sugar.value() instanceof MassConcentration
                ? LearntLabel.Figure.SUGAR_PER_LITRE
                : LearntLabel.Figure.SUGAR_BY_MASS;
        double value = sugar.value() instanceof MassConcentration concentration
                ? concentration.gramsPerLitre()
                : 100.0 * ((MassFraction) sugar.value()).fraction();
        return ofSugar(ingredient)
                .filter(usual -> value > 0.0)
                .map(usual -> new Labelled(ingredient, figure, value, tolerance(ingredient, usual)));
    }

    private static double tolerance(Ingredient ingredient, double usual) {
        Typed<Double> typed = ingredient.tolerance();
        return typed == null || !(typed.value() > 0.0) ? usual : typed.value();
    }

    private static double ofStrength(Ingredient ingredient) {
        return switch (ingredient.kind()) {
            case SPIRIT, WINE, LIQUEUR -> LabelTolerance.OF_LABEL;
            case DISTILLATE -> LabelTolerance.OF_DISTILLATE;
            case ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, HYDROSOL, SUGAR, SYRUP, HONEY, JUICE ->
                LabelTolerance.OF_OWN;
            case FRESH_PLANT, DRIED_PLANT, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER, OTHER -> LabelTolerance.OF_OWN;
        };
    }

    /** Returns the tolerance of its sugar; empty for what is sold as sugar itself, or of which nothing is told by gauging. */
    private static Optional<Double> ofSugar(Ingredient ingredient) {
        return switch (ingredient.kind()) {
            case SYRUP, HONEY -> Optional.of(OF_SYRUP);
            case JUICE, FRESH_PLANT -> Optional.of(OF_FRUIT);
            case SPIRIT, WINE, LIQUEUR, ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL ->
                Optional.empty();
            case SUGAR, DRIED_PLANT, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER, OTHER -> Optional.empty();
        };
    }

    static double percent(Strength strength) {
        return Strengths.byVolume(Strengths.massFraction(strength), VolumeBasis.AT_20C)
                .percent();
    }

    /** Returns what tells it from others: its name and what its label says. */
    String group() {
        return ingredient.name().strip().toLowerCase(Locale.ROOT) + " " + figure + " " + Math.round(1e4 * value);
    }

    /** Returns the same ingredient as a bottle of it is labelled, where that says another strength. */
    Labelled labelled(@Nullable Ingredient bottle) {
        if (bottle == null || bottle.strength() == null || figure != LearntLabel.Figure.STRENGTH) {
            return this;
        }
        Typed<Strength> strength = bottle.strength();
        double percent = percent(strength.value());
        Typed<Double> typed = bottle.tolerance();
        return percent > 1.0
                ? new Labelled(ingredient, figure, percent, typed == null ? tolerance : typed.value())
                : this;
    }

    /** Returns what a gram of it brings when the label is right. */
    Contents perGram() {
        return off(0.0);
    }

    /** Returns what so many grams of it do in a vessel. */
    Learning.Share share(int label, double grams) {
        double above = figure == LearntLabel.Figure.STRENGTH ? above() : tolerance;
        double below = figure == LearntLabel.Figure.STRENGTH ? -Math.min(BELOW, 0.9 * value) : -tolerance;
        return Learning.Share.of(
                label,
                perGram().times(grams),
                above,
                off(above).times(grams),
                below,
                off(below).times(grams));
    }

    private double above() {
        double room = 100.0 - value;
        return room > 0.5 ? Math.min(ABOVE, room) : -0.5 * Math.min(BELOW, 0.9 * value);
    }

    /** Returns what a gram of it brings when its figure is so much above the label. */
    Contents off(double by) {
        if (figure == LearntLabel.Figure.STRENGTH) {
            AlcoholByVolume strength = new AlcoholByVolume(value + by, VolumeBasis.AT_20C);
            return resolved(ingredient.ofStrength(new Typed<>("", strength))).perGram();
        }
        Resolved resolved = resolved(ingredient.ofTolerance(new Typed<>("", Math.abs(by))));
        Contents plain = resolved.perGram();
        Contents upper = resolved.perGramAtUpperLabel();
        return by >= 0.0 ? upper : mirrored(plain, upper);
    }

    private static Contents mirrored(Contents plain, Contents upper) {
        double[] grams = plain.toGrams();
        double[] above = upper.toGrams();
        for (int i = 0; i < grams.length; i++) {
            grams[i] = Math.max(0.0, 2.0 * grams[i] - above[i]);
        }
        return Contents.ofGrams(grams);
    }

    private static Resolved resolved(Ingredient ingredient) {
        Resolved resolved = Resolution.of(ingredient).resolved();
        if (resolved == null) {
            throw new IllegalArgumentException(ingredient.name() + " does not say enough");
        }
        return resolved;
    }
}

package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;

/**
 * What a lot is taken for when it goes into a recipe.
 *
 * @param facts the figures that matter for it
 * @param generic where what was not typed is taken from, or null when nothing was
 * @param findings what was assumed
 */
public record LotFacts(List<Fact> facts, @Nullable Generic generic, List<Finding> findings) {
    /** Shares below this are none. */
    private static final double NOTHING = 1e-6;

    public LotFacts {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
    }

    /** What a figure rests on. */
    public enum TakenFrom {
        /** The maker typed it. */
        SHEET,
        /** The ingredient that its name or kind stands for. */
        GENERIC,
        /** The table of materials states it of an oil of its name, or the range of oils at large. */
        TABLE,
        /** It follows from what is in it. */
        CONTENTS
    }

    /** A figure that can be told of a lot. */
    public enum What {
        STRENGTH,
        SUGAR,
        SUGAR_BY_MASS,
        ACIDITY,
        OIL,
        DENSITY
    }

    /**
     * A figure of a lot.
     *
     * @param estimate in % vol, g/L, % by mass, g/L, g/L and g/mL, at 20 °C
     * @param takenFrom what it rests on
     */
    public record Fact(What what, Estimate estimate, TakenFrom takenFrom) {}

    /** Returns what a lot is taken for, or nothing as long as it does not say enough. */
    public static Optional<LotFacts> of(LotOnShelf lot) {
        Ingredient listed = lot.ingredient();
        if (listed == null) {
            return Optional.empty();
        }
        Resolution resolution = Resolution.of(listed);
        Resolved resolved = resolution.resolved();
        if (resolved == null || resolved.perGram().total() == 0.0) {
            return Optional.empty();
        }
        boolean completed = !Generics.completed(listed).equals(listed);
        Generic generic = completed ? Generics.find(listed.name()) : null;
        List<Finding> findings = new ArrayList<>(resolution.findings());
        if (resolved.oilDensity() != null) {
            findings.add(resolved.oilDensity().told(listed.name()));
        }
        return Optional.of(new LotFacts(facts(listed, resolved), generic, findings));
    }

    private static List<Fact> facts(Ingredient listed, Resolved resolved) {
        Figures figures = Liquid.figures(resolved.perGram(), Temperature.TWENTY_CELSIUS);
        Figures upper = Liquid.figures(resolved.perGramAtUpperLabel(), Temperature.TWENTY_CELSIUS);
        List<Fact> facts = new ArrayList<>();
        TakenFrom said = listed.contains().isEmpty() ? TakenFrom.GENERIC : TakenFrom.SHEET;
        add(facts, What.STRENGTH, figures, upper, Figure.STRENGTH, listed.strength() == null ? said : TakenFrom.SHEET);
        TakenFrom ofSugar = listed.sugar() == null ? said : TakenFrom.SHEET;
        if (resolved.solid()) {
            add(facts, What.SUGAR_BY_MASS, figures, upper, Figure.SUGAR_BY_MASS, ofSugar);
        } else {
            add(facts, What.SUGAR, figures, upper, Figure.SUGAR, ofSugar);
            add(facts, What.ACIDITY, figures, upper, Figure.ACIDITY, listed.acidity() == null ? said : TakenFrom.SHEET);
            oil(facts, resolved, figures);
        }
        density(facts, listed, resolved, figures, upper);
        return facts;
    }

    private static void add(
            List<Fact> facts, What what, Figures figures, Figures upper, Figure figure, TakenFrom takenFrom) {
        if (figures.has(figure) && figures.value(figure) > NOTHING) {
            facts.add(new Fact(what, estimate(figures, upper, figure), takenFrom));
        }
    }

    private static Estimate estimate(Figures figures, Figures upper, Figure figure) {
        double value = figures.value(figure);
        double ofLabel = upper.has(figure) ? Math.abs(upper.value(figure) - value) : 0.0;
        return new Estimate(value, Math.hypot(ofLabel, figures.doubt(figure)));
    }

    private static void oil(List<Fact> facts, Resolved resolved, Figures figures) {
        double perLitre = 1000.0 * resolved.perGram().grams(Substance.OIL) / figures.value(Figure.VOLUME_20C);
        boolean dissolved = resolved.perGram().grams(Substance.OIL) < 0.9;
        if (perLitre > NOTHING && dissolved) {
            facts.add(new Fact(What.OIL, new Estimate(perLitre, 0.0), TakenFrom.SHEET));
        }
    }

    private static void density(
            List<Fact> facts, Ingredient listed, Resolved resolved, Figures figures, Figures upper) {
        if (resolved.gramsPerMillilitre().isEmpty()) {
            return;
        }
        double density = resolved.gramsPerMillilitre().getAsDouble();
        TakenFrom from = listed.density() != null
                ? TakenFrom.SHEET
                : resolved.oilDensity() != null
                        ? TakenFrom.TABLE
                        : resolved.solid() ? TakenFrom.GENERIC : TakenFrom.CONTENTS;
        double doubt = from == TakenFrom.CONTENTS
                ? estimate(figures, upper, Figure.DENSITY).doubt() / 1000.0
                : density * resolved.relativeDensityDoubt();
        facts.add(new Fact(What.DENSITY, new Estimate(density, doubt), from));
    }
}

package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** The ingredients of one recipe, worked out, with the results of its stages among them; keeps what it finds wrong. */
final class Pantry {
    private final Recipe recipe;
    private final Map<String, Plan.StagePlan> stages;
    private final Map<String, Resolved> resolved = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    /** @param stages plans of the recipes that ingredients come from, by name of the ingredient */
    Pantry(Recipe recipe, Map<String, Plan.StagePlan> stages) {
        this.recipe = recipe;
        this.stages = stages;
    }

    List<Finding> findings() {
        return findings;
    }

    boolean hasStop() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
    }

    /** Returns what a line uses, with the dropper that it is dosed with: an ingredient of the recipe, else a generic; or null with a finding. */
    @Nullable
    Resolved find(Line line) {
        Resolved found = find(line.use());
        Measure dropper = recipe.dropper(line);
        return found == null ? null : found.from(dropper == null ? null : dropper.ownDropper());
    }

    private @Nullable Resolved find(String name) {
        if (!resolved.containsKey(name)) {
            Resolved found = resolve(name);
            if (found == null) {
                return null;
            }
            resolved.put(name, found);
        }
        return resolved.get(name);
    }

    private @Nullable Resolved resolve(String name) {
        Ingredient ingredient = named(name);
        if (ingredient == null) {
            findings.add(Finding.of(
                    "ingredient-unknown",
                    Severity.STOP,
                    name,
                    "not known",
                    "No ingredient is called " + name + ".",
                    "List it under ingredients, or use the name of one that is."));
            return null;
        }
        Plan.StagePlan stage = stages.get(ingredient.name());
        if (stage != null && ingredient.strength() == null) {
            return ofStage(ingredient, stage);
        }
        Resolution resolution = Resolution.of(ingredient);
        findings.addAll(resolution.findings());
        return resolution.resolved();
    }

    private @Nullable Ingredient named(String name) {
        for (Ingredient ingredient : recipe.ingredients()) {
            if (ingredient.name().equals(name)) {
                return ingredient;
            }
        }
        Generic generic = Generics.find(name);
        return generic == null ? null : generic.ingredient();
    }

    private static Resolved ofStage(Ingredient ingredient, Plan.StagePlan stage) {
        Contents perGram = stage.plan().liquid().perGram();
        double density = stage.yieldGrams() / stage.yieldMillilitres();
        return new Resolved(ingredient, perGram, 0.0, perGram, OptionalDouble.of(density), 0.0, false, null);
    }

    /** Returns how much there is of an ingredient, g; infinite when it was not said, null with a finding when it cannot be told. */
    @Nullable
    Double atHand(Resolved ingredient) {
        Typed<Amount> said = ingredient.ingredient().atHand();
        if (said != null) {
            return grams(ingredient, said, "at hand");
        }
        Plan.StagePlan stage = stages.get(ingredient.name());
        return stage == null ? Double.POSITIVE_INFINITY : stage.yieldGrams();
    }

    /** Returns the grams of an amount as typed, or null with a finding. */
    @Nullable
    Double grams(Resolved ingredient, Typed<Amount> amount, String what) {
        Amount value = amount.value();
        if (value instanceof Mass mass) {
            return mass.grams();
        }
        if (value instanceof Drops drops) {
            Double perDrop = gramsPerDrop(ingredient);
            return perDrop == null ? null : drops.count() * perDrop;
        }
        return gramsOfVolume(ingredient, (Volume) value, amount.text(), what);
    }

    private @Nullable Double gramsOfVolume(Resolved ingredient, Volume volume, String text, String what) {
        OptionalDouble density = ingredient.gramsPerMillilitre();
        if (density.isPresent()) {
            tellDensity(ingredient);
            return volume.millilitres() * density.getAsDouble();
        }
        findings.add(Finding.of(
                "volume-of-solid",
                Severity.STOP,
                ingredient.name(),
                "cannot be told",
                ingredient.name() + ", " + what + " " + text + ": how much a millilitre of it weighs is not known.",
                "Give a mass, or write what a measured volume of it weighs as its density."));
        return null;
    }

    /** A volume of an oil is a mass by the density that a table states of it: says so, once of each. */
    private void tellDensity(Resolved ingredient) {
        @Nullable OilDensity oil = ingredient.oilDensity();
        if (oil != null && !findings.contains(oil.told(ingredient.name()))) {
            findings.add(oil.told(ingredient.name()));
        }
    }

    private @Nullable Double gramsPerDrop(Resolved ingredient) {
        Typed<Amount> drop = ingredient.ingredient().drop();
        if (drop != null && drop.value() instanceof Mass mass) {
            return mass.grams();
        }
        if (drop != null && drop.value() instanceof Volume volume) {
            return gramsOfVolume(ingredient, volume, drop.text(), "one drop of");
        }
        double estimate = ingredient.gramsPerDrop();
        String milligrams = milligrams(estimate);
        OwnDropper own = ingredient.dropper();
        findings.add(new Finding(
                own == null ? "drop-estimated" : "drop-by-own-dropper",
                own == null ? Severity.CAUTION : Severity.NOTE,
                ingredient.name(),
                "",
                "estimated",
                "A drop of " + ingredient.name() + " is taken as " + milligrams
                        + (own == null
                                ? ", that of the official dropper."
                                : ", by the drop of water from your dropper " + own.name() + ", "
                                        + milligrams(own.waterDrop().grams())
                                        + ", and the ratio of the surface tensions."),
                own == null
                        ? "droppers differ: 30 % either way is common"
                        : "a drop lies within " + Words.number(100 * ingredient.dropDoubt(), 0)
                                + " % of that in nine cases of ten",
                "Weigh 20 to 50 drops of it from your dropper and write what one weighs: drop: " + milligrams + ".",
                null,
                Source.SURFACE_TENSION));
        return estimate;
    }

    private static String milligrams(double grams) {
        return Words.number(1000 * grams, 1) + " mg";
    }
}

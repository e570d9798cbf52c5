package org.stillroom.core.ingredient;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Works out the liquid that an ingredient brings, or says what must be known first.
 *
 * @param resolved the ingredient as the balances see it, or null when something is missing or impossible
 * @param findings what is missing, assumed or impossible
 */
public record Resolution(@Nullable Resolved resolved, List<Finding> findings) {
    /** How far a measure of grains lies from its usual weight: a cup of sugar is 190 to 210 g. Common practice, no source. */
    static final double BULK_DENSITY_DOUBT = 0.05;

    /** Oil from which on a liquid is an oil, part of its mass. */
    private static final double NEARLY_ALL = 0.9;

    private static final double DRIED_PLANT_WATER = 0.10;

    public Resolution {
        findings = List.copyOf(findings);
    }

    /** Returns what the ingredient brings per gram. */
    public static Resolution of(Ingredient listed) {
        Ingredient completed = Generics.completed(listed);
        Ingredient ingredient = FattyOils.asFat(TablePlants.completed(completed));
        Finding missing = SugarSubstitutes.isUnsaid(listed) ? noSugar(listed) : missing(ingredient);
        if (missing != null) {
            return new Resolution(null, List.of(missing));
        }
        try {
            Contents perGram = contents(ingredient, 0.0);
            Plant plant = TablePlants.of(completed);
            Contents upper = ingredient.tolerance() != null
                    ? atUpperLabel(ingredient, perGram)
                    : plant == null ? perGram : TablePlants.wetter(perGram, plant);
            return new Resolution(resolved(ingredient, perGram, upper), taken(completed));
        } catch (IllegalArgumentException impossible) {
            return new Resolution(null, List.of(impossible(ingredient, impossible)));
        }
    }

    private static Finding impossible(Ingredient ingredient, IllegalArgumentException why) {
        return Finding.of(
                "ingredient-cannot-be",
                Severity.STOP,
                ingredient.name(),
                "cannot be",
                ingredient.name() + ": " + why.getMessage() + ".",
                "Check strength, sugar, density and contents against the label.");
    }

    private static Contents atUpperLabel(Ingredient ingredient, Contents perGram) {
        try {
            return contents(ingredient, 1.0);
        } catch (IllegalArgumentException beyondWhatCanBe) {
            // A label at the very end of its scale (99.9 ± 0.3 % vol) cannot err upwards; its lower half stands for
            // both.
            Contents lower = contents(ingredient, -1.0);
            double[] mirrored = perGram.toGrams();
            for (int i = 0; i < mirrored.length; i++) {
                mirrored[i] = Math.max(0.0, 2.0 * mirrored[i] - lower.toGrams()[i]);
            }
            return knowingOil(ingredient, Contents.ofGrams(mirrored));
        }
    }

    private static Resolved resolved(Ingredient ingredient, Contents perGram, Contents upper) {
        boolean solid = isSolid(ingredient.kind());
        double marc = Math.max(0.0, 1.0 - perGram.total());
        Typed<Density> known = ingredient.density();
        if (known != null) {
            return new Resolved(
                    ingredient,
                    perGram,
                    marc,
                    upper,
                    OptionalDouble.of(known.value().kilogramsPerCubicMetre() / 1000.0),
                    solid ? BULK_DENSITY_DOUBT : 0.0,
                    solid,
                    null);
        }
        @Nullable OilDensity oil = oilDensity(ingredient, perGram);
        if (oil != null) {
            OptionalDouble ofOil = OptionalDouble.of(oil.gramsPerMillilitre());
            return new Resolved(ingredient, perGram, marc, upper, ofOil, oil.relativeDoubt(), false, null);
        }
        OptionalDouble density = solid
                ? OptionalDouble.empty()
                : OptionalDouble.of(perGram.total() / VolumeModel.atTwenty().millilitres(perGram.toGrams()));
        return new Resolved(ingredient, perGram, marc, upper, density, 0.0, solid, null);
    }

    /** Returns the density of an oil that nobody measured, or null where it is something else or its own density is said. */
    static @Nullable OilDensity oilDensity(Ingredient ingredient, Contents perGram) {
        boolean oil = ingredient.kind() == Kind.ESSENTIAL_OIL
                && ingredient.density() == null
                && perGram.grams(Substance.OIL) > NEARLY_ALL * perGram.total();
        return oil ? OilPart.density(ingredient) : null;
    }

    private static boolean isSolid(Kind kind) {
        return switch (kind) {
            case SUGAR, FRESH_PLANT, DRIED_PLANT, ACID, SALT -> true;
            case SPIRIT, WINE, LIQUEUR, ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, SYRUP ->
                false;
            case HONEY, JUICE, GLYCEROL, DAIRY, EGG, WATER, OTHER -> false;
        };
    }

    /** Returns the contents of one gram when the label errs by so many times its tolerance. */
    private static Contents contents(Ingredient ingredient, double labelErrors) {
        return knowingOil(ingredient, substances(ingredient, labelErrors));
    }

    /** Returns the contents with the constituents of their oil, as far as its parts or the name say which oil it is. */
    private static Contents knowingOil(Ingredient ingredient, Contents contents) {
        Map<String, Double> known = new TreeMap<>();
        if (contents.grams(Substance.OIL) > 0.0) {
            for (OilPart each : OilPart.of(ingredient)) {
                each.composition().forEach((key, share) -> known.merge(key, each.part() * share, Double::sum));
            }
        }
        return known.isEmpty() ? contents : contents.knowingOil(known);
    }

    private static Contents substances(Ingredient ingredient, double labelErrors) {
        Typed<Double> tolerance = ingredient.tolerance();
        double error = tolerance == null ? 0.0 : labelErrors * tolerance.value();
        boolean onStrength = ingredient.strength() != null;
        Composition composition = new Composition();
        if (ingredient.strength() != null) {
            composition.addEthanol(percentAt20(ingredient.strength().value()) + error);
        }
        double part = onStrength ? 1.0 : 1.0 + error / 100.0;
        addSugar(ingredient, composition, part);
        if (ingredient.acidity() != null) {
            composition.add(Substance.CITRIC, ingredient.acidity().value(), part);
        }
        ingredient
                .contains()
                .forEach((substance, share) ->
                        composition.add(substance, share.value(), substance == Substance.WATER ? 1.0 : part));
        addAroma(ingredient, composition, part);
        return complete(ingredient, composition, part);
    }

    /** What oils are named makes the oil as a whole, where that is not said. */
    private static void addAroma(Ingredient ingredient, Composition composition, double part) {
        Typed<Aroma> aroma = ingredient.aroma();
        boolean said =
                ingredient.kind() == Kind.ESSENTIAL_OIL || ingredient.contains().containsKey(Substance.OIL);
        if (aroma != null && !said) {
            aroma.value().parts().forEach(each -> composition.add(Substance.OIL, each.share(), part));
        }
    }

    private static void addSugar(Ingredient ingredient, Composition composition, double part) {
        Typed<Share> sugar = ingredient.sugar();
        if (sugar == null) {
            return;
        }
        switch (ingredient.kind()) {
            case HONEY, JUICE, WINE, FRESH_PLANT, DRIED_PLANT -> {
                composition.add(Substance.GLUCOSE, sugar.value(), 0.5 * part);
                composition.add(Substance.FRUCTOSE, sugar.value(), 0.5 * part);
            }
            case SPIRIT, LIQUEUR, ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, SUGAR, SYRUP ->
                composition.add(Substance.SUCROSE, sugar.value(), part);
            case ACID, SALT, GLYCEROL, DAIRY, EGG, WATER, OTHER ->
                composition.add(Substance.SUCROSE, sugar.value(), part);
        }
    }

    private static Contents complete(Ingredient ingredient, Composition composition, double part) {
        return switch (ingredient.kind()) {
            case SUGAR -> dry(composition, Substance.SUCROSE, part);
            case SALT -> dry(composition, Substance.SALT, part);
            case GLYCEROL -> dry(composition, Substance.GLYCEROL, part);
            case ACID -> dry(composition, acid(ingredient), part);
            case ESSENTIAL_OIL -> dry(composition, Substance.OIL, part);
            case HONEY -> honey(ingredient, composition);
            case FRESH_PLANT -> composition.byMassAlone();
            case DRIED_PLANT -> driedPlant(ingredient, composition);
            case SPIRIT, WINE, LIQUEUR, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, SYRUP ->
                wet(ingredient, composition);
            case JUICE, DAIRY, EGG, WATER, OTHER -> wet(ingredient, composition);
        };
    }

    /** A substance sold as itself: pure unless the contents are said, else what is not said is other solids. */
    private static Contents dry(Composition composition, Substance pure, double part) {
        if (composition.accountedFor() == 0.0) {
            return Contents.of(pure, Math.min(1.0, part)).perGram();
        }
        return composition.byMass(Substance.OTHER_SOLIDS);
    }

    private static Contents wet(Ingredient ingredient, Composition composition) {
        if (ingredient.density() != null) {
            return composition.ofDensity(ingredient.density().value().kilogramsPerCubicMetre());
        }
        if (composition.hasNothingPerLitre()) {
            return composition.byMass(Substance.WATER);
        }
        return composition.filledWithWater();
    }

    /** Honey of which only the sugar is said takes the water of the generic one; the rest are other solids. */
    private static Contents honey(Ingredient ingredient, Composition composition) {
        Generic typical = Generics.find("honey");
        Typed<Share> water =
                typical == null ? null : typical.ingredient().contains().get(Substance.WATER);
        if (water != null && !ingredient.contains().containsKey(Substance.WATER)) {
            composition.add(Substance.WATER, water.value(), 1.0);
        }
        return composition.byMass(Substance.OTHER_SOLIDS);
    }

    private static Contents driedPlant(Ingredient ingredient, Composition composition) {
        if (!ingredient.contains().containsKey(Substance.WATER)) {
            composition.add(Substance.WATER, new MassFraction(DRIED_PLANT_WATER), 1.0);
        }
        return composition.byMassAlone();
    }

    private static double percentAt20(Strength strength) {
        if (strength instanceof AlcoholByVolume byVolume && byVolume.basis() == VolumeBasis.AT_20C) {
            return byVolume.percent();
        }
        return Strengths.byVolume(Strengths.massFraction(strength), VolumeBasis.AT_20C)
                .percent();
    }

    /** Returns the acid that something is: what it is said to contain tells before its name. */
    private static Substance acid(Ingredient ingredient) {
        for (Substance said : ingredient.contains().keySet()) {
            if (said.acid() != null) {
                return said;
            }
        }
        for (Substance substance : Substance.values()) {
            Acid acid = substance.acid();
            if (acid != null && acid.isNamedIn(ingredient.name())) {
                return substance;
            }
        }
        throw new IllegalArgumentException("which acid it is does not follow from its name");
    }

    private static @Nullable Finding missing(Ingredient ingredient) {
        return switch (ingredient.kind()) {
            case SPIRIT -> ingredient.strength() == null ? ask(ingredient, "strength", "strength: 40 %") : null;
            case SYRUP ->
                ingredient.sugar() == null && ingredient.contains().isEmpty()
                        ? ask(ingredient, "sugar", "sugar: 66 % (by mass), sugar: 66 °Bx or sugar: 850 g/L")
                        : null;
            case FRESH_PLANT ->
                ingredient.contains().containsKey(Substance.WATER)
                        ? null
                        : ask(ingredient, "water", "contains: {water: 82 %}");
            case OTHER ->
                ingredient.contains().isEmpty() && ingredient.strength() == null && ingredient.sugar() == null
                        ? ask(
                                ingredient,
                                "content",
                                "contains: {water: 90 %, sucrose: 10 %}, or for a dry powder contains: {other solids: 100 %}")
                        : null;
            case WINE, LIQUEUR, ESSENCE, TINCTURE, MACERATE, DISTILLATE ->
                ingredient.strength() == null ? ask(ingredient, "strength", "strength: 40 %") : null;
            case ESSENTIAL_OIL, HYDROSOL, SUGAR, HONEY, JUICE, DRIED_PLANT, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER ->
                null;
        };
    }

    private static Finding noSugar(Ingredient ingredient) {
        return Finding.of(
                "ingredient-incomplete",
                Severity.STOP,
                ingredient.name() + ", content",
                "not known",
                "By its name " + ingredient.name()
                        + " is, or holds, something that sweetens and is no sugar of the law;"
                        + " as sucrose it is not counted.",
                "Write what it holds, such as contains: {other solids: 100 %}; of a mixture its sugar too, such as"
                        + " contains: {sucrose: 50 %, other solids: 50 %}.");
    }

    private static Finding ask(Ingredient ingredient, String what, String example) {
        return Finding.of(
                "ingredient-incomplete",
                Severity.STOP,
                ingredient.name() + ", " + what,
                "not known",
                "The " + what + " of " + ingredient.name() + " is not said, and " + withArticle(ingredient.kind())
                        + " cannot be counted without it.",
                "Write it, such as " + example + ".");
    }

    private static String withArticle(Kind kind) {
        if (kind == Kind.OTHER) {
            return "what is of no other kind";
        }
        return ("aeiou".indexOf(kind.label().charAt(0)) < 0 ? "a " : "an ") + kind.label();
    }

    private static List<Finding> taken(Ingredient ingredient) {
        List<Finding> all = new ArrayList<>(assumptions(ingredient));
        if (FattyOils.isMeant(ingredient)) {
            all.add(countedAsFat(ingredient));
        }
        List<String> unknown = ingredient.aroma() == null
                ? List.of()
                : OilPart.of(ingredient).stream()
                        .filter(part ->
                                part.composition().isEmpty() && !part.name().equals(ingredient.name()))
                        .map(OilPart::name)
                        .toList();
        if (!unknown.isEmpty()) {
            all.add(Finding.of(
                    "aroma-not-known",
                    Severity.CAUTION,
                    ingredient.name(),
                    "not known",
                    "No table knows " + String.join(", ", unknown)
                            + " as an oil or a constituent; it counts as oil, and "
                            + "what it is made of is not known.",
                    "Write it as the table of materials does, or by its CAS number."));
        }
        return all;
    }

    private static List<Finding> assumptions(Ingredient ingredient) {
        Plant plant = TablePlants.of(ingredient);
        if (plant != null) {
            return List.of(TablePlants.told(ingredient, plant));
        }
        boolean bare = ingredient.contains().isEmpty() && ingredient.sugar() == null;
        return switch (ingredient.kind()) {
            case DAIRY, EGG, JUICE ->
                bare ? List.of(assumed(ingredient, "water: nothing else is known of it")) : List.of();
            case DRIED_PLANT ->
                ingredient.contains().containsKey(Substance.WATER)
                        ? List.of()
                        : List.of(assumed(ingredient, "a plant with 10 % water"));
            case SPIRIT, WINE, LIQUEUR, ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL -> List.of();
            case SUGAR, SYRUP, HONEY, FRESH_PLANT, ACID, SALT, GLYCEROL, WATER, OTHER -> List.of();
        };
    }

    private static Finding countedAsFat(Ingredient ingredient) {
        return new Finding(
                "ingredient-assumed",
                Severity.CAUTION,
                ingredient.name(),
                "",
                "assumed",
                "By its name it is a fatty oil: it is counted as fat, not as essential oil.",
                "",
                "Write contains: {fat: 100 %}; if an essential oil is in it, say so in its name or in aroma.",
                null,
                Source.TRADE);
    }

    private static Finding assumed(Ingredient ingredient, String asWhat) {
        return new Finding(
                "ingredient-assumed",
                Severity.CAUTION,
                ingredient.name(),
                "",
                "assumed",
                "It is counted as " + asWhat + ".",
                "a typical value, not your lot's",
                "Write its contents if you know them.",
                null,
                Source.TRADE);
    }
}

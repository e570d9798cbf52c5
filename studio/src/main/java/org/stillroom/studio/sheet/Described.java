package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.VolumeBasis;

/** What stands small beside an ingredient: kind, strength with its basis, sugar, and what the maker noted. */
final class Described {
    private Described() {}

    static void write(Markup page, PlannedLine line) {
        Ingredient ingredient = line.ingredient().ingredient();
        List<String> words = new ArrayList<>();
        if (!line.name().contains(ingredient.kind().label())) {
            words.add(ingredient.kind().label());
        }
        String strength = strengthWords(line.ingredient());
        if (!strength.isEmpty()) {
            words.add(strength);
        }
        if (ingredient.sugar() != null) {
            words.add(Told.kept(ingredient.sugar().text()) + " sugar");
        }
        Typed<PlantRatio> ratio = ingredient.ratio();
        if (ratio != null) {
            words.add("plant " + Told.kept(ratio.text()) + (ratio.text().indexOf(':') < 0 ? "" : " (g to mL)"));
        }
        for (int i = 0; i < words.size(); i++) {
            page.typed(i == 0 ? "" : ", ").text(words.get(i));
        }
        if (ingredient.plant() != null) {
            page.typed(words.isEmpty() ? "" : ", ").typed(ingredient.plant());
        }
        String note =
                line.line().note() == null ? ingredient.note() : line.line().note();
        if (note != null) {
            page.typed(words.isEmpty() ? "" : ". ").typed(note);
        }
    }

    /** Returns the strength of an ingredient as it goes into the liquid, % vol at 20 °C; 0 where it has none. */
    static double strength(Resolved ingredient) {
        boolean holdsAlcohol = ingredient.perGram().grams(Substance.ETHANOL) > 0.0;
        return holdsAlcohol ? Essentials.of(ingredient.perGram().toGrams()).strength() : 0.0;
    }

    private static String strengthWords(Resolved ingredient) {
        Typed<Strength> typed = ingredient.ingredient().strength();
        if (typed == null) {
            double worked = strength(ingredient);
            return worked >= 0.05 ? Told.figure(worked, 1, "% vol at 20 °C") : "";
        }
        if (typed.value() instanceof AlcoholByVolume byVolume && byVolume.basis() == VolumeBasis.AT_20C) {
            return Told.kept(org.stillroom.core.quantity.QuantityWords.plain(byVolume.percent()) + " % vol at 20 °C");
        }
        return Told.kept(typed.text());
    }
}

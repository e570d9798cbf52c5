package org.stillroom.studio.web.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.EditRecipe;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.OwnDroppers;
import org.stillroom.studio.wording.Words;

/** The droppers that a line in drops can be dosed with: those of the recipe by their names, those of the shelf by their ids. */
final class DropperChoice {
    /** Begins the choice of a dropper of the shelf; a name that a maker types does not begin so. */
    private static final String OF_SHELF = "shelf:";

    private final List<OwnDroppers.Dropper> shelf;

    private DropperChoice(List<OwnDroppers.Dropper> shelf) {
        this.shelf = shelf;
    }

    static DropperChoice of(Store store) {
        return new DropperChoice(OwnDroppers.of(store.instruments().all(), MakersOunce.of(store.settings())));
    }

    /** Returns what can be chosen at a line, in words by what is sent for it; nothing where there is no choice. */
    Map<String, String> choices(RecipeForm form, int line, Words words) {
        Map<String, String> choices = new LinkedHashMap<>();
        String chosen = form.typed("lines." + line + ".with");
        boolean anyInRecipe = false;
        for (int i = 0; i < form.count("measures"); i++) {
            String name = form.typed("measures." + i + ".name");
            String drop = form.typed("measures." + i + ".drop");
            if (form.typed("measures." + i + ".kind").equals(MeasureKind.DROPPER.label()) && !name.isBlank()) {
                anyInRecipe = true;
                choices.put(name, drop.isBlank() ? name : words.say("compose.dropperKnown", name, words.marked(drop)));
            }
        }
        shelf.stream()
                .filter(each -> !isInRecipe(form, each.measure()))
                .forEach(each -> choices.put(
                        OF_SHELF + each.id(),
                        words.say("compose.dropperOfShelf", each.sheet().name(), drop(each, words))));
        if (choices.isEmpty()) {
            return choices;
        }
        Map<String, String> all = new LinkedHashMap<>();
        if (!anyInRecipe || chosen.isBlank()) {
            all.put("", words.say(anyInRecipe ? "compose.dropperFirst" : "compose.dropperOfficial"));
        }
        if (!chosen.isBlank() && !choices.containsKey(chosen)) {
            all.put(chosen, chosen);
        }
        all.putAll(choices);
        return all;
    }

    private static String drop(OwnDroppers.Dropper dropper, Words words) {
        return words.marked(dropper.sheet().fields().getOrDefault("drop", ""));
    }

    private static boolean isInRecipe(RecipeForm form, Measure dropper) {
        for (int i = 0; i < form.count("measures"); i++) {
            String drop = dropper.drop() == null ? "" : dropper.drop().text();
            if (form.typed("measures." + i + ".name").equals(dropper.name())
                    && form.typed("measures." + i + ".drop").equals(drop)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the form with the droppers of the shelf that were chosen listed among its measures. */
    RecipeForm listed(RecipeForm form) {
        RecipeForm listed = form;
        for (int i = 0; i < form.count("lines"); i++) {
            String chosen = form.typed("lines." + i + ".with");
            if (chosen.startsWith(OF_SHELF)) {
                listed = dosed(listed, i, chosen.substring(OF_SHELF.length()));
            }
        }
        return listed;
    }

    private RecipeForm dosed(RecipeForm form, int line, String id) {
        return shelf.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .map(each -> EditRecipe.dosing(form, line, each.measure()))
                .orElseGet(() -> form.with("lines." + line + ".with", ""));
    }
}

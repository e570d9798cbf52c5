package org.stillroom.studio.web.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.usecase.shelf.Asked;
import org.stillroom.studio.usecase.shelf.Asks;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.wording.Words;

/**
 * A field of a form.
 *
 * @param key under which it is sent
 * @param label what it asks
 * @param help with unit and basis
 * @param example shown while it is blank
 * @param typed what was typed
 * @param needed whether it cannot be counted without
 * @param problems what is wrong with what was typed
 */
public record FormField(
        String key,
        String label,
        String help,
        String example,
        String typed,
        boolean needed,
        List<SheetProblem> problems) {
    /** Kinds whose density is that of grains as they lie in a measure. */
    private static final Set<Kind> GRAINS =
            Set.of(Kind.SUGAR, Kind.ACID, Kind.SALT, Kind.FRESH_PLANT, Kind.DRIED_PLANT);

    public FormField {
        problems = List.copyOf(problems);
    }

    /** Returns the id of its element; keys may have blanks. */
    public String id() {
        return "f-" + key.replace(' ', '-');
    }

    /** Returns the fields of a kind that are needed or usual, or the further ones. */
    static List<FormField> of(
            String kind, boolean further, Map<String, String> typed, List<SheetProblem> problems, Words words) {
        List<FormField> fields = new ArrayList<>();
        for (Asked asked : Asks.of(kind)) {
            if (further == (asked.need() == Asked.Need.FURTHER)) {
                fields.add(new FormField(
                        asked.key(),
                        words.say("shelf.field." + asked.key().replace(' ', '_')),
                        words.say("shelf.help." + helpKey(kind, asked.key())),
                        words.say("shelf.suchAs", asked.example()),
                        Shown.typed(typed, asked.key()),
                        asked.need() == Asked.Need.NEEDED,
                        at(asked.key(), problems)));
            }
        }
        return fields;
    }

    private static String helpKey(String label, String key) {
        Kind kind = ShelfLots.kind(label);
        if (key.equals("strength") && kind == Kind.ESSENCE) {
            return "strength_essence";
        }
        if (key.equals("density") && GRAINS.contains(kind)) {
            return "density_grains";
        }
        return key.replace(' ', '_');
    }

    /** Returns the problems of one field. */
    static List<SheetProblem> at(String key, List<SheetProblem> problems) {
        return problems.stream().filter(problem -> problem.key().equals(key)).toList();
    }
}

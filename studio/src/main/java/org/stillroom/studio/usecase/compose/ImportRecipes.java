package org.stillroom.studio.usecase.compose;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;

/** Takes recipe files in: each that is understood becomes a recipe, byte for byte; each that is not comes back with why. */
public final class ImportRecipes {
    private final Recipes recipes;
    private final OunceMeaning ounce;
    private final RecipeReader reader;

    public ImportRecipes(Recipes recipes, OunceMeaning ounce) {
        this.recipes = recipes;
        this.ounce = ounce;
        this.reader = new RecipeReader(ounce);
    }

    /** A file as it was given. */
    public static final class Given {
        private final String name;
        private final byte[] bytes;

        /**
         * Takes a file.
         *
         * @param name of the file; empty for a text that was typed
         */
        public Given(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes.clone();
        }

        public String name() {
            return name;
        }

        public String text() {
            return new String(bytes, StandardCharsets.UTF_8);
        }

        private RecipeReading readBy(RecipeReader reader) {
            return reader.read(bytes);
        }
    }

    /** A file that was not understood, and everything that keeps it from being. */
    public record Refused(Given file, List<Finding> problems) {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * What came of it.
     *
     * @param ids of the recipes that are in now, in the order given
     * @param asked doses of oil in them that nobody said are meant, by the id of the recipe
     */
    public record Imported(List<String> ids, List<Refused> refused, Map<String, List<Slips.Asked>> asked) {
        /** Nothing was given. */
        public static final Imported NOTHING = new Imported(List.of(), List.of(), Map.of());

        public Imported {
            asked = Collections.unmodifiableMap(new LinkedHashMap<>(asked));
            ids = List.copyOf(ids);
            refused = List.copyOf(refused);
        }
    }

    /** Takes files in. */
    public Imported answer(List<Given> files, String request) {
        List<String> ids = new ArrayList<>();
        List<Refused> refused = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            RecipeReading reading = files.get(i).readBy(reader);
            if (reading instanceof RecipeReading.Refused trouble) {
                refused.add(new Refused(files.get(i), trouble.problems()));
            } else {
                String title = ((RecipeReading.Understood) reading).recipe().title();
                ids.add(saved(title, files.get(i), request + "." + i));
            }
        }
        return new Imported(ids, refused, asked(ids));
    }

    /** Asked when all are in, since one may be a stage of another. */
    private Map<String, List<Slips.Asked>> asked(List<String> ids) {
        Map<String, List<Slips.Asked>> asked = new LinkedHashMap<>();
        AskedDoses doses = new AskedDoses(recipes, ounce);
        for (String id : ids) {
            List<Slips.Asked> each =
                    recipes.latest(id).map(Revision::text).map(doses::of).orElse(List.of());
            if (!each.isEmpty()) {
                asked.put(id, each);
            }
        }
        return asked;
    }

    /** The note of its first revision is the file's name, by which other recipes may take from it. */
    private String saved(String title, Given file, String request) {
        String id = recipes.create(title, request);
        String note = file.name().isEmpty() ? null : file.name();
        recipes.save(id, 0, title, file.text(), note, request + ".revision");
        return id;
    }
}

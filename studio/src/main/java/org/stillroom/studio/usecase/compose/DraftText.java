package org.stillroom.studio.usecase.compose;

import java.util.LinkedHashMap;
import org.stillroom.studio.recipefile.RecipeForm;
import tools.jackson.databind.json.JsonMapper;

/** A form as the JSON of its fields, in which it is kept as a draft. */
final class DraftText {
    private static final JsonMapper JSON = new JsonMapper();

    /** The fields of a form by name. */
    private static final class Typed extends LinkedHashMap<String, String> {
        private static final long serialVersionUID = 1;
    }

    private DraftText() {}

    static String write(RecipeForm form) {
        return JSON.writeValueAsString(form.fields());
    }

    static RecipeForm read(String body) {
        return RecipeForm.of(JSON.readValue(body, Typed.class));
    }
}

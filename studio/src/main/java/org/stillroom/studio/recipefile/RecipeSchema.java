package org.stillroom.studio.recipefile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The JSON Schema (2020-12) of the recipe file, by which editors complete and check what is typed. */
public final class RecipeSchema {
    private static final String RESOURCE = "recipe.schema.json";

    private RecipeSchema() {}

    /** Returns the schema as JSON. */
    public static String json() {
        try (InputStream in = Objects.requireNonNull(RecipeSchema.class.getResourceAsStream(RESOURCE), RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

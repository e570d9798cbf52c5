package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;

/** A recipe typed into a form is the recipe of the file. */
class RecipeFormTest {
    private static final RecipeReader READER = new RecipeReader(OunceMeaning.US_FLUID);

    static Stream<Path> examples() throws IOException {
        Path root = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(root.resolve("examples"))) {
            root = java.util.Objects.requireNonNull(root.getParent());
        }
        List<Path> files;
        try (Stream<Path> all = Files.walk(root.resolve("examples"))) {
            files = all.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThan(6);
        return files.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExampleGoesThroughTheFormUnchanged(Path file) throws IOException {
        Recipe recipe = ((RecipeReading.Understood) READER.read(Files.readAllBytes(file))).recipe();

        RecipeForm form = RecipeForm.of(recipe);

        assertThat(form.read(OunceMeaning.US_FLUID).problems()).isEmpty();
        assertThat(form.read(OunceMeaning.US_FLUID).recipe()).isEqualTo(recipe);
        assertThat(READER.read(form.text()))
                .isInstanceOfSatisfying(
                        RecipeReading.Understood.class,
                        read -> assertThat(read.recipe()).isEqualTo(recipe));
        assertThat(RecipeForm.of(form.fields())).isEqualTo(form);
    }

    @Test
    void aProblemStandsAtItsField() {
        RecipeForm form = typed("title", "Medlar", "target.strength", "lots", "lines.0.use", "neutral spirit")
                .plus("lines", Map.of("use", "water", "amount", "free"));

        FormReading reading = form.read(OunceMeaning.US_FLUID);

        assertThat(reading.recipe()).isNull();
        assertThat(reading.problemsAt("target.strength")).hasSize(1);
        assertThat(reading.problemsAt("lines.0")).isNotEmpty();
        assertThat(reading.problemsAt("lines.1.amount")).isEmpty();
    }

    @Test
    void oneFieldTakesAmountsAndDoses() {
        RecipeForm form = typed("title", "Medlar")
                .plus("lines", Map.of("use", "spirit 96 %", "amount", "330 ml"))
                .plus("lines", Map.of("use", "water", "amount", "3/4 oz"))
                .plus("lines", Map.of("use", "white sugar", "amount", "180 g/L"));

        Recipe recipe = form.read(OunceMeaning.US_FLUID).recipe();

        assertThat(java.util.Objects.requireNonNull(recipe).lines())
                .extracting(line -> (Object) line.amount().getClass())
                .containsExactly(LineAmount.Fixed.class, LineAmount.Fixed.class, LineAmount.PerLitre.class);
    }

    @Test
    void itemsCanBeTakenOutAndOthersMoveUp() {
        RecipeForm form = typed("title", "Medlar")
                .plus("lines", Map.of("use", "a", "amount", "1 g"))
                .plus("lines", Map.of("use", "b", "amount", "2 g"))
                .plus("lines", Map.of("use", "c", "amount", "3 g"))
                .plus("steps", Map.of("", "Stir."));

        RecipeForm without = form.minus("lines", 1);

        assertThat(without.count("lines")).isEqualTo(2);
        assertThat(without.typed("lines.1.use")).isEqualTo("c");
        assertThat(without.typed("steps.0")).isEqualTo("Stir.");
        assertThat(form.count("lines")).isEqualTo(3);
    }

    @Test
    void fieldsThatNoRecipeHasAreLeftOut() {
        RecipeForm form = typed("title", "Medlar", "token", "x", "lines.0.colour", "red", "lines.9999.use", "a");

        assertThat(form.fields()).containsOnlyKeys("title");
    }

    private static RecipeForm typed(String... pairs) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put(pairs[i], pairs[i + 1]);
        }
        return RecipeForm.of(fields);
    }
}

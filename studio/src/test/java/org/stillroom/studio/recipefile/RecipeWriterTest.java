package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;

class RecipeWriterTest {
    /** Everything that a recipe can hold, in the layout that is written. */
    static final String EVERYTHING = """
            stillroom: 1
            title: "Quince: the long one"
            target: {bottles: 3 x 350 ml, strength: 27..29 %, sugar: 180 g/L as invert, acidity: 4 g/L}
            ounce: 30 ml
            room: 66 °F
            vessel: 5 L

            measures:
              - {name: scale, kind: scale, marks: 0.1 g, tolerance: 0.2 g, holds: 2 kg}
              - {name: jigger, kind: jigger, sizes: [3/4 oz, 45 ml]}

            aim: use up quince spirit

            ingredients:
              - {name: quince spirit, kind: distillate, strength: 104 proof, tolerance: 0.3 %, at hand: 2 L}
              - name: syrup of ours
                kind: syrup
                sugar: 65 °Bx
                acidity: 2 g/L
                density: 1.319 g/ml
                drop: 0.05 g
                price: 3.20 EUR/kg
                at hand: 1.5 kg
                pack: 700 ml
                contains: {salt: 0.1 %, other solids: 2 g/L}
                aroma: lemon 20 mg/L, limonene 2 mg/L
                note: |-
                  Boiled twice.
                  # not a comment
              - {name: essence, kind: essence, from: stages/essence.yaml}
              - {name: green, kind: macerate, strength: 60 %, plant: dried wormwood, ratio: "1:5"}
              - {name: dark, kind: tincture, strength: 45 %, plant: "roots: gentian, angelica", ratio: 80 g/L}

            lines:
              - {use: quince spirit, amount: all}
              - {use: syrup of ours, amount: free, note: "slowly, and last"}
              - {use: essence, dose: "0,4 ml/L"}
              - {use: white sugar, amount: 3/4 oz, with: jigger}
              - {use: water, amount: make up}

            rest: 6 weeks
            loss: 1.5 ml/g
            ph: 3,4
            pasteurised: "yes"
            steps:
              - Stir, then wait.
              - "#2: filter"
            notes: |
              One line,
                a second one further in.

              A last one.
            """;

    @Test
    void aFileOfOurLayoutIsWrittenAsItWasRead() {
        assertThat(RecipeWriter.write(Examples.recipe(EVERYTHING))).isEqualTo(EVERYTHING);
    }

    @TestFactory
    Stream<DynamicTest> everyExampleComesBackFromWritingAsItWas() {
        return Examples.files().stream()
                .map(file -> DynamicTest.dynamicTest(file.toString(), () -> {
                    Recipe recipe = Examples.recipe(Examples.text(file));
                    assertThat(Examples.recipe(RecipeWriter.write(recipe))).isEqualTo(recipe);
                }));
    }

    @Test
    void quantitiesComeBackAsTheyWereTyped() {
        Recipe recipe = Examples.recipe("""
                stillroom: 1
                title: as typed
                target: {volume: "0,70 l", strength: "28 % vol"}
                lines:
                  - {use: vodka 40, amount: free}
                  - {use: water, amount: free}
                  - {use: sugar, amount: 3/4 cup}
                """);
        String written = RecipeWriter.write(recipe);
        assertThat(written).contains("\"0,70 l\"", "28 % vol", "amount: 3/4 cup");
        assertThat(Examples.recipe(written)).isEqualTo(recipe);
    }

    @Test
    void aBasisThatTheTextDoesNotSayIsWrittenBesideIt() {
        Target read = Examples.recipe(EVERYTHING).target();
        Target bare = new Target(
                read.volume(),
                read.bottles(),
                read.strength(),
                new org.stillroom.core.quantity.Typed<>(
                        "180 g/L", Objects.requireNonNull(read.sugar()).value()),
                SugarBasis.AS_SUCROSE,
                null);
        assertThat(RecipeWriter.write(plain("t", "n", bare))).contains("sugar: 180 g/L as sucrose");
    }

    @TestFactory
    @Tag("property")
    Stream<DynamicTest> anyTextComesBackExactly() {
        return IntStream.range(0, 400)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> {
                    Recipe recipe = plain(text(new Random(seed)), text(new Random(seed + 1000)), Target.OPEN);
                    assertThat(Examples.recipe(RecipeWriter.write(recipe))).isEqualTo(recipe);
                }));
    }

    private static Recipe plain(String title, String text, Target target) {
        Ingredient base = Ingredient.named("honey " + text, Kind.HONEY);
        Ingredient noted = new Ingredient(
                base.name(),
                base.kind(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                base.contains(),
                null,
                null,
                null,
                null,
                text);
        Line line = new Line(base.name(), new LineAmount.Free(), null, title);
        return new Recipe(
                title,
                null,
                target,
                List.of(noted),
                List.of(line),
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(text, title),
                text);
    }

    private static String text(Random random) {
        String alphabet = "ab 1:#,{}[]\"'\\%-?!&*|>@`~=\n\n \t\r.é°½\u0007\u0085\u00a0\u2028\uFEFF😀";
        int length = 1 + random.nextInt(12);
        StringBuilder text = new StringBuilder();
        int[] signs = alphabet.codePoints().toArray();
        for (int i = 0; i < length; i++) {
            text.appendCodePoint(signs[random.nextInt(signs.length)]);
        }
        return text.toString();
    }
}

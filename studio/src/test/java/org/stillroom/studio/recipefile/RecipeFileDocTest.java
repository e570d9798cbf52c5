package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.reference.Finding;

/** docs/recipe-file.md says what the reader does. */
class RecipeFileDocTest {
    private static final Pattern BLOCK = Pattern.compile("```(yaml|text)\n(.*?)```", Pattern.DOTALL);

    private final String page = Examples.text(Path.of("..", "docs", "recipe-file.md"));

    @Test
    void everyExampleButTheWrongOneIsRead() {
        List<String> yaml = blocks("yaml");
        List<String> right = yaml.subList(0, yaml.size() - 1);
        assertThat(right).hasSizeGreaterThan(3).allSatisfy(text -> Examples.recipe(whole(text)));
    }

    @Test
    void theWrongExampleGivesTheMessagesThatAreShown() {
        List<String> yaml = blocks("yaml");
        List<Finding> problems = Examples.problems(yaml.get(yaml.size() - 1));
        assertThat(problems.stream().map(RecipeFileDocTest::shown).toList())
                .zipSatisfy(
                        blocks("text").get(0).lines().toList(),
                        (shown, printed) -> assertThat(shown).startsWith(printed));
    }

    @Test
    void everyKeyAndKindIsToldInItsOrder() {
        assertThat(rows("## The recipe")).isEqualTo(Keys.RECIPE);
        assertThat(rows("## The target")).isEqualTo(Keys.TARGET);
        assertThat(rows("## Measures")).isEqualTo(Keys.MEASURE);
        assertThat(rows("## Ingredients\n")).isEqualTo(Keys.INGREDIENT);
        assertThat(rows("## Lines").subList(0, Keys.LINE.size())).isEqualTo(Keys.LINE);
        Stream.of(Kind.values()).forEach(kind -> assertThat(page).contains("`" + kind.label() + "`"));
        Stream.of(MeasureKind.values()).forEach(kind -> assertThat(page).contains("`" + kind.label() + "`"));
        Keys.CONTAINS.forEach(substance -> assertThat(page).contains("`" + substance + "`"));
    }

    @Test
    void everyGenericIsToldWithAllItsNames() {
        List<String> rows = rows("## Ingredients that need no listing");
        for (Generic generic : Generics.list()) {
            String name = generic.ingredient().name();
            if (generic.ingredient().kind() == Kind.SPIRIT) {
                assertThat(page).contains(name.replace("spirit ", "").replace(" %", ""));
            } else {
                assertThat(rows).contains(name);
                generic.otherNames()
                        .forEach(other ->
                                assertThat(page.toLowerCase(Locale.ROOT)).contains(other));
            }
        }
        assertThat(rows).allSatisfy(name -> assertThat(Generics.find(name)).isNotNull());
    }

    private static String shown(Finding finding) {
        return finding.where() + ": " + finding.message() + " " + finding.remedy();
    }

    /** Returns a part of a recipe with the rest around it. */
    private static String whole(String text) {
        return text.startsWith("stillroom")
                ? text
                : "stillroom: 1\ntitle: part\n" + text + "lines:\n  - {use: water, amount: 1 L}\n";
    }

    private List<String> blocks(String language) {
        List<String> blocks = new ArrayList<>();
        Matcher matcher = BLOCK.matcher(page);
        while (matcher.find()) {
            if (matcher.group(1).equals(language)) {
                blocks.add(matcher.group(2));
            }
        }
        return blocks;
    }

    /** Returns what stands in code type in the first column of a section's tables. */
    private List<String> rows(String heading) {
        int start = page.indexOf(heading) + heading.length();
        int end = page.indexOf("\n## ", start);
        return page.substring(start, end < 0 ? page.length() : end)
                .lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(3, line.indexOf('`', 3)))
                .toList();
    }
}

package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.sheet.DaySheet;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.sheet.SheetOptions;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;

/** The day sheet as a German reader prints it. */
class SheetInGermanTest {
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void nothingThatTheProgramSaysStaysEnglish(Path example) {
        Set<String> english = new TreeSet<>();
        Saying german = new Saying("de", (rule, text) -> {
            boolean known = GERMAN.told(rule, text).language() == Language.GERMAN;
            if (!known && text.matches(".*\\p{L}{3}.*") && !text.equals("% vol")) {
                english.add(text);
            }
            return GERMAN.toldOrMarked(rule, text);
        });
        PlanRecipe.Outcome outcome = PlanRecipe.answer(
                PlanRecipe.making(((OpenRecipe.Outcome.Opened) OpenRecipe.at(example)).recipe()), null, Workings.NONE);
        WorkedPlan plan = ((PlanRecipe.Outcome.Worked) outcome).plan();
        String sheet = DaySheet.html(plan, new SheetOptions(SheetOptions.Paper.A4, SheetOptions.Units.METRIC, german));
        assertThat(english).isEmpty();
        assertThat(sheet).contains("lang=\"de\"", "Was es wird").doesNotContainPattern("\\d\\.\\d+\u00a0(g|mL|%)<");
    }
}

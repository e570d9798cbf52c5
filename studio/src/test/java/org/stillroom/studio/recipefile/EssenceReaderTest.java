package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.stillroom.core.reference.Finding;

/** docs/essence-file.md says what the reader of essence files does. */
class EssenceReaderTest {
    private static final Pattern BLOCK = Pattern.compile("```(yaml|text)\n(.*?)```", Pattern.DOTALL);

    private final String page = Examples.text(Path.of("..", "docs", "essence-file.md"));

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

    private static EssenceSheet sheet(String text) {
        EssenceReading reading = EssenceReader.read(text);
        if (reading instanceof EssenceReading.Understood understood) {
            return understood.sheet();
        }
        throw new AssertionError(((EssenceReading.Refused) reading).problems().toString());
    }

    private static List<String> problems(String text) {
        EssenceReading reading = EssenceReader.read(text);
        List<Finding> problems = ((EssenceReading.Refused) reading).problems();
        return problems.stream()
                .map(each -> each.where() + ": " + each.message() + " " + each.remedy())
                .toList();
    }

    @Test
    void theExampleOfTheDocumentIsTheExampleFile() {
        EssenceSheet sheet = sheet(blocks("yaml").get(0));
        assertThat(sheet.oils()).hasSize(3);
        assertThat(sheet.tolerance()).isEqualTo(2.0);
        assertThat(sheet.batches()).isEqualTo(10);
        assertThat(sheet.dose().millilitres()).isEqualTo(5.0);
        assertThat(sheet(Examples.text(Path.of("..", "examples", "essences", "bay-pepper-lemon.yml"))))
                .isEqualTo(sheet);
    }

    @Test
    void theWrongExampleGivesTheMessagesThatAreShown() {
        assertThat(problems(blocks("yaml").get(1)))
                .containsExactlyElementsOf(blocks("text").get(0).lines().toList());
    }

    @Test
    void everyKeyIsToldInItsOrder() {
        Matcher rows = Pattern.compile("(?m)^\\| `([^`]+)`").matcher(page);
        List<String> told = new ArrayList<>();
        while (rows.find()) {
            told.add(rows.group(1));
        }
        List<String> wanted = new ArrayList<>(EssenceReader.KEYS);
        wanted.addAll(EssenceReader.OIL);
        assertThat(told).isEqualTo(wanted);
    }

    @Test
    void whatIsMissingIsToldAtOnce() {
        assertThat(problems("stillroom essence: 2\n"))
                .anySatisfy(each -> assertThat(each).contains("reads format 1"))
                .anySatisfy(each -> assertThat(each).contains("“title” is missing"))
                .anySatisfy(each -> assertThat(each).contains("“oils” is missing"))
                .anySatisfy(each -> assertThat(each).contains("“marks” is missing"));
        assertThat(problems("- no\n- essence\n")).hasSize(1);
    }

    @Test
    void whatCannotBeIsToldWithItsLine() {
        String text = blocks("yaml")
                .get(0)
                .replace("drop: 20.5 mg", "drop: 20.5 g")
                .replace("laurel", "lemon")
                .replace("batches: 10", "batches: 0")
                .replace("marks: 0.1 ml", "marks: 0 ml");
        assertThat(problems(text))
                .anySatisfy(each -> assertThat(each).startsWith("line 4, lemon, drop: A drop weighs"))
                .anySatisfy(each -> assertThat(each).startsWith("line 6, lemon: This oil stands in the list twice"))
                .anySatisfy(each -> assertThat(each).startsWith("line 12, marks:"))
                .anySatisfy(each -> assertThat(each).startsWith("line 15, batches:"));
    }
}

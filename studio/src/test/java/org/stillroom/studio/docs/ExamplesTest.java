package org.stillroom.studio.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.cli.Cli;
import org.stillroom.studio.cli.Commands;
import org.stillroom.studio.cli.Entry;
import org.stillroom.studio.cli.Page;
import org.stillroom.studio.cli.Screen;
import org.stillroom.studio.faults.FaultLog;

/**
 * Documents show what Stillroom answers: in blocks of code, each line that starts with {@code $ stillroom} or
 * {@code $ ./stillroom} is run at the root of the tree, and what follows it must be the answer, complaints last.
 *
 * <p>A line of three dots stands for any lines, a word in double quotes for one argument.
 */
class ExamplesTest {
    private static final Path ROOT = Names.findRoot();
    private static final String ANY = "...";

    @TempDir
    Path dir;

    /** A command that a document shows, and the answer it shows. */
    private record Example(String place, String typed, List<String> shown) {}

    @TestFactory
    Stream<DynamicTest> documentsShowWhatStillroomAnswers() throws IOException {
        List<Example> examples = new ArrayList<>();
        for (Path document : Names.documents(ROOT)) {
            examples.addAll(examples(document));
        }
        assertThat(examples).isNotEmpty();
        return examples.stream()
                .map(example -> DynamicTest.dynamicTest(example.place() + " " + example.typed(), () -> check(example)));
    }

    @Test
    void everyCommandHasAnExampleOnItsPage() throws IOException {
        List<String> shown = examples(ROOT.resolve("docs/commands.md")).stream()
                .map(example -> words(example.typed()).get(0))
                .toList();
        assertThat(shown).containsAll(Commands.all().stream().map(Entry::name).toList());
    }

    @Test
    void aWrongAnswerIsFoundAndDotsStandForAnyLines() {
        List<String> real = List.of("a", "b", "c", "d");
        assertThat(agree(List.of("a", "b", "c", "d"), real)).isTrue();
        assertThat(agree(List.of("a", ANY, "d"), real)).isTrue();
        assertThat(agree(List.of("a", "b", ANY), real)).isTrue();
        assertThat(agree(List.of("a", "b", "c"), real)).isFalse();
        assertThat(agree(List.of("a", ANY, "e"), real)).isFalse();
        assertThat(agree(List.of("a", "x", "c", "d"), real)).isFalse();
    }

    private void check(Example example) {
        List<String> answer = answer(example.typed());
        assertThat(agree(example.shown(), answer))
                .as("%s shows%n%s%nbut the answer is%n%s", example.place(), text(example.shown()), text(answer))
                .isTrue();
    }

    private static String text(List<String> lines) {
        return String.join("\n", lines);
    }

    private static boolean agree(List<String> shown, List<String> real) {
        if (shown.isEmpty()) {
            return real.isEmpty();
        }
        List<String> rest = shown.subList(1, shown.size());
        if (!shown.get(0).equals(ANY)) {
            return !real.isEmpty() && shown.get(0).equals(real.get(0)) && agree(rest, real.subList(1, real.size()));
        }
        for (int i = 0; i <= real.size(); i++) {
            if (agree(rest, real.subList(i, real.size()))) {
                return true;
            }
        }
        return false;
    }

    private List<String> answer(String typed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Screen screen = new Screen(stream(out), stream(err), Page.Colour.NOT_SEEN);
        String[] arguments = words(typed).stream().map(ExamplesTest::fromRoot).toArray(String[]::new);
        new Cli(Commands.all(), screen, new FaultLog(dir.resolve("stillroom.log"))).run(arguments);
        String all = out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
        return all.replace(ROOT + "/", "").lines().map(String::stripTrailing).toList();
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    /** Tests run in their module; a file that the document names lies under the root. */
    private static String fromRoot(String word) {
        boolean file = word.contains("/") && Files.exists(ROOT.resolve(word));
        return file ? ROOT.resolve(word).toString() : word;
    }

    private static List<String> words(String typed) {
        List<String> words = new ArrayList<>();
        String[] parts = typed.split("\"", -1);
        for (int i = 0; i < parts.length; i++) {
            if (i % 2 == 1) {
                words.add(parts[i]);
            } else {
                Stream.of(parts[i].strip().split(" +", -1))
                        .filter(word -> !word.isEmpty())
                        .forEach(words::add);
            }
        }
        return words;
    }

    private static List<Example> examples(Path document) throws IOException {
        List<Example> examples = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        boolean block = false;
        int number = 0;
        for (String line : Files.readAllLines(document)) {
            number++;
            if (line.startsWith("```")) {
                block = !block;
                shown = new ArrayList<>();
            } else if (block && line.matches("\\$ (\\./)?stillroom( .*)?")) {
                shown = new ArrayList<>();
                String place = ROOT.relativize(document) + ":" + number;
                examples.add(new Example(place, line.replaceFirst("^\\$ (\\./)?stillroom ?", ""), shown));
            } else if (block) {
                shown.add(line.stripTrailing());
            }
        }
        return examples;
    }
}

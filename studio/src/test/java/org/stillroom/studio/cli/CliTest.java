package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.faults.FaultLog;
import picocli.CommandLine.Option;

class CliTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path dir;

    /** A command of the test's own: twice an amount, and every way to end. */
    static final class Twice extends Subcommand {
        @Option(names = "--of", required = true, description = "amount, such as 40%%")
        private String of = "";

        @Override
        protected Answer answer(Workings workings) {
            Objections objections = new Objections();
            objections.take("--of", read(of));
            objections.take("--of again", read(of));
            objections.refuseIfAny();
            int value = Integer.parseInt(of);
            workings.step("twice the amount", 2 * value, "g", Source.BALANCE);
            return new TwiceOf(value);
        }

        private static Understanding<Integer> read(String text) {
            return switch (text) {
                case "?" -> new Understanding.Ambiguous<>(text, "one or two?", List.of("1", "2"));
                case "!" -> new Understanding.Refused<>(text, "not a number; write one, such as 4");
                default -> new Understanding.Understood<>(new Typed<>(text, 1));
            };
        }
    }

    record TwiceOf(int value) implements Answer {
        @Override
        public Fields fields() {
            return new Fields().put("twice_g", 2.0 * value).putNone("volume_ml");
        }

        @Override
        public void print(Page page) {
            page.table(new Table().text("").figure("").text("").row("twice", Figure.decimals(2.0 * value, 1), "g"));
        }

        @Override
        public Exit exit() {
            return value > 100 ? Exit.OUT_OF_REACH : Exit.DONE;
        }
    }

    private static int stayed;

    /** A command that stays after its answer, as the studio does. */
    static final class Stays extends Subcommand {
        @Override
        protected Answer answer(Workings workings) {
            return new Answer() {
                @Override
                public Fields fields() {
                    return new Fields();
                }

                @Override
                public void print(Page page) {
                    page.paragraph("the studio is open, and stays until it is closed");
                }

                @Override
                public void stay() {
                    stayed++;
                }
            };
        }
    }

    private Exit run(String... typed) {
        return run(Page.Colour.NOT_SEEN, out, typed);
    }

    private Exit run(Page.Colour colour, OutputStream to, String... typed) {
        List<Entry> entries = List.of(
                new Entry("twice", "Doubles 100 % of an amount.", "stillroom twice --of 40%", Twice::new),
                new Entry("open", "Stays.", "stillroom open", Stays::new));
        Screen screen = new Screen(
                new PrintStream(to, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                colour);
        return new Cli(entries, screen, new FaultLog(dir.resolve("state/stillroom.log"))).run(typed);
    }

    private String answer() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complaint() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void helpListsEachCommandWithOneLineAndAnExample() {
        assertThat(run("--help")).isEqualTo(Exit.DONE);
        assertThat(answer())
                .contains("twice\n  Doubles 100 % of an amount.\n  stillroom twice --of 40%\n", "Exit codes: 0 done");
    }

    @Test
    void nothingTypedOpensTheStudio() {
        Exit exit = run();
        assertThat(exit).as(complaint()).isEqualTo(Exit.DONE);
        assertThat(answer()).contains("the studio is open, and stays until it is closed");
        assertThat(stayed).isEqualTo(1);
    }

    @Test
    void helpOfACommandShowsItsOptionsAndExample() {
        assertThat(run("twice", "--help")).isEqualTo(Exit.DONE);
        assertThat(answer())
                .contains("Usage: stillroom twice", "Doubles 100 % of", "amount, such as 40%", "--json", "--explain")
                .endsWith("Example:\n  stillroom twice --of 40%\n");
    }

    @Test
    void versionIsOneLine() {
        assertThat(run("--version")).isEqualTo(Exit.DONE);
        assertThat(answer().lines()).singleElement().asString().startsWith("stillroom ");
    }

    @Test
    void anAnswerForAPersonIsATable() {
        assertThat(run("twice", "--of", "4")).isEqualTo(Exit.DONE);
        assertThat(answer()).isEqualTo("twice  8.0  g\n");
    }

    @Test
    void anAnswerForAScriptKeepsTheOrderOfItsKeys() {
        assertThat(run("twice", "--of", "4", "--json")).isEqualTo(Exit.DONE);
        assertThat(answer()).isEqualTo("{\n  \"twice_g\" : 8.0,\n  \"volume_ml\" : null\n}\n");
    }

    @Test
    void explainingShowsStepsWithTheirSource() {
        run("twice", "--of", "4", "--explain");
        assertThat(answer()).contains("twice the amount", "8", "Conservation of mass");
    }

    @Test
    void explainingToAScriptAddsTheSteps() {
        run("twice", "--of", "4", "--explain", "--json");
        assertThat(answer()).contains("\"steps\" : [", "\"source\" : \"Conservation of mass\"");
    }

    @Test
    void anAnswerThatCannotBeReachedSaysSoInTheExitCode() {
        assertThat(run("twice", "--of", "101").code()).isEqualTo(1);
    }

    @Test
    void everythingWrongWithTheOptionsComesBackTogether() {
        assertThat(run("twice", "--of", "?").code()).isEqualTo(2);
        assertThat(complaint())
                .contains("Stop: --of: \"?\": one or two?", "Stop: --of again", "What to do: Write one of: 1; 2");
        assertThat(answer()).isEmpty();
    }

    @Test
    void aRefusalIsAlsoAnAnswerForAScript() {
        assertThat(run("twice", "--of", "!", "--json").code()).isEqualTo(2);
        assertThat(answer()).contains("\"findings\" : [", "\"severity\" : \"stop\"", "\"status\" : \"arithmetic\"");
        assertThat(complaint()).contains("not a number; write one, such as 4");
    }

    @Test
    void anUnknownCommandIsWrongInputAndNamesTheCommands() {
        assertThat(run("thrice").code()).isEqualTo(2);
        assertThat(complaint()).contains("there is no command \"thrice\"", "one of: twice");
    }

    @Test
    void anUnknownOptionIsWrongInputAndSuggestsTheNearest() {
        assertThat(run("twice", "--of", "4", "--jsn").code()).isEqualTo(2);
        assertThat(complaint()).contains("'--jsn'", "Did you mean --json", "stillroom twice --help");
    }

    @Test
    void aFaultLeavesAnIdOnTheScreenAndTheDetailsInTheLog() throws IOException {
        assertThat(run("twice", "--of", "four").code()).isEqualTo(70);
        String id = complaint().replaceAll("(?s).*\\(id ([0-9a-f]{8})\\).*", "$1");
        assertThat(id).hasSize(8);
        assertThat(Files.readString(dir.resolve("state/stillroom.log")))
                .contains("fault " + id, "typed: twice --of four", "NumberFormatException");
    }

    @Test
    void aFaultWhoseLogCannotBeWrittenShowsItsDetails() throws IOException {
        Files.writeString(dir.resolve("state"), "a file where the directory should be");
        assertThat(run("twice", "--of", "four", "--json").code()).isEqualTo(70);
        assertThat(complaint()).contains("cannot be written", "NumberFormatException");
        assertThat(answer()).contains("\"fault_id\" : \"");
    }

    @Test
    void anAnswerThatCannotBeWrittenIsNotASuccess() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("no space left");
            }
        };
        assertThat(run(Page.Colour.NOT_SEEN, full, "twice", "--of", "4").code()).isEqualTo(70);
        assertThat(complaint()).contains("could not be written in full");
    }

    @Test
    void colourIsUsedOnlyWhereItIsSeen() {
        run("--help");
        assertThat(answer()).doesNotContain("\u001b");
        out.reset();
        run(Page.Colour.SEEN, out, "--help");
        assertThat(answer()).contains("\u001b[1mtwice\u001b[0m");
    }

    @Test
    void aFindingIsPrintedWithPlaceRemedyAndSource() {
        Finding finding = new Finding(
                "rule",
                Severity.CAUTION,
                "line 3",
                "",
                "weak",
                "a long message " + "that goes on ".repeat(12),
                "fairly",
                "do this",
                null,
                Source.TRADE);
        new Page(new PrintStream(out, true, StandardCharsets.UTF_8), Page.Colour.NOT_SEEN).finding(finding);
        assertThat(answer())
                .startsWith("Caution: line 3: a long message")
                .contains("What to do: do this", "How sure: fairly", "Common practice of the trade (common practice");
        assertThat(answer().lines()).allMatch(line -> line.length() <= Page.WIDTH);
    }

    @Test
    void theLogLiesInTheStateDirectoryOfThePerson() {
        Path home = Path.of("/home/maker");
        assertThat(logIn(null, home)).isEqualTo(home.resolve(".local/state/stillroom/stillroom.log"));
        assertThat(logIn("relative", home)).isEqualTo(home.resolve(".local/state/stillroom/stillroom.log"));
        assertThat(logIn("/var/state", home)).isEqualTo(Path.of("/var/state/stillroom/stillroom.log"));
    }

    private static Path logIn(@Nullable String stateHome, Path home) {
        return FaultLog.in(stateHome, home).file();
    }
}

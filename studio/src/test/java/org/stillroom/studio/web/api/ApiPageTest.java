package org.stillroom.studio.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.web.api.OtherProgram.Answer;

/** What docs/api.md shows is what a studio answers: each line that starts with {@code $ curl} is sent, in order. */
class ApiPageTest {
    private static final Pattern CALL = Pattern.compile("\\$ curl (?:-X (\\w+) )?localhost:7820/api/v1(\\S+)(.*)");
    private static final Pattern HEADER = Pattern.compile("-H '([^:]+): ([^']*)'");
    private static final Pattern DATA = Pattern.compile("-d '([^']*)'");
    private static final Pattern RECIPE = Pattern.compile("\"recipe\" : \"(\\w+)\"");

    /** A call and the answer that the page shows. */
    private record Shown(String call, List<String> answer) {}

    @Test
    void thePageShowsWhatIsAnswered(@TempDir Path dir) throws Exception {
        List<Shown> all = shown(Files.readAllLines(Path.of("..", "docs", "api.md")));
        assertThat(all).hasSizeGreaterThan(6);
        String id = "";
        try (OtherProgram program = new OtherProgram(dir)) {
            for (Shown each : all) {
                Answer answer = sent(program, each.call().replace("/ID", "/" + id));
                assertThat(answer.body()).as(each.call()).matches(pattern(each.answer()));
                Matcher recipe = RECIPE.matcher(answer.body());
                id = recipe.find() ? recipe.group(1) : id;
            }
        }
    }

    @Test
    void anAnswerThatIsNotShownIsNoticed() {
        assertThat("{\n  \"a\" : 1,\n  \"b\" : 2\n}\n").matches(pattern(List.of("{", "  \"a\" : ...", "...")));
        assertThat("{\n  \"a\" : 1\n}\n").doesNotMatch(pattern(List.of("{", "  \"b\" : ...", "...")));
        assertThat("{\n  \"a\" : 1\n}\n").doesNotMatch(pattern(List.of("{", "  \"a\" : 2", "}")));
    }

    private static Answer sent(OtherProgram program, String call) throws Exception {
        Matcher parts = CALL.matcher(call);
        assertThat(parts.matches()).as(call).isTrue();
        Matcher data = DATA.matcher(parts.group(3));
        String body = data.find() ? data.group(1) : "";
        List<String> headers = new ArrayList<>();
        Matcher header = HEADER.matcher(parts.group(3));
        while (header.find()) {
            headers.add(header.group(1));
            headers.add(header.group(2));
        }
        String method = parts.group(1) != null ? parts.group(1) : body.isEmpty() ? "GET" : "POST";
        return program.send(method, parts.group(2), body, headers.toArray(String[]::new));
    }

    /** Dots stand for anything. */
    private static String pattern(List<String> shown) {
        StringBuilder pattern = new StringBuilder("(?s)");
        for (String line : shown) {
            for (String text : line.split("\\.\\.\\.", -1)) {
                pattern.append(Pattern.quote(text)).append(".*?");
            }
            pattern.setLength(pattern.length() - 3);
            pattern.append("\\R?");
        }
        return pattern.toString();
    }

    private static List<Shown> shown(List<String> page) {
        List<Shown> all = new ArrayList<>();
        boolean code = false;
        for (String line : page) {
            if (line.startsWith("```")) {
                code = !code;
            } else if (code && line.startsWith("$ ")) {
                all.add(new Shown(line, new ArrayList<>()));
            } else if (code) {
                all.get(all.size() - 1).answer().add(line);
            }
        }
        return all;
    }
}

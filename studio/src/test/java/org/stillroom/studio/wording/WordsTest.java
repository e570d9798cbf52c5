package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.quantity.Mass;

/** Texts in two languages, numbers in the way of each. */
class WordsTest {
    private static final Pattern BLANK = Pattern.compile("\\{\\d");

    static Stream<String> bundles() throws IOException, URISyntaxException {
        Path folder =
                Path.of(WordsTest.class.getResource("frame.properties").toURI()).getParent();
        List<String> names;
        try (Stream<Path> files = Files.list(folder)) {
            names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".properties") && !name.contains("_"))
                    .map(name -> name.substring(0, name.indexOf('.')))
                    .sorted()
                    .toList();
        }
        return names.stream();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void englishAndGermanSayTheSameThings(String bundle) throws IOException {
        Properties english = read(bundle + ".properties");
        Properties german = read(bundle + "_de.properties");

        assertThat(german.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertThat(key).startsWith(bundle + ".");
            assertThat(blanks(german.getProperty(key))).as(key).isEqualTo(blanks(english.getProperty(key)));
        }
    }

    /** An apostrophe is a quotation mark to the formatter and would swallow what follows. */
    @ParameterizedTest
    @MethodSource("bundles")
    void apostrophesAreTypographic(String bundle) throws IOException {
        for (String name : List.of(bundle + ".properties", bundle + "_de.properties")) {
            read(name)
                    .forEach((key, text) ->
                            assertThat((String) text).as((String) key).doesNotContain("'"));
        }
    }

    /** The page says of a way to measure what the command line says. */
    @Test
    void methodsAreToldAlikeOnPageAndCommandLine() {
        Words english = new Words(Language.ENGLISH, UnitSystem.METRIC);
        for (Method method : Method.values()) {
            assertThat(english.say("make.gauge.method." + method.name())).isEqualTo(method.label());
            assertThat(english.say("make.gauge.means." + method.name())).isEqualTo(method.means());
            assertThat(english.say("make.gauge.conditions." + method.name())).isEqualTo(method.conditions());
            assertThat(english.say("make.gauge.trap." + method.name())).isEqualTo(method.trap());
        }
    }

    @Test
    void numbersTakeTheMarkOfTheLanguage() {
        Words english = new Words(Language.ENGLISH, UnitSystem.METRIC);
        Words german = new Words(Language.GERMAN, UnitSystem.METRIC);

        assertThat(english.number(28.04, 1)).isEqualTo("28.0");
        assertThat(german.number(28.04, 1)).isEqualTo("28,0");
        assertThat(german.amount(new Mass(223.6))).isEqualTo("223,6\u00a0g");
        assertThat(new Words(Language.GERMAN, UnitSystem.US).amount(new Mass(28.349523125)))
                .isEqualTo("1,00\u00a0oz\u00a0wt");
    }

    @Test
    void theBrowsersFirstLanguageThatIsSpokenCounts() {
        assertThat(Language.wanted("fr-FR,de;q=0.8,en;q=0.5")).isEqualTo(Language.GERMAN);
        assertThat(Language.wanted("fr")).isEqualTo(Language.ENGLISH);
        assertThat(Language.wanted("not a list;;")).isEqualTo(Language.ENGLISH);
        assertThat(Language.wanted(null)).isEqualTo(Language.ENGLISH);
    }

    private static Set<String> blanks(String text) {
        Set<String> blanks = new TreeSet<>();
        BLANK.matcher(text).results().forEach(found -> blanks.add(found.group()));
        return blanks;
    }

    private static Properties read(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = new InputStreamReader(WordsTest.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }
}

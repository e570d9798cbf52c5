package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** Laws on seeded random texts; the seed is in each test's name. */
@Tag("property")
class QuantityTextPropertyTest {
    private static final String ALPHABET =
            "0123456789.,'/ ½¾%°-−–+~:;x×*@€$£gGmMlLkKcCfFdtspozeEABVinfNaN\u00a0\u202f\ud83c\udf4b\u0000\n\"\\(){}é漢";
    private static final List<String> PIECES = List.of(
            "1,500",
            "1 500",
            "1.5",
            "3/4",
            "1 1/2",
            "½",
            "-2",
            "0",
            "28",
            "1e3",
            " ",
            "g",
            "ml",
            "L",
            "oz",
            "kg",
            "drops",
            "%",
            "% vol",
            "% w/w",
            "proof",
            "°Bx",
            "SG",
            "20/20",
            "60/60",
            "/",
            " per ",
            " at ",
            "..",
            "–",
            " to ",
            "x",
            "bottles of",
            "EUR",
            "€",
            "C",
            "°F",
            "K",
            ":",
            "days",
            "months",
            "±",
            "g/L",
            "as invert");

    private final QuantityText text = new QuantityText(OunceMeaning.US_FLUID);

    private Map<String, Function<String, Understanding<?>>> readers() {
        return Map.ofEntries(
                Map.entry("mass", text::mass),
                Map.entry("volume", text::volume),
                Map.entry("amount", text::amount),
                Map.entry("dose", text::dose),
                Map.entry("bottles", text::bottles),
                Map.entry("strength", text::strength),
                Map.entry("share", text::share),
                Map.entry("brix", text::brix),
                Map.entry("temperature", text::temperature),
                Map.entry("density", text::density),
                Map.entry("price", text::price),
                Map.entry("wait", text::wait),
                Map.entry("percent", text::percent),
                Map.entry("ratio", text::ratio),
                Map.entry("volumeSpan", text::volumeSpan),
                Map.entry("strengthSpan", text::strengthSpan),
                Map.entry("sugarSpan", text::sugarSpan),
                Map.entry("aciditySpan", text::aciditySpan));
    }

    private static Stream<DynamicTest> seeds(int count, java.util.function.IntConsumer law) {
        return IntStream.range(0, count)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> law.accept(seed)));
    }

    @TestFactory
    Stream<DynamicTest> noTextWhateverThrowsOrComesBackChanged() {
        return seeds(60, seed -> {
            Random random = new Random(seed);
            for (int i = 0; i < 100; i++) {
                String typed = i % 2 == 0 ? letters(random) : pieces(random);
                readers().forEach((name, reader) -> holds(name, typed, reader));
                assertThat(SugarWords.of(typed).quantity()).isNotNull();
            }
            readers().forEach((name, reader) -> holds(name, long10k(random), reader));
        });
    }

    /** Every answer keeps the text; every choice would be understood; every refusal says something. */
    private static void holds(String name, String typed, Function<String, Understanding<?>> reader) {
        Understanding<?> answer = reader.apply(typed);
        if (answer instanceof Understanding.Understood<?> understood) {
            assertThat(understood.typed().text()).as(name).isEqualTo(typed);
        } else if (answer instanceof Understanding.Ambiguous<?> asked) {
            assertThat(asked.text()).as(name).isEqualTo(typed);
            assertThat(asked.choices())
                    .as("%s <%s>", name, typed)
                    .isNotEmpty()
                    .allSatisfy(
                            choice -> assertThat(reader.apply(choice)).isInstanceOf(Understanding.Understood.class));
        } else if (answer instanceof Understanding.Refused<?> refused) {
            assertThat(refused.text()).as(name).isEqualTo(typed);
            assertThat(refused.reason()).as("%s <%s>", name, typed).isNotBlank().hasSizeLessThan(300);
        }
    }

    private static String letters(Random random) {
        StringBuilder out = new StringBuilder();
        int length = random.nextInt(24);
        for (int i = 0; i < length; i++) {
            out.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return out.toString();
    }

    private static String pieces(Random random) {
        StringBuilder out = new StringBuilder();
        int length = 1 + random.nextInt(7);
        for (int i = 0; i < length; i++) {
            out.append(PIECES.get(random.nextInt(PIECES.size())));
            out.append(random.nextInt(3) == 0 ? " " : "");
        }
        return out.toString();
    }

    private static String long10k(Random random) {
        StringBuilder out = new StringBuilder();
        while (out.length() < 10_000) {
            out.append(random.nextBoolean() ? "1 000" : letters(random));
        }
        return out.toString();
    }

    @TestFactory
    Stream<DynamicTest> aDecimalNumberComesBackToTheLastDigitInEverySpelling() {
        return seeds(200, seed -> {
            Random random = new Random(seed);
            int places = random.nextInt(6);
            long digits = 1 + (long) (random.nextDouble() * 1e9);
            String plain = new java.math.BigDecimal(java.math.BigInteger.valueOf(digits), places).toPlainString();
            double value = Double.parseDouble(plain);
            for (String spelling : spellings(plain)) {
                assertThat(Answers.value(text.mass(spelling + " g")).grams())
                        .as(spelling)
                        .isEqualTo(value);
                assertThat(Answers.value(text.volume(spelling + "ml")).millilitres())
                        .as(spelling)
                        .isEqualTo(value);
                assertThat(Answers.value(text.density(spelling(digits, places) + " kg/m3"))
                                .kilogramsPerCubicMetre())
                        .isEqualTo(Double.parseDouble(spelling(digits, places)));
            }
        });
    }

    /** The same digits small enough for a density. */
    private static String spelling(long digits, int places) {
        return new java.math.BigDecimal(java.math.BigInteger.valueOf(1 + digits % 10_000), places).toPlainString();
    }

    private static List<String> spellings(String plain) {
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String part = point < 0 ? "" : plain.substring(point + 1);
        List<String> out = new ArrayList<>(List.of(plain));
        for (String group : new String[] {" ", "\u202f", "'"}) {
            String grouped = whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", group);
            out.add(part.isEmpty() ? grouped : grouped + "." + part);
            out.add(part.isEmpty() ? grouped : grouped + "," + part);
        }
        boolean clear = part.length() != 3 || whole.length() > 3 || whole.startsWith("0");
        if (clear && !part.isEmpty()) {
            out.add(whole + "," + part);
        }
        return clear ? out : List.of(plain);
    }

    @TestFactory
    Stream<DynamicTest> aFractionIsItsQuotient() {
        return seeds(100, seed -> {
            Random random = new Random(seed);
            int below = 2 + random.nextInt(30);
            int above = 1 + random.nextInt(below - 1);
            int whole = 1 + random.nextInt(20);
            double expected = (whole * below + above) / (double) below;
            assertThat(Answers.value(text.mass(whole + " " + above + "/" + below + " g"))
                            .grams())
                    .isEqualTo(expected);
            assertThat(Answers.value(text.mass(above + "/" + below + " g")).grams())
                    .isEqualTo(above / (double) below);
        });
    }

    @TestFactory
    Stream<DynamicTest> whatIsWrittenIsReadAsTheSameToTheDigitsShown() {
        return seeds(200, seed -> {
            Random random = new Random(seed);
            double value = Math.pow(10, random.nextDouble() * 7 - 1.5);
            double shown = value < 1 ? 5.001e-4 : value < 10 ? 5.001e-3 : value < 9_999 ? 0.05001 : 0.501;
            Mass mass = (Mass) Answers.value(text.amount(QuantityWords.metric(new Mass(value))));
            assertThat(Math.abs(mass.grams() - value)).isLessThan(shown);
            Volume volume = (Volume) Answers.value(text.amount(QuantityWords.metric(new Volume(value))));
            assertThat(Math.abs(volume.millilitres() - value)).isLessThan(shown);
            assertThat(Answers.value(text.mass(QuantityWords.plain(value) + " g"))
                            .grams())
                    .isEqualTo(value);
        });
    }
}

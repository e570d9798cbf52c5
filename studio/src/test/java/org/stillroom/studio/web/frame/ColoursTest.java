package org.stillroom.studio.web.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The colours of the face against each other: WCAG 2.2, 1.4.3 (text, 4.5 to 1) and 1.4.11 (edges of controls, 3 to 1). */
class ColoursTest {
    private static final double TEXT = 4.5;
    private static final double EDGE = 3.0;
    private static final List<String> INKS = List.of("ink", "ink-soft", "verdigris", "ochre", "opal", "madder");
    private static final List<String> GROUNDS = List.of("paper", "paper-field", "paper-shade");
    private static final List<String> WASHES = List.of("wash-hazy", "wash-cloudy");
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+): *(#[0-9a-f]{3,6}|rgb\\([^)]*\\)) *;");

    /** Colours of one way of looking at the page, by name. */
    private record Look(String name, Map<String, double[]> colours) {
        double[] colour(String token) {
            return Objects.requireNonNull(colours.get(token), token + " of " + name);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Look> looks() throws IOException {
        String day = ":root {";
        String night = "@media (prefers-color-scheme: dark) {";
        String more = "@media (prefers-contrast: more) {";
        String moreByNight = "@media (prefers-contrast: more) and (prefers-color-scheme: dark) {";
        return Stream.of(
                look("day", day),
                look("night", day, night),
                look("more contrast by day", day, more),
                look("more contrast by night", day, night, more, moreByNight));
    }

    private static Look look(String name, String... blocks) throws IOException {
        String sheet;
        try (InputStream in = Assets.class.getResourceAsStream("/org/stillroom/studio/web/assets/tokens.css")) {
            sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Map<String, double[]> colours = new HashMap<>();
        for (String block : blocks) {
            int start = sheet.indexOf(block);
            assertThat(start).as(block).isNotNegative();
            Matcher token = TOKEN.matcher(sheet.substring(start, end(sheet, start)));
            while (token.find()) {
                colours.put(token.group(1), read(token.group(2)));
            }
        }
        return new Look(name, colours);
    }

    private static int end(String sheet, int start) {
        int next = sheet.indexOf("\n}", start);
        return next < 0 ? sheet.length() : next;
    }

    /** Reads red, green, blue and opacity, each 0 to 1. */
    private static double[] read(String colour) {
        if (colour.startsWith("#")) {
            String digits = colour.length() == 4 ? colour.substring(1).replaceAll("(.)", "$1$1") : colour.substring(1);
            int all = Integer.parseInt(digits, 16);
            return new double[] {(all >> 16) / 255.0, ((all >> 8) & 0xff) / 255.0, (all & 0xff) / 255.0, 1};
        }
        String[] parts = colour.replaceAll("[rgb()/%]+", " ").strip().split(" +", -1);
        return new double[] {
            Integer.parseInt(parts[0]) / 255.0,
            Integer.parseInt(parts[1]) / 255.0,
            Integer.parseInt(parts[2]) / 255.0,
            Integer.parseInt(parts[3]) / 100.0
        };
    }

    private static double[] washed(double[] wash, double[] ground) {
        double[] mixed = new double[3];
        for (int i = 0; i < 3; i++) {
            mixed[i] = wash[3] * wash[i] + (1 - wash[3]) * ground[i];
        }
        return mixed;
    }

    /** Contrast ratio as WCAG 2.2 defines it, from relative luminance. */
    private static double contrast(double[] one, double[] other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(double[] colour) {
        return 0.2126 * linear(colour[0]) + 0.7152 * linear(colour[1]) + 0.0722 * linear(colour[2]);
    }

    private static double linear(double value) {
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @MethodSource("looks")
    void everyTextCanBeReadOnEveryGround(Look look) {
        List<String> faint = new ArrayList<>();
        for (String ink : INKS) {
            for (String ground : GROUNDS) {
                double contrast = contrast(look.colour(ink), look.colour(ground));
                if (contrast < TEXT) {
                    faint.add(ink + " on " + ground + " " + contrast);
                }
            }
            for (String wash : WASHES) {
                double contrast = contrast(look.colour(ink), washed(look.colour(wash), look.colour("paper")));
                if (contrast < TEXT) {
                    faint.add(ink + " on " + wash + " " + contrast);
                }
            }
        }
        assertThat(faint).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("looks")
    void everyControlShowsItsEdge(Look look) {
        assertThat(GROUNDS)
                .allSatisfy(ground -> assertThat(contrast(look.colour("edge"), look.colour(ground)))
                        .isGreaterThan(EDGE));
    }

    @Test
    void blackOnWhiteHasTheContrastThatTheGuidelinesName() {
        // WCAG 2.2, "contrast ratio": from 1 to 21
        assertThat(contrast(read("#000"), read("#fff"))).isCloseTo(21.0, Offset.offset(1e-9));
    }
}

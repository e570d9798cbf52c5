package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * A maker's own analysis of a lot, as a supplier's certificate gives it: constituents and per cent, one a line, as
 * {@code constituent,percent} or with a semicolon between.
 *
 * @param parts of the oil by CAS number, 0 to 1; null when something is wrong with it
 * @param problems everything that is wrong, by line
 */
public record OwnAnalysis(@Nullable Map<String, Double> parts, List<Finding> problems) {
    /** Certificates add up to 100 but for rounding, %. */
    private static final double MOST = 100.5;

    public OwnAnalysis {
        problems = List.copyOf(problems);
    }

    /** Reads an analysis. */
    public static OwnAnalysis read(String text) {
        Map<String, Double> parts = new LinkedHashMap<>();
        List<Finding> problems = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            String bare = line.strip();
            boolean head = number == 1 && bare.toLowerCase(Locale.ROOT).startsWith("constituent");
            if (!bare.isEmpty() && !bare.startsWith("#") && !head) {
                row(number, bare, parts, problems);
            }
        }
        double sum = 100.0 * parts.values().stream().mapToDouble(each -> each).sum();
        if (problems.isEmpty() && !(sum > 0.0 && sum <= MOST)) {
            problems.add(problem(
                    0,
                    "The constituents add up to " + QuantityWords.fixed(sum, 1) + " %.",
                    "A certificate adds up to 100 % or less; look for a slip of the decimal point."));
        }
        return new OwnAnalysis(problems.isEmpty() ? Map.copyOf(parts) : null, problems);
    }

    private static void row(int number, String line, Map<String, Double> parts, List<Finding> problems) {
        int cut = Math.max(line.lastIndexOf(';'), line.indexOf(';') >= 0 ? -1 : line.lastIndexOf(','));
        if (cut <= 0) {
            problems.add(problem(
                    number,
                    "“" + line + "” is no constituent with its per cent.",
                    "Write for instance “linalool,31.5”."));
            return;
        }
        String name = line.substring(0, cut).replace("\"", "").strip();
        String percent = line.substring(cut + 1).replace("%", "").strip().replace(',', '.');
        @Nullable String key = Materials.keyOf(name);
        if (key == null) {
            problems.add(problem(
                    number,
                    "“" + name + "” is in no table of constituents.",
                    "Write its CAS number, or another of its names; leave it out if it is a trace."));
        } else if (!percent.matches("\\d{1,3}(\\.\\d{1,6})?") || Double.parseDouble(percent) > 100.0) {
            problems.add(problem(
                    number, "“" + percent + "” is no per cent of " + name + ".", "Write a number from 0 to 100."));
        } else if (parts.put(key, Double.parseDouble(percent) / 100.0) != null) {
            @Nullable Constituent twice = Constituents.find(key);
            problems.add(problem(
                    number,
                    (twice == null ? name : twice.name()) + " stands there twice.",
                    "Keep one of the two lines."));
        }
    }

    private static Finding problem(int line, String message, String remedy) {
        return Finding.of(
                "analysis", Severity.STOP, line == 0 ? "" : "line " + line, "not understood", message, remedy);
    }
}

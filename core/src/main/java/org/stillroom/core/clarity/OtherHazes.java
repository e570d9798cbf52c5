package org.stillroom.core.clarity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** Hazes that are not oil: what is asked, what it then most likely is, what to try first, and the ways to clarify. */
public final class OtherHazes {
    private static final Map<String, String> QUESTIONS = questions();
    private static final Map<String, Way> WAYS = ways();
    private static final List<Haze> ALL = hazes();

    private OtherHazes() {}

    /**
     * One kind of haze.
     *
     * @param name what it is
     * @param signs keys of the questions whose yes points to it
     * @param test how to make sure
     * @param tryFirst what to do first
     * @param then ways to clarify, the best first
     * @param standing how this came to us
     */
    public record Haze(
            String name, List<String> signs, String test, String tryFirst, List<Way> then, Standing standing) {
        public Haze {
            signs = List.copyOf(signs);
            then = List.copyOf(then);
        }
    }

    /**
     * One way to clarify.
     *
     * @param how it is done
     * @param lossPercent of the volume
     * @param allergens that stay in it or may, empty where none come with it
     * @param source where the dose comes from, empty where nobody published it
     */
    public record Way(
            String name,
            String takesOut,
            Dose dose,
            String how,
            String waiting,
            double lossPercent,
            String allergens,
            Standing standing,
            String source) {}

    /**
     * What a way takes for a litre.
     *
     * @param unit "g" or "ml", empty where it takes nothing
     * @param waterPerUnit water that comes in with one unit of it, mL
     * @param worksBelow strength from which on it hardly works, % vol; 100 where it works at any
     */
    public record Dose(String unit, double least, double most, double waterPerUnit, double worksBelow) {
        /** Returns how many decimals an amount needs to be weighed by, g or mL. */
        public static int decimals(double amount) {
            return amount < 10.0 ? 2 : amount < 100.0 ? 1 : 0;
        }

        /** Returns whether it takes nothing. */
        public boolean isNone() {
            return unit.isEmpty();
        }
    }

    /** Returns the questions by their keys, in the order to ask them. */
    public static Map<String, String> asked() {
        return QUESTIONS;
    }

    /** Returns every way to clarify by its name. */
    public static Map<String, Way> clarifying() {
        return WAYS;
    }

    /** Returns the hazes that at least one sign points to, those with the greatest part of their signs seen first. */
    public static List<Haze> likely(Set<String> seen) {
        return ALL.stream()
                .filter(haze -> part(haze, seen) > 0.0)
                .sorted(Comparator.comparingDouble((Haze haze) -> -part(haze, seen)))
                .toList();
    }

    private static double part(Haze haze, Set<String> seen) {
        return (double) haze.signs().stream().filter(seen::contains).count()
                / haze.signs().size();
    }

    private static Map<String, String> questions() {
        Map<String, String> questions = new LinkedHashMap<>();
        Tables.open("clarity/signs.csv").rows().forEach(row -> questions.put(row.text("sign"), row.text("question")));
        return Collections.unmodifiableMap(questions);
    }

    private static Map<String, Way> ways() {
        Map<String, Way> ways = new LinkedHashMap<>();
        for (Table.Row row : Tables.open("clarity/clarifying.csv").rows()) {
            ways.put(
                    row.text("way"),
                    new Way(
                            row.text("way"),
                            row.text("takes_out"),
                            dose(row),
                            row.text("how"),
                            row.text("wait"),
                            row.number("loss_percent"),
                            row.textOrEmpty("allergens"),
                            row.standing("status"),
                            row.textOrEmpty("source")));
        }
        return Collections.unmodifiableMap(ways);
    }

    private static Dose dose(Table.Row row) {
        String unit = row.textOrEmpty("unit");
        return new Dose(
                unit,
                unit.isEmpty() ? 0.0 : row.number("dose_least"),
                unit.isEmpty() ? 0.0 : row.number("dose_most"),
                row.number("water_ml_per_unit"),
                row.textOrEmpty("works_below_percent").isEmpty() ? 100.0 : row.number("works_below_percent"));
    }

    private static List<Haze> hazes() {
        List<Haze> hazes = new ArrayList<>();
        for (Table.Row row : Tables.open("clarity/other_hazes.csv").rows()) {
            List<String> signs = List.of(row.text("signs").split(";", -1));
            if (!QUESTIONS.keySet().containsAll(signs)) {
                throw row.fault("signs", "asks what signs.csv does not: " + signs);
            }
            hazes.add(new Haze(
                    row.text("haze"),
                    signs,
                    row.text("test"),
                    row.text("try_first"),
                    then(row),
                    row.standing("status")));
        }
        return List.copyOf(hazes);
    }

    private static List<Way> then(Table.Row row) {
        List<Way> then = new ArrayList<>();
        String names = row.textOrEmpty("then");
        for (String name : names.isEmpty() ? List.<String>of() : List.of(names.split(";", -1))) {
            Way way = WAYS.get(name);
            if (way == null) {
                throw row.fault("then", "is no way of clarifying.csv: " + name);
            }
            then.add(way);
        }
        return then;
    }
}

package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * The rules of a maker's own house, one a line: {@code no tonka}, {@code at most 20 mg/L thujone}, {@code at most 0.6 g/L oil},
 * each with {@code because ...} behind it if wanted. The form is in docs/house-rules.md.
 *
 * @param rules in the order in which they stand
 */
public record HouseRules(List<HouseRule> rules) {
    /** No house rules. */
    public static final HouseRules NONE = new HouseRules(List.of());

    /** All essential oil that is poured. */
    static final String OIL = " oil";

    private static final List<String> ALL_OIL = List.of(OIL, " essential oil", " oils", " essential oils");
    private static final Pattern REASON = Pattern.compile("(.*?),?\\s+(?:because|weil)\\s+(.+)");
    private static final Pattern LEAVE_OUT = Pattern.compile("(?i)(?:no|kein|keine|keinen)\\s+(.+)");
    private static final Pattern AT_MOST = Pattern.compile(
            "(?i)(?:at most|höchstens)\\s+(.+?/\\s*(?:[Ll]|kg|litre|liter|100\\s*[gm][Ll]?))\\s+(?:of\\s+)?(.+)");
    private static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);
    private static final int MOST_LINES = 500;
    private static final int LONGEST = 200;

    public HouseRules {
        rules = List.copyOf(rules);
    }

    /**
     * What was made of a text.
     *
     * @param rules those that were understood
     * @param problems everything that was not, by line
     */
    public record Reading(HouseRules rules, List<Finding> problems) {
        public Reading {
            problems = List.copyOf(problems);
        }

        /** Returns the rules of a text that is in force, where what is not understood is told of every drink and not passed over. */
        public HouseRules kept() {
            List<HouseRule> all = new ArrayList<>(rules.rules());
            problems.forEach(problem -> all.add(new HouseRule.NotUnderstood(problem(
                    problem.where(),
                    "A house rule cannot be held to this drink: " + problem.message(),
                    problem.remedy()))));
            return new HouseRules(all);
        }
    }

    /**
     * Reads house rules.
     *
     * @param knowledge by which the substances and plants that they limit are found
     */
    public static Reading read(String text, Knowledge knowledge) {
        List<HouseRule> rules = new ArrayList<>();
        List<Finding> problems = new ArrayList<>();
        List<String> lines = text.lines().toList();
        if (lines.size() > MOST_LINES) {
            return new Reading(NONE, List.of(problem(0, "There are more than 500 lines.", "Keep to the rules.")));
        }
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).replace("\uFEFF", "").strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                read(i + 1, line, knowledge, rules, problems);
            }
        }
        return new Reading(new HouseRules(rules), problems);
    }

    /** Returns these rules and others besides. */
    public HouseRules and(HouseRules others) {
        List<HouseRule> both = new ArrayList<>(rules);
        both.addAll(others.rules);
        return new HouseRules(both);
    }

    private static void read(
            int number, String line, Knowledge knowledge, List<HouseRule> rules, List<Finding> problems) {
        if (line.length() > LONGEST) {
            problems.add(problem(number, "It has more than 200 letters.", "Write one rule on a line."));
            return;
        }
        Matcher reason = REASON.matcher(line);
        boolean reasoned = reason.matches();
        String rule = reasoned ? reason.group(1) : line;
        String because = reasoned ? reason.group(2).strip() : "";
        Matcher leaveOut = LEAVE_OUT.matcher(rule);
        Matcher atMost = AT_MOST.matcher(rule);
        if (leaveOut.matches() && !Words.plain(leaveOut.group(1)).isEmpty()) {
            rules.add(new HouseRule.LeaveOut(number, rule, because, Words.plain(leaveOut.group(1))));
        } else if (atMost.matches()) {
            atMost(number, rule, because, atMost, knowledge, rules, problems);
        } else {
            problems.add(problem(
                    number,
                    "\"" + rule + "\" is no house rule.",
                    "Write \"no NAME\" or \"at most AMOUNT NAME\", such as: at most 20 mg/L thujone."));
        }
    }

    private static void atMost(
            int number,
            String rule,
            String because,
            Matcher found,
            Knowledge knowledge,
            List<HouseRule> rules,
            List<Finding> problems) {
        String name = Words.plain(found.group(2));
        if (!isKnown(name, knowledge)) {
            problems.add(
                    problem(
                            number,
                            "\"" + found.group(2).strip()
                                    + "\" is no watched substance, plant or oil of the tables, so its amount"
                                    + " would never be counted.",
                            "Write one that docs/house-rules.md names, such as thujone or clove oil, or \"oil\" for all of it."));
            return;
        }
        Understanding<Share> read = TEXT.share(found.group(1));
        if (read instanceof Understanding.Understood<Share> understood) {
            rules.add(atMost(number, rule, because, name, understood.typed().value()));
        } else if (read instanceof Understanding.Ambiguous<Share> asked) {
            problems.add(problem(
                    number,
                    "\"" + asked.text() + "\": " + asked.question(),
                    "Write one of: " + String.join("; ", asked.choices())));
        } else if (read instanceof Understanding.Refused<Share> refused) {
            problems.add(problem(
                    number, "\"" + refused.text() + "\": " + refused.reason() + ".", "Write for instance 20 mg/L."));
        }
    }

    private static HouseRule atMost(int number, String rule, String because, String name, Share share) {
        return share instanceof MassConcentration concentration
                ? new HouseRule.AtMost(
                        number, rule, because, name, 1000.0 * concentration.gramsPerLitre(), Limit.Basis.PER_LITRE)
                : new HouseRule.AtMost(
                        number, rule, because, name, 1e6 * ((MassFraction) share).fraction(), Limit.Basis.PER_KILOGRAM);
    }

    private static boolean isKnown(String name, Knowledge knowledge) {
        return ALL_OIL.contains(name)
                || watched(name, knowledge) != null
                || !plants(name, knowledge).isEmpty();
    }

    private static @Nullable Watched watched(String name, Knowledge knowledge) {
        return knowledge.watched().stream()
                .filter(watched -> watched.names().contains(name))
                .findFirst()
                .orElse(null);
    }

    static List<Plant> plants(String name, Knowledge knowledge) {
        return Words.named(name, knowledge.plants(), Plant::names);
    }

    static String opening(HouseRule rule) {
        return "House rule of line " + rule.line() + ", \"" + rule.written() + "\""
                + (rule.because().isEmpty() ? "" : " (because " + rule.because() + ")") + ": ";
    }

    /** Returns what the rules find in a drink. */
    static List<Finding> judge(Drink drink, Serving serving) {
        return drink.houseRules().rules().stream()
                .flatMap(rule -> rule.judge(drink).stream())
                .toList();
    }

    /** Returns what the rules find in a drink of what must not go in. */
    static List<Finding> leftOut(Drink drink) {
        return drink.houseRules().rules().stream()
                .filter(rule -> rule instanceof HouseRule.LeaveOut)
                .flatMap(rule -> rule.judge(drink).stream())
                .toList();
    }

    /** Returns the most of watched substances that the rules leave in a drink, mg/kg. */
    static Map<String, OilLimits.Maximum> maxima(Drink drink) {
        Map<String, OilLimits.Maximum> maxima = new TreeMap<>();
        for (HouseRule rule : drink.houseRules().rules()) {
            if (rule instanceof HouseRule.AtMost most) {
                @Nullable Watched watched = watched(most.of(), drink.knowledge());
                if (watched != null) {
                    double perKilogram = most.basis() == Limit.Basis.PER_KILOGRAM
                            ? most.milligrams()
                            : most.milligrams() * drink.litres() / drink.kilograms();
                    maxima.merge(
                            watched.name(),
                            new OilLimits.Maximum(perKilogram, HouseRule.JURISDICTION, null),
                            OilLimits::stricter);
                }
            }
        }
        return maxima;
    }

    /** Returns how much there is of what a rule limits, or null where there is none. */
    static @Nullable Amount amount(String of, Drink drink) {
        @Nullable Watched watched = watched(of, drink.knowledge());
        if (watched != null) {
            return drink.amount(watched.name());
        }
        List<Plant> meant = plants(of, drink.knowledge());
        if (isAllOil(of)) {
            return weighed("essential oil", drink, Portion.Form.OIL, HouseRules::isOily);
        }
        return Words.holds(of, OIL)
                ? weighed(of.strip(), drink, Portion.Form.OIL, portion -> isOily(portion) && isOf(meant, portion))
                : weighed(of.strip(), drink, Portion.Form.PLANT, portion -> isOf(meant, portion));
    }

    private static boolean isOf(List<Plant> meant, Portion portion) {
        return portion.plants().stream().anyMatch(meant::contains);
    }

    /** Oil that macerating brings is the plant's and does not count as poured. */
    private static boolean isOily(Portion portion) {
        boolean inPart = portion.form() == Portion.Form.AMOUNT_NOT_KNOWN
                && portion.grams().most() > 0.0;
        return inPart
                || portion.form() == Portion.Form.OIL
                || portion.kind() == Kind.ESSENTIAL_OIL
                || portion.kind() == Kind.ESSENCE;
    }

    static boolean isAllOil(String name) {
        return ALL_OIL.contains(name);
    }

    /** Adds up what is weighed in the form that is limited; what came in another form is told as not known. */
    private static @Nullable Amount weighed(String name, Drink drink, Portion.Form form, Predicate<Portion> which) {
        Range grams = Range.NOTHING;
        List<String> from = new ArrayList<>();
        List<String> notKnown = new ArrayList<>();
        for (Portion portion : drink.portions()) {
            if (which.test(portion)) {
                boolean counts = portion.form() == form;
                (counts ? from : notKnown).add(portion.where());
                grams = counts ? grams.plus(portion.grams()) : grams;
            }
        }
        return from.isEmpty() && notKnown.isEmpty() ? null : Amount.weighed(name, grams, from, notKnown, drink);
    }

    private static Finding problem(int line, String message, String remedy) {
        return problem(line == 0 ? "" : "line " + line, message, remedy);
    }

    private static Finding problem(String where, String message, String remedy) {
        return Finding.of(HouseRule.NAME, Severity.STOP, where, "not understood", message, remedy);
    }
}

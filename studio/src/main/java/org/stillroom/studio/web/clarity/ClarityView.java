package org.stillroom.studio.web.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.clarity.Chances;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Glass;
import org.stillroom.core.clarity.GlassAddition;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.mixing.MixingPath;
import org.stillroom.core.mixing.Ring;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.sheet.ClarityMap;
import org.stillroom.studio.sheet.GlassMap;
import org.stillroom.studio.usecase.TellClarity;
import org.stillroom.studio.wording.Words;

/** The forecast of clouding of one recipe as its page shows it. */
public record ClarityView(TellClarity.Found found, Words words) {
    /** Constituents of a ring that are shown. */
    private static final int MOST_PARTS = 5;

    /** A doubt below this factor is not worth a word. */
    private static final double WORTH_TELLING = 1.05;

    /** A figure with its unit and what it means. */
    public record Row(String label, String value, String unit) {}

    /** How it looks after one step. */
    public record Stop(String step, String load, String strength, String looks) {}

    private Clarity clarity() {
        return found.clarity();
    }

    public String verdict() {
        return looks(clarity().verdict());
    }

    private String looks(Verdict verdict) {
        return words.say("clarity.is." + verdict.name());
    }

    /** Returns the chances as whole per cent. */
    public String chances() {
        Chances chances = clarity().chances();
        return words.say(
                "clarity.chances", percent(chances.clear()), percent(chances.hazy()), percent(chances.cloudy()));
    }

    private String percent(double part) {
        return words.number(100.0 * part, 0);
    }

    /** Returns the figures of the liquid itself. */
    public List<Row> figures() {
        Clarity clarity = clarity();
        return List.of(
                new Row(
                        words.say("clarity.load"),
                        words.number(clarity.load(), 2),
                        words.say(
                                "clarity.loadUnit",
                                words.number(clarity.chances().lowLoad(), 2),
                                words.number(clarity.chances().highLoad(), 2))),
                new Row(words.say("clarity.oil"), words.number(clarity.oils().gramsPerLitre(), 3), "g/L"),
                new Row(words.say("clarity.separates"), words.number(clarity.separated(), 3), "g/L"),
                new Row(
                        words.say("clarity.leading"),
                        words.told("oil-clouding", clarity.leading()).text(),
                        ""));
    }

    /** Returns what the doubt comes from, the most first, in a sentence. */
    public String doubt() {
        List<String> from = clarity().chances().from().stream()
                .filter(each -> each.factor() >= WORTH_TELLING)
                .map(each -> words.say(
                        "clarity.doubtOf",
                        words.say("clarity.from." + each.what().name()),
                        words.number(each.factor(), 1)))
                .toList();
        String ranges = found.compositionFrom().isEmpty()
                ? ""
                : " " + words.say("clarity.ranges", String.join("; ", found.compositionFrom()));
        return words.say("clarity.doubt", String.join(", ", from)) + ranges;
    }

    /** Returns what would change it. */
    public List<Row> ways() {
        List<Row> rows = new ArrayList<>();
        add(rows, "clarity.clearFrom", found.clearFrom(), 1, "% vol");
        add(rows, "clarity.mostOil", found.mostOil(), 3, "g/L");
        if (clarity().verdict() != Verdict.CLEAR) {
            add(rows, "clarity.lessSugar", found.clearBelowSugar(), 0, "g/L");
            found.folded()
                    .forEach(each -> rows.add(new Row(
                            words.say("clarity.folded", words.number(each.fold(), 0)),
                            words.number(each.clarity().load(), 2),
                            looks(each.clarity().verdict()))));
            rows.add(as("clarity.terpeneless", found.terpeneless()));
            rows.add(new Row(
                    words.say("clarity.filtered", percent(found.filtered().part())),
                    words.number(found.filtered().after().load(), 2),
                    looks(found.filtered().after().verdict())));
        }
        found.cold().forEach(cold -> rows.add(as("clarity.in." + cold.where(), cold.clarity())));
        return rows;
    }

    private Row as(String key, Clarity clarity) {
        return new Row(words.say(key), words.number(clarity.load(), 2), looks(clarity.verdict()));
    }

    private void add(List<Row> rows, String key, OptionalDouble value, int decimals, String unit) {
        value.ifPresent(figure -> rows.add(new Row(words.say(key), words.number(figure, decimals), unit)));
    }

    /** Returns what becomes of it in the glass, in a sentence or two. */
    public String glass() {
        Glass glass = found.glass();
        String coldest = glass.coldest()
                .map(point -> " "
                        + words.say(
                                "clarity.coldest",
                                words.number(point.celsius(), 0),
                                words.number(point.parts(), 2),
                                words.number(point.strength(), 1),
                                looks(point.verdict())))
                .orElse("");
        return turns(glass) + coldest;
    }

    private String turns(Glass glass) {
        String with = addition(glass.addition());
        if (glass.cloudyFrom().isPresent()) {
            return words.say(
                    TellClarity.isLouche(found) ? "clarity.louche" : "clarity.turns",
                    words.number(glass.cloudyFrom().getAsDouble(), 1),
                    with);
        }
        return glass.hazyFrom().isPresent()
                ? words.say("clarity.hazyInGlass", words.number(glass.hazyFrom().getAsDouble(), 1), with)
                : words.say("clarity.sameInGlass", with);
    }

    /** Returns the name of what comes to it; a drink by its figures is called as it was typed. */
    private String addition(GlassAddition addition) {
        return GlassAddition.find(addition.name()) == null ? addition.name() : with(words, addition.name());
    }

    /** Returns the reader's word for a drink that has a name here. */
    public static String with(Words words, String name) {
        return words.say("clarity.with." + name.replace(' ', '-'));
    }

    /** Returns how long a haze takes to clear, or empty where nothing separates. */
    public String standing() {
        return found.clearing() == null
                ? ""
                : words.say(
                        found.clearing().sinks() ? "clarity.sinks" : "clarity.rises",
                        words.number(Math.max(0.1, found.clearing().days()), 1));
    }

    /** Returns what has gathered once a haze has cleared, in a sentence; empty where nothing separates. */
    public String ring() {
        Ring ring = found.ring();
        return ring == null
                ? ""
                : words.say(
                        "clarity.ring",
                        words.number(ring.grams(), 3),
                        words.number(ring.millilitres(), 3),
                        percent(ring.part()));
    }

    /** Returns the constituents of what has gathered, the most first; empty where nothing separates. */
    public List<Ring.Part> ringParts() {
        return found.ring() == null
                ? List.of()
                : found.ring().parts().stream().limit(MOST_PARTS).toList();
    }

    /** Returns what goes of the smell with it, in a sentence; empty where nothing is known of it. */
    public String ringOdour() {
        return found.ring() == null || found.ring().odour() == null
                ? ""
                : words.say(
                        "clarity.ringOdour",
                        percent(found.ring().odour().lost()),
                        percent(found.ring().odour().known()));
    }

    /** Returns a part as a percentage with one decimal, without its sign. */
    public String fine(double part) {
        return words.number(100.0 * part, 1);
    }

    /** Returns how it looks after each step of mixing. */
    public List<Stop> path() {
        return found.path().stops().stream()
                .map(stop -> new Stop(
                        stop.step().what(),
                        words.number(stop.clarity().load(), 2),
                        words.number(stop.clarity().medium().strength(), 1),
                        looks(stop.clarity().verdict())))
                .toList();
    }

    /** Returns the adding steps in the order that stays clear longest; empty where that is the order already. */
    public List<String> clearest() {
        return found.clearest().stream().map(step -> step.what()).toList();
    }

    public List<Finding> findings() {
        return found.findings();
    }

    /** Returns the map of strength and dose as SVG. */
    public String map() {
        return ClarityMap.svg(
                clarity(),
                found.path().stops().stream().map(MixingPath.Stop::clarity).toList(),
                words::marked);
    }

    /** Returns the oil load against dilution as SVG. */
    public String glassMap() {
        return GlassMap.svg(
                found.glass(),
                glass(),
                words.say("clarity.parts", addition(found.glass().addition())),
                words::marked);
    }
}

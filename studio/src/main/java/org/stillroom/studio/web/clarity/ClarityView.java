package org.stillroom.studio.web.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.clarity.Chances;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.mixing.MixingPath;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.sheet.ClarityMap;
import org.stillroom.studio.sheet.GlassMap;
import org.stillroom.studio.usecase.TellClarity;
import org.stillroom.studio.wording.Words;

/** The forecast of clouding of one recipe as its page shows it. */
public record ClarityView(TellClarity.Found found, Words words) {
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
                new Row(words.say("clarity.leading"), clarity.leading(), ""));
    }

    /** Returns what would change it. */
    public List<Row> ways() {
        List<Row> rows = new ArrayList<>();
        add(rows, "clarity.clearFrom", found.clearFrom(), 1, "% vol");
        add(rows, "clarity.mostOil", found.mostOil(), 3, "g/L");
        if (clarity().verdict() != Verdict.CLEAR) {
            add(rows, "clarity.lessSugar", found.clearBelowSugar(), 0, "g/L");
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

    /** Returns what becomes of it in the glass, in a sentence. */
    public String glass() {
        OptionalDouble hazy = found.glass().hazyFrom();
        OptionalDouble cloudy = found.glass().cloudyFrom();
        if (cloudy.isPresent()) {
            return words.say(
                    TellClarity.isLouche(found) ? "clarity.louche" : "clarity.turns",
                    words.number(cloudy.getAsDouble(), 1));
        }
        return hazy.isPresent()
                ? words.say("clarity.hazyInGlass", words.number(hazy.getAsDouble(), 1))
                : words.say("clarity.sameInGlass");
    }

    /** Returns how long a haze takes to clear, or empty where nothing separates. */
    public String standing() {
        return found.clearing() == null
                ? ""
                : words.say(
                        found.clearing().sinks() ? "clarity.sinks" : "clarity.rises",
                        words.number(Math.max(0.1, found.clearing().days()), 1));
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
                found.path().stops().stream().map(MixingPath.Stop::clarity).toList());
    }

    /** Returns the oil load against dilution as SVG. */
    public String glassMap() {
        return GlassMap.svg(found.glass(), glass(), words.say("clarity.parts"));
    }
}

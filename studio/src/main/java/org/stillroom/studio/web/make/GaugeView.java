package org.stillroom.studio.web.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.gauging.Gauged.Pull;
import org.stillroom.core.gauging.Gauged.Warmth;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.usecase.CorrectBatch;
import org.stillroom.studio.usecase.batch.ReadingsText;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.shelf.OwnInstruments;
import org.stillroom.studio.wording.Words;

/**
 * What the page of gauging shows.
 *
 * @param texts what was typed, by field
 * @param words of the reader
 * @param batch whose vessel it is, or null
 * @param sheet of that batch, or null
 * @param shelf the maker's own instruments that gauge
 * @param vessels of the batch that something is in
 * @param guide what would serve before anything is measured
 * @param problems with what was typed
 * @param found what is in the vessel, or null when nothing was asked or it cannot be told
 * @param correction what would bring it to its target, or null when none is named
 */
public record GaugeView(
        Map<String, String> texts,
        Words words,
        @Nullable Batch batch,
        @Nullable BatchSheet sheet,
        List<Instrument> shelf,
        List<String> vessels,
        GuideView guide,
        List<Finding> problems,
        GaugeQuestion.@Nullable Found found,
        CorrectBatch.@Nullable Found correction) {
    /** The fields that are readings, in their order on the page. */
    public static final List<String> READINGS =
            List.of("flask", "flask-weight", "density", "hydrometer", "refractometer", "volume", "mass");
    /** Readings that take a method of their own. */
    public static final List<String> BY_METHODS = List.of("residue", "dry-residue", "strength", "sugar", "acidity");
    /** What a hydrometer is marked for. */
    public static final List<String> OF_HYDROMETER = List.of("reference", "glass");
    /** The figures that are wanted. */
    static final List<String> TARGETS = List.of("to-strength", "to-sugar", "to-acidity");

    /** Which vessel of a batch it is. */
    public static final String VESSEL = "vessel";
    /** How much the vessel holds. */
    static final String ROOM = "room";
    /** The fields that say what is wanted. */
    public static final List<String> WISHES = List.of("to-strength", "to-sugar", "to-acidity", "with", "restore", ROOM);

    /** The fields in which an instrument of the shelf is chosen. */
    static final List<String> OWN =
            OwnInstruments.KINDS.stream().map(GaugeView::own).toList();

    /** The fields that show what is wrong with them. */
    private static final List<String> SHOWN = shown();

    static final List<String> FIELDS = fields();

    public GaugeView {
        shelf = List.copyOf(shelf);
        vessels = List.copyOf(vessels);
        problems = List.copyOf(problems);
    }

    GaugeView(
            Map<String, String> texts,
            Words words,
            @Nullable Batch batch,
            @Nullable BatchSheet sheet,
            List<Instrument> shelf,
            List<String> vessels,
            GuideView guide) {
        this(texts, words, batch, sheet, shelf, vessels, guide, List.of(), null, null);
    }

    private static String own(String kind) {
        return "own-" + kind;
    }

    /**
     * The instruments of one kind to choose from.
     *
     * @param field under which the choice is sent
     * @param kind of them all
     */
    public record Choosing(String field, String kind, List<Instrument> instruments) {}

    /** Returns what can be chosen, by kind. */
    public List<Choosing> choosing() {
        return OwnInstruments.KINDS.stream()
                .map(kind -> new Choosing(
                        own(kind),
                        kind,
                        shelf.stream()
                                .filter(each -> each.sheet().kind().equals(kind))
                                .toList()))
                .filter(choosing -> !choosing.instruments().isEmpty())
                .toList();
    }

    private static List<String> shown() {
        List<String> shown = new ArrayList<>(READINGS);
        shown.addAll(BY_METHODS);
        shown.addAll(OF_HYDROMETER);
        shown.addAll(WISHES);
        shown.add("temperature");
        shown.add(VESSEL);
        return List.copyOf(shown);
    }

    private static List<String> fields() {
        List<String> fields = new ArrayList<>(SHOWN);
        fields.addAll(OWN);
        fields.addAll(List.of("compensated", "restores"));
        return List.copyOf(fields);
    }

    GaugeView objecting(List<Finding> wrong) {
        return new GaugeView(texts, words, batch, sheet, shelf, vessels, guide, wrong, found, correction);
    }

    GaugeView finding(GaugeQuestion.Found now) {
        return new GaugeView(texts, words, batch, sheet, shelf, vessels, guide, problems, now, correction);
    }

    GaugeView correcting(CorrectBatch.Found ways) {
        return new GaugeView(texts, words, batch, sheet, shelf, vessels, guide, problems, found, ways);
    }

    boolean isAsked() {
        return READINGS.stream().anyMatch(field -> !text(field).isBlank()) || isByMethods();
    }

    /** Returns whether something was read by a method of its own. */
    public boolean isByMethods() {
        return BY_METHODS.stream()
                .anyMatch(field -> !text(field).isBlank() || !problems(field).isEmpty());
    }

    /** Returns what a vessel of the batch is called. */
    public String vessel(String name) {
        return name.matches("\\d+") ? words.say("rest.vessel", name) : name;
    }

    public String text(String field) {
        return texts.getOrDefault(field, "");
    }

    /** Returns what is wrong with a field. */
    public List<Finding> problems(String field) {
        return problems.stream()
                .filter(problem -> problem.where().equals(field))
                .toList();
    }

    /** Returns what is wrong with no single field that the page has. */
    public List<Finding> otherProblems() {
        return problems.stream()
                .filter(problem -> !SHOWN.contains(problem.where()))
                .toList();
    }

    /** A reading beside what the estimate makes it. */
    public record Row(String name, String read, String expected, String pull, boolean setAside) {}

    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        if (found != null) {
            List<Pull> pulls = found.gauged().pulls();
            for (int i = 0; i < pulls.size(); i++) {
                rows.add(row(
                        pulls.get(i),
                        i < found.readings().size() ? found.readings().get(i) : null));
            }
        }
        return rows;
    }

    private Row row(Pull pull, @Nullable Reading reading) {
        String sigma = pull.canBeTold() ? words.number(Math.abs(pull.sigma()), 1) + " σ" : "";
        if (reading == null) {
            String known = words.say(batch == null ? "make.gauge.poured" : "make.gauge.byLog");
            return new Row(known, "", "", sigma, pull.setAside());
        }
        int decimals = reading.shown().decimals();
        return new Row(
                words.say("make.gauge.shown." + reading.shown().name()),
                words.number(reading.value(), decimals) + " " + reading.shown().unit(),
                words.number(pull.expected(), decimals),
                sigma,
                pull.setAside());
    }

    /** Returns a figure with the ends of where it lies, such as "27.1 (26.5 to 27.7)". */
    public String ends(Interval interval, int decimals) {
        return words.say(
                "make.gauge.ends",
                words.number(interval.value(), decimals),
                words.number(interval.low(), decimals),
                words.number(interval.high(), decimals));
    }

    /** Returns how sure the thermometer is, and what of the doubt is its. */
    public String thermometer() {
        if (found == null) {
            return "";
        }
        Warmth warmth = found.gauged().warmth();
        String part = words.say(
                "make.gauge.thermometerPart",
                words.plain(warmth.thermometer().halfWidth()),
                words.number(warmth.strength(), 2),
                words.number(warmth.sugar(), 1));
        Interval tooMuch = warmth.tooMuch();
        return tooMuch.low() <= 0.0 && tooMuch.high() >= 0.0
                ? part
                : part + " "
                        + words.say(
                                tooMuch.value() > 0.0 ? "make.gauge.tooWarm" : "make.gauge.tooCold",
                                words.number(Math.abs(tooMuch.value()), 1),
                                words.number(tooMuch.halfWidth(), 1));
    }

    /** Returns the estimate as the log of a batch takes what was measured, with its doubt. */
    public Map<String, String> measured() {
        Map<String, String> measured = new LinkedHashMap<>();
        if (found != null) {
            measured.put("strength", range(found.gauged().strength(), 2, "%"));
            measured.put("sugar", range(found.gauged().sugar(), 1, "g/L"));
            Interval acidity = found.gauged().acidity();
            if (acidity != null && !text("acidity").isBlank()) {
                measured.put("acidity", range(acidity, 2, "g/L"));
            }
            measured.put("readings", readings(found));
            Interval volume = found.gauged().volume();
            if (volume != null && text("volume").isBlank() && text("mass").isBlank()) {
                return measured; // nobody read how much there is: what the log says of that stays
            }
            if (volume != null) {
                measured.put("volume", range(volume, 1, "ml"));
            }
        }
        return measured;
    }

    /** Returns the readings that the estimate counts with, for what batches tell later; none where they contradict each other. */
    private static String readings(GaugeQuestion.Found found) {
        List<Reading> kept = new ArrayList<>();
        for (int i = 0; i < found.readings().size(); i++) {
            if (!found.gauged().pulls().get(i).setAside()) {
                kept.add(found.readings().get(i));
            }
        }
        boolean contradict = found.gauged().findings().stream()
                .anyMatch(finding -> finding.rule().equals("readings-contradict"));
        return ReadingsText.write(
                contradict ? List.of() : kept, found.gauged().warmth().thermometer());
    }

    private static String range(Interval interval, int decimals, String unit) {
        return QuantityWords.fixed(interval.low(), decimals) + ".." + QuantityWords.fixed(interval.high(), decimals)
                + " " + unit;
    }

    /** Returns what to add, such as "43 mL of spirit of 96%". */
    public String added(Correction.Added added) {
        return words.amount(added.addition().isSolid() ? new Mass(added.grams()) : new Volume(added.millilitres()));
    }

    /** Returns what there is then. */
    public String result(Correction.Way way) {
        Essentials result = way.essentials();
        String then = words.say(
                "make.gauge.then",
                words.amount(new Volume(result.millilitres())),
                words.number(result.strength(), 1),
                words.halfWidth(way.doubt().getOrDefault(Asked.STRENGTH, 0.0), 1),
                words.number(result.sugar(), 0),
                words.halfWidth(way.doubt().getOrDefault(Asked.SUGAR, 0.0), 0));
        return result.acidity() < 0.05
                ? then
                : then + " " + words.say("make.gauge.thenAcid", words.number(result.acidity(), 1));
    }
}

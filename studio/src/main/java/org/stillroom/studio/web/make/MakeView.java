package org.stillroom.studio.web.make;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Way;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Rules;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.marks.Reading;
import org.stillroom.studio.usecase.make.LogEntry;
import org.stillroom.studio.usecase.make.Logged;
import org.stillroom.studio.usecase.make.MakePart;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;
import org.stillroom.studio.usecase.make.Resting;
import org.stillroom.studio.web.triangle.TriangleView;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** A make in the words of its reader; it looks things up and words them, and computes nothing. */
public final class MakeView {
    /** Nothing was refused. */
    static final Said NOTHING_SAID = new Said("", "", "", List.of());

    private final MakeState state;
    private final Words words;
    private final String chosen;
    private final Said said;
    private final long seen;

    /**
     * What was typed and not understood.
     *
     * @param step in which it was typed
     * @param typed as it was typed
     * @param message what is the matter
     * @param choices what it may mean
     */
    public record Said(String step, String typed, String message, List<String> choices) {}

    /**
     * @param chosen id of the step to show at arm's length, or empty for the one at hand
     * @param seen number of the last entry of the log
     */
    MakeView(MakeState state, Words words, String chosen, Said said, long seen) {
        this.state = state;
        this.words = words;
        this.chosen = chosen;
        this.said = said;
        this.seen = seen;
    }

    /** Returns where the liquid lies as it stands now. */
    public TriangleView triangle() {
        MakePart whole = state.whole();
        return TriangleView.still(
                whole.measured(), whole.planned().recipe().target().sugarBasis(), words);
    }

    public MakeState state() {
        return state;
    }

    public Words words() {
        return words;
    }

    public Said said() {
        return said;
    }

    public long seen() {
        return seen;
    }

    public String id() {
        return state.make().id();
    }

    /** Returns a fresh name for a change. */
    public String request() {
        return UUID.randomUUID().toString();
    }

    /** Returns the step to show at arm's length, or null when all are done. */
    public @Nullable MakeStep now() {
        for (MakeStep step : state.steps()) {
            if (step.id().equals(chosen) && step.isToCome()) {
                return step;
            }
        }
        return state.here();
    }

    public boolean isNow(MakeStep step) {
        MakeStep now = now();
        return now != null && now.id().equals(step.id());
    }

    /** Returns what nobody is to drink in this make, besides what the step at hand says itself. */
    public List<Finding> halts() {
        MakeStep now = now();
        List<Finding> said = now == null ? List.of() : state.minded(now);
        return state.minding().notForDrinking().stream()
                .filter(stop -> !said.contains(stop))
                .toList();
    }

    /** Returns what rules say of a step in the list, each once: two laws that do not know the same of it say one thing here. */
    public List<Finding> minded(MakeStep step) {
        Set<String> said = new HashSet<>();
        return state.minded(step).stream()
                .filter(finding -> said.add(finding.verdict()))
                .toList();
    }

    /** Returns whether what goes in at a step is not for drinking, so that doing it is not offered. */
    public boolean isForbidden(MakeStep step) {
        return state.minded(step).stream().anyMatch(Rules::isNotForDrinking);
    }

    public int number(MakeStep step) {
        int number = 1;
        for (MakeStep each : state.steps()) {
            if (each.id().equals(step.id())) {
                return number;
            }
            number++;
        }
        return number;
    }

    /** Returns the name of a step in the list: the ingredient, or what to do. */
    public String name(MakeStep step) {
        MakeStep.Pour pour = step.pour();
        if (pour != null) {
            String key =
                    pour.further() ? "make.more" : step.kind() == MakeStep.Kind.MAKE_UP ? "make.upTo" : "make.pour";
            return words.say(key, pour.name());
        }
        return step.kind() == MakeStep.Kind.OWN
                ? step.what()
                : words.say("make.step." + step.kind().name());
    }

    /** Returns whether the sentence of a step says more than its name; the core's sentences are English. */
    public boolean hasSentence(MakeStep step) {
        return switch (step.kind()) {
            case POUR, MAKE_UP, REST, STIR, COOL -> !step.what().isEmpty();
            case VESSEL, POUR_IN, MEASURE, CAME, LABEL -> !step.why().isEmpty();
            case OWN -> false;
        };
    }

    /** Returns what is asked, as the instrument shows it. */
    public String asked(MakeStep.Pour pour) {
        Reading reading = pour.asked().reading();
        return tied(words.told("instrument", words.units() == UnitSystem.US ? reading.us() : reading.words())
                .text());
    }

    private String tied(String figures) {
        return words.marked(figures).replaceAll("(?<=\\d) (?=[a-zA-Z%])", "\u00a0");
    }

    public String instrument(MakeStep.Pour pour) {
        return words.told("instrument", pour.asked().reading().instrument()).text();
    }

    /** Returns whether the weight says more than what is asked. */
    public boolean isNotWeighed(MakeStep.Pour pour) {
        return !pour.asked().reading().unit().equals("g");
    }

    public String grams(double grams) {
        return words.amount(new Mass(Math.max(0.0, grams)));
    }

    /** Returns a weight as the scale shows it: to a tenth of a gram, finer for the finest. */
    public String shows(double grams) {
        return words.number(grams, 1) + "\u00a0g";
    }

    public String unit(MakeStep step) {
        MakeStep.Pour pour = step.pour();
        return pour == null ? "" : pour.asked().reading().unit();
    }

    /** Returns what stands on the right of a row: what went in, or what is asked. */
    public String much(MakeStep step) {
        MakeStep.Pour pour = step.pour();
        LogEntry last = step.last();
        if (pour == null) {
            String typed = last == null ? null : last.said().typed();
            if (last != null && last.kind().equals(Logged.WEIGHED_VESSEL)) {
                return shows(last.said().grams());
            }
            return typed == null ? "" : tied(typed);
        }
        return switch (step.state()) {
            case TO_COME -> asked(pour);
            case NOT_NEEDED -> words.say("make.notNeeded");
            case SKIPPED -> words.say("make.skipped");
            case DONE, DIFFERING -> grams(pour.grams());
        };
    }

    /** Returns what was asked where something else went in, or empty. */
    public String against(MakeStep step) {
        LogEntry last = step.last();
        if (step.pour() == null || last == null || step.state() != MakeStep.State.DIFFERING) {
            return "";
        }
        return words.say("make.asked", grams(last.said().asked()));
    }

    /** Returns by how much a pour missed what was asked, such as "6.3 g over". */
    public String slip(MakeStep step) {
        double over = step.over();
        String key = step.state() == MakeStep.State.SKIPPED ? "make.leftOut" : over > 0.0 ? "make.over" : "make.short";
        return words.say(key, grams(Math.abs(over)));
    }

    /** Returns whether a slip is to be spoken of at arm's length: a way is to be chosen, or it is what was done last. */
    public boolean isFresh(MakePart part) {
        MakeStep slip = part.slip();
        if (slip == null || !part.choices().isEmpty()) {
            return slip != null;
        }
        LogEntry last = lastCounting();
        return last != null
                && (last.equals(slip.last())
                        || (last.kind().equals(Logged.WAY) && last.said().step().startsWith(part.number() + "/")));
    }

    private @Nullable LogEntry lastCounting() {
        List<LogEntry> counting = state.log().stream().filter(LogEntry::counts).toList();
        return counting.isEmpty() ? null : counting.get(counting.size() - 1);
    }

    /** Returns whether something else went in than asked in a step, so that its row says so. */
    public boolean isSlip(MakeStep step) {
        return step.isPour()
                && (step.state() == MakeStep.State.DIFFERING || step.state() == MakeStep.State.SKIPPED)
                && Math.abs(step.over()) > 0.0;
    }

    /** Returns whether two entries count for one step. */
    public boolean isTwice(MakeStep step) {
        return step.pour() != null && step.entries().size() > 1;
    }

    public String mark(Finding finding) {
        return finding.severity() == Severity.NOTE
                ? "within"
                : finding.severity() == Severity.CAUTION ? "near" : "over";
    }

    /** Returns a way to go on as a button says it. */
    public String way(Way way) {
        double change = way.plan().millilitres() - goal(way);
        return switch (way.kind()) {
            case KEEP_VOLUME -> words.say("make.way.keep");
            case MORE_OF_EVERYTHING ->
                change < 1.0 ? words.say("make.way.topUp") : words.say("make.way.more", words.number(change, 0));
            case LESS_OF_EVERYTHING -> words.say("make.way.less", words.number(-change, 0));
        };
    }

    private static double goal(Way way) {
        return way.figures().get(0).planned();
    }

    public String figures(Way way) {
        Essentials of = Essentials.of(way.plan().liquid().toGrams());
        return figures(of);
    }

    /** Returns volume, strength and sugar, the strength to a tenth. */
    public String figures(Essentials of) {
        return words.say(
                "make.figures",
                words.number(of.millilitres(), 0),
                words.number(of.strength(), 1),
                words.number(of.sugar(), 0));
    }

    /** Returns what is still to be poured on a way. */
    public List<String> amounts(Way way) {
        List<String> amounts = new ArrayList<>();
        for (int i = 0; i < way.parts().size(); i++) {
            if (!way.parts().get(i).isIn()) {
                amounts.add(way.plan().lines().get(i).name() + ": "
                        + grams(way.plan().lines().get(i).grams()));
            }
        }
        return amounts;
    }

    /** Returns what is to be said about a vessel or about what is at hand on a way. */
    public List<Finding> findings(Way way) {
        return way.plan().findings();
    }

    public String exact(MeasuredLine line) {
        return grams(line.exact().grams());
    }

    public String figures(MakePart part) {
        return figures(part.measured().result());
    }

    /** Returns when a rest is over, or empty where it has not begun. */
    public String ready(MakeStep step) {
        return Resting.of(state, ZoneId.systemDefault())
                .filter(resting -> resting.step().id().equals(step.id()))
                .map(resting -> words.say("make.restsUntil", words.day(resting.until())))
                .orElse("");
    }

    public String minutes(MakeStep step) {
        return words.plain(step.waitSeconds() == 0 ? 10 : step.waitSeconds() / 60.0);
    }

    public long millis(Instant at) {
        return at.toEpochMilli();
    }

    public long nowMillis() {
        return Instant.now().toEpochMilli();
    }

    public String clock(Instant at) {
        return words.moment(at);
    }

    /** Returns an entry of the log in words. */
    public String told(LogEntry entry) {
        String what = words.say("make.log." + entry.kind());
        String typed = entry.said().typed() == null
                ? ""
                : " " + tied(String.valueOf(entry.said().typed()));
        boolean weighed = entry.kind().equals(Logged.DONE) || entry.kind().equals(Logged.POURED);
        String grams = weighed && entry.said().grams() > 0.0
                ? " (" + grams(entry.said().grams()) + ")"
                : "";
        return what + typed + grams;
    }

    /** Returns the name of the step of an entry, or empty. */
    public String stepOf(LogEntry entry) {
        return state.steps().stream()
                .filter(step -> step.id().equals(entry.said().step()))
                .map(this::name)
                .findFirst()
                .orElse("");
    }
}

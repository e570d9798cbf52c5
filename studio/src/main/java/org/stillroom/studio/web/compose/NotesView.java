package org.stillroom.studio.web.compose;

import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.tasting.Note;
import org.stillroom.core.tasting.OdourThreshold;
import org.stillroom.studio.sheet.NotesPlot;
import org.stillroom.studio.usecase.TellNotes;
import org.stillroom.studio.wording.Words;

/** The notes of one recipe as their page shows them. */
public record NotesView(TellNotes.Found found, Words words) {
    /** More are not drawn; the table has all. */
    private static final int DRAWN = 16;

    private static final int LEADING = 3;

    /** An activity below this is shown as none. */
    private static final double NOTHING = 0.001;

    /** A constituent in figures. */
    public record Row(
            String name,
            String smell,
            String content,
            String range,
            String activity,
            String spread,
            String threshold) {}

    private List<Note> known() {
        return found.notes().stream().filter(note -> note.threshold() != null).toList();
    }

    /** Returns whether anything can be drawn. */
    public boolean isDrawn() {
        return !known().isEmpty();
    }

    /** Returns in a sentence which notes lead, and how sure that is. */
    public String leading() {
        List<String> leading = known().stream()
                .filter(note -> note.activity() >= 1.0)
                .limit(LEADING)
                .map(note -> words.say(
                                "notes.leads",
                                note.name(),
                                activity(note.told().activity()),
                                activity(note.told().least()),
                                activity(note.told().most()))
                        + weaknesses(note))
                .toList();
        return leading.isEmpty()
                ? words.say("notes.noneLeads")
                : words.say("notes.inFront", leading.stream().collect(Collectors.joining("; ")));
    }

    private String weaknesses(Note note) {
        return note.weaknesses().stream()
                .map(each -> ", " + words.say("notes.weak." + each.name()))
                .collect(Collectors.joining());
    }

    public String strength() {
        return words.say("notes.at", words.number(found.strength(), 1));
    }

    /** Returns whose analyses are counted, in a sentence; empty where none is. */
    public String byAnalysis() {
        return found.analysed().isEmpty() ? "" : words.say("notes.analysed", String.join(", ", found.analysed()));
    }

    /** Returns the plot as SVG. */
    public String plot() {
        List<NotesPlot.Bar> bars = known().stream()
                .filter(note -> note.activity() > 0.0)
                .limit(DRAWN)
                .map(note -> new NotesPlot.Bar(
                        note.name(),
                        note.least(),
                        note.activity(),
                        note.most(),
                        !note.weaknesses().isEmpty()))
                .toList();
        return NotesPlot.svg(bars, leading(), words.say("notes.axis"), words::marked);
    }

    public List<Row> rows() {
        return found.notes().stream().map(this::row).toList();
    }

    private Row row(Note note) {
        OdourThreshold threshold = note.threshold();
        return new Row(
                note.name(),
                OdourThreshold.smell(note.cas()),
                figure(note.content().typical()),
                fromTo(note.content().min(), note.content().max()),
                threshold == null ? "–" : activity(note.told().activity()),
                threshold == null
                        ? "–"
                        : words.say(
                                "notes.fromTo",
                                activity(note.told().least()),
                                activity(note.told().most())),
                threshold == null
                        ? words.say("notes.noThreshold")
                        : words.say("notes.in." + threshold.medium().name()) + ", "
                                + words.say(
                                        "notes.standing." + threshold.standing().name()));
    }

    /** Returns an activity in the figures that are known of it. */
    private String activity(double told) {
        return told < NOTHING ? "0" : words.plain(told);
    }

    private String fromTo(double low, double high) {
        return words.say("notes.fromTo", figure(low), figure(high));
    }

    private String figure(double value) {
        return words.number(value, value >= 100.0 ? 0 : value >= 1.0 ? 1 : 3);
    }

    public List<Finding> findings() {
        return found.findings();
    }
}

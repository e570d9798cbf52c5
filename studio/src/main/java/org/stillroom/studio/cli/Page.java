package org.stillroom.studio.cli;

import java.io.PrintStream;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Rules;

/** Text for a person: headings, tables, findings and steps, in colour only where it is seen as such. */
public final class Page {
    /** Widest line of running text, in characters; tables may be wider. */
    static final int WIDTH = 96;

    private final PrintStream out;
    private final Colour colour;

    /** Whether the reader sees colours. */
    public enum Colour {
        SEEN,
        NOT_SEEN
    }

    public Page(PrintStream out, Colour colour) {
        this.out = out;
        this.colour = colour;
    }

    public void heading(String text) {
        line(Ink.STRONG, text);
    }

    /** Prints a paragraph, wrapped between words. */
    public void paragraph(String text) {
        paragraph(Ink.PLAIN, "", text);
    }

    /** Prints a line as it stands, however long: a command to copy, a path. */
    public void verbatim(String text) {
        line(Ink.PLAIN, text);
    }

    public void blank() {
        out.println();
    }

    public void table(Table table) {
        boolean head = table.isHeaded();
        for (String line : table.lines()) {
            line(head ? Ink.FAINT : Ink.PLAIN, line);
            head = false;
        }
    }

    /** Prints what the maker should know: place, message, how sure, remedy, source. */
    public void finding(Finding finding) {
        String place = finding.where().isEmpty() ? "" : finding.where() + ": ";
        paragraph(ink(finding.severity()), "", word(finding.severity()) + ": " + place + finding.message());
        more("What to do: ", finding.remedy());
        more("How sure: ", finding.howSure());
        more("By: ", Rules.whoDecides(finding));
        more("Source: ", source(finding));
    }

    /** Prints the steps of a computation, each with its unit and source. */
    public void steps(List<Workings.Step> steps) {
        Table table = new Table().text("step").figure("value").text("unit").text("source");
        for (Workings.Step step : steps) {
            table.row(
                    step.what(),
                    Figure.significant(step.value()),
                    step.unit(),
                    step.source().title());
        }
        heading("How this was computed");
        table(table);
    }

    private void more(String lead, String text) {
        if (!text.isEmpty()) {
            paragraph(Ink.PLAIN, "  ", lead + text);
        }
    }

    private static String source(Finding finding) {
        if (finding.source() == null) {
            return "";
        }
        return finding.source().title() + " (" + finding.status() + ")";
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case NOTE -> "Note";
            case CAUTION -> "Caution";
            case STOP -> "Stop";
        };
    }

    private static Ink ink(Severity severity) {
        return switch (severity) {
            case NOTE -> Ink.PLAIN;
            case CAUTION -> Ink.CAUTION;
            case STOP -> Ink.STOP;
        };
    }

    private void paragraph(Ink ink, String indent, String text) {
        int room = WIDTH - indent.length();
        String rest = text;
        while (rest.length() > room) {
            int cut = rest.lastIndexOf(' ', room);
            if (cut <= 0) {
                cut = rest.indexOf(' ', room);
            }
            if (cut < 0) {
                break;
            }
            line(ink, indent + rest.substring(0, cut));
            rest = rest.substring(cut + 1);
        }
        line(ink, indent + rest);
    }

    private void line(Ink ink, String text) {
        out.println(colour == Colour.SEEN ? ink.around(text) : text);
    }
}

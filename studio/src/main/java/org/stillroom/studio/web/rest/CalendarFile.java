package org.stillroom.studio.web.rest;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.wording.Words;

/**
 * What waits as a calendar for other programs: RFC 5545, one event of a whole day for each wait, with a reminder in the morning.
 *
 * <p>A wait keeps its UID however often it is postponed, so that a program that reads the file again moves the event. Written out here,
 * since the libraries at hand fold lines by letters, and the standard counts octets.
 */
final class CalendarFile {
    /** Octets of a line at most, its end left out. Source: RFC 5545, 3.1. */
    private static final int LINE = 75;

    private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final StringBuilder text = new StringBuilder();

    private CalendarFile() {}

    /** Returns the text of the calendar. */
    static String of(Book book, List<Waiting> waits, Words words, Instant now) {
        CalendarFile file = new CalendarFile();
        file.line("BEGIN:VCALENDAR");
        file.line("VERSION:2.0");
        file.line("PRODID:-//Stillroom//Rest//EN");
        file.line("X-WR-CALNAME:" + escaped(words.say("rest.calendarName"))); // of no standard; many programs show it
        for (Waiting waiting : waits) {
            if (!waiting.done()) {
                file.event(book, waiting, words, now);
            }
        }
        file.line("END:VCALENDAR");
        return file.text.toString();
    }

    private void event(Book book, Waiting waiting, Words words, Instant now) {
        LocalDate day = waiting.until();
        String next = words.say("rest.next." + waiting.what().name());
        String title = RestView.title(words, book, waiting);
        line("BEGIN:VEVENT");
        Waiting.Made make = waiting.make();
        line("UID:wait" + waiting.id() + "-" + (make == null ? waiting.batch() : make.id()) + "@stillroom");
        line("DTSTAMP:" + MOMENT.format(now));
        line("DTSTART;VALUE=DATE:" + DAY.format(day));
        line("DTEND;VALUE=DATE:" + DAY.format(day.plusDays(1)));
        line("SUMMARY:" + escaped(RestView.what(words, waiting) + ": " + title));
        line("DESCRIPTION:" + escaped(waiting.note().isEmpty() ? next : next + "\n" + waiting.note()));
        line("TRANSP:TRANSPARENT");
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        line("DESCRIPTION:" + escaped(next));
        line("TRIGGER:PT9H");
        line("END:VALARM");
        line("END:VEVENT");
    }

    /** Marks what has a meaning in a text value. Source: RFC 5545, 3.3.11. */
    private static String escaped(String value) {
        return value.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replaceAll("\r\n|\r|\n", "\\\\n")
                .replaceAll("\\p{Cntrl}", "");
    }

    /** Ends a line, and folds it between letters where it is too long; what goes on begins with a blank. */
    private void line(String content) {
        int octets = 0;
        for (int at = 0; at < content.length(); ) {
            int letter = content.codePointAt(at);
            String written = Character.toString(letter);
            int more = written.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LINE) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(written);
            octets += more;
            at += Character.charCount(letter);
        }
        text.append("\r\n");
    }
}

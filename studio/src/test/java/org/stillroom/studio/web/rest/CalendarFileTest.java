package org.stillroom.studio.web.rest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.batch.Cellar;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** The calendar is one that another library reads (ical4j), in the form of RFC 5545. */
class CalendarFileTest {
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);
    private static final String NOTE = "Durch Papier; dann kühl, lichtgeschützt\nund lange genug: " + "ä".repeat(120);

    private static String calendar() {
        Batch batch = new Batch(
                "k3m9x2w8ab", "m", "r", 7, Instant.EPOCH, "{\"title\":\"Quitte, Lorbeer\",\"lines\":[],\"notes\":[]}");
        Book book = new Book(List.of(batch), List.of(), Cellar.of(List.of()));
        LocalDate day = LocalDate.of(2026, 3, 14);
        List<Waiting> waits = List.of(
                new Waiting(12, batch.id(), null, Waiting.What.CLEARING, day.minusDays(9), day, NOTE, false),
                new Waiting(13, batch.id(), null, Waiting.What.AGEING, day.minusDays(9), day, "", true));
        return CalendarFile.of(book, waits, GERMAN, Instant.parse("2026-03-01T10:00:00Z"));
    }

    @Test
    void anotherLibraryReadsWhatWaits() throws IOException, ParserException {
        Calendar read = new CalendarBuilder().build(new StringReader(calendar()));

        assertThat(read.validate().hasErrors()).isFalse();
        List<VEvent> events = read.getComponents(Component.VEVENT);
        assertThat(events).as("what was seen to is not in it").hasSize(1);
        VEvent event = events.get(0);
        assertThat(value(event, Property.DTSTART)).isEqualTo("20260314");
        assertThat(value(event, Property.UID)).isEqualTo("wait12-k3m9x2w8ab@stillroom");
        assertThat(value(event, Property.SUMMARY)).contains("Charge 7").contains("Quitte, Lorbeer");
        assertThat(value(event, Property.DESCRIPTION)).contains(NOTE);
    }

    private static String value(VEvent event, String name) {
        return event.getProperty(name).orElseThrow().getValue();
    }

    /** RFC 5545, 3.1: lines end in CR LF and are no longer than 75 octets. */
    @Test
    @Tag("published")
    void linesAreEndedAndFoldedAsTheStandardHasIt() {
        String text = calendar();
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        assertThat(text.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        assertThat(text)
                .startsWith("BEGIN:VCALENDAR\r\n")
                .endsWith("END:VCALENDAR\r\n")
                .contains("VERSION:2.0");
    }
}

package org.stillroom.studio.usecase.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.batch.Event;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.ReadingsText;

/**
 * What instruments showed of a batch before anything was done with it.
 *
 * @param readings of its composition; volume and weight are left out, since liquid that was lost changes them and no label does
 * @param thermometer that their temperatures were read by
 */
record FirstReadings(List<Reading> readings, Thermometer thermometer) {
    /** A half-width of the central 90 % as one within which every value is as likely, with the same standard deviation. */
    private static final double EVENLY = Math.sqrt(3.0) / 1.6448536269514722;

    FirstReadings {
        readings = List.copyOf(readings);
    }

    static FirstReadings of(Book book, String batch) {
        for (HistoryEntry entry : book.firstMeasured(batch)) {
            FirstReadings read = of(entry);
            if (!read.readings().isEmpty()) {
                return read;
            }
        }
        return new FirstReadings(List.of(), Thermometer.USUAL);
    }

    /** Returns the readings themselves where they were logged; else the figures, each as a reading of its own method. */
    private static FirstReadings of(HistoryEntry entry) {
        Optional<ReadingsText.Read> logged = Book.readings(entry);
        if (logged.isPresent()) {
            return new FirstReadings(
                    logged.get().readings().stream()
                            .filter(reading -> reading.shown() != Shown.VOLUME && reading.shown() != Shown.MASS)
                            .toList(),
                    logged.get().thermometer());
        }
        List<Reading> readings = new ArrayList<>();
        if (Book.event(entry) instanceof Event.Measured measured) {
            add(readings, Shown.TRUE_STRENGTH, Asked.STRENGTH, measured);
            add(readings, Shown.TRUE_SUGAR, Asked.SUGAR, measured);
            add(readings, Shown.ACIDITY, Asked.ACIDITY, measured);
        }
        return new FirstReadings(readings, Thermometer.USUAL);
    }

    private static void add(List<Reading> readings, Shown shown, Asked asked, Event.Measured measured) {
        Map<Asked, Double> figures = measured.figures();
        if (figures.containsKey(asked)) {
            double value = figures.get(asked);
            double half = measured.doubt().containsKey(asked)
                    ? EVENLY * measured.doubt().get(asked)
                    : shown.usualHalfWidth(value);
            readings.add(new Reading(shown, value, Temperature.TWENTY_CELSIUS, half));
        }
    }
}

package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.quantity.Temperature;

/**
 * What instruments showed as one line of text, which the log of a batch keeps beside the figures that were made of it: "DENSITY 1029.4 ± 0.5 @
 * 22; THERMOMETER ± 0.5", each in the unit of {@link Shown} and °C; "none" where the readings tell nothing by themselves.
 */
public final class ReadingsText {
    private static final String NONE = "none";
    private static final String NUMBER = "(-?[0-9]+(?:\\.[0-9]+)?(?:E-?[0-9]+)?)";
    private static final Pattern READING = Pattern.compile("([A-Z0-9_]+) " + NUMBER + " ± " + NUMBER + " @ " + NUMBER);
    private static final Pattern THERMOMETER = Pattern.compile("THERMOMETER ± " + NUMBER);
    private static final int MOST = 50;

    private ReadingsText() {}

    /** What was read, and the thermometer that temperatures were read by. */
    public record Read(List<Reading> readings, Thermometer thermometer) {
        public Read {
            readings = List.copyOf(readings);
        }
    }

    /** Returns the text. */
    public static String write(List<Reading> readings, Thermometer thermometer) {
        if (readings.isEmpty()) {
            return NONE;
        }
        List<String> all = new ArrayList<>();
        for (Reading reading : readings) {
            all.add(reading.shown().name() + " " + reading.value() + " ± " + reading.halfWidth() + " @ "
                    + reading.at().celsius());
        }
        all.add("THERMOMETER ± " + thermometer.halfWidth());
        return String.join("; ", all);
    }

    /** Returns what a text says, or empty where it is not understood. */
    public static Optional<Read> read(String text) {
        if (text.strip().equals(NONE)) {
            return Optional.of(new Read(List.of(), Thermometer.USUAL));
        }
        List<Reading> readings = new ArrayList<>();
        Thermometer thermometer = Thermometer.USUAL;
        try {
            for (String part : text.strip().split("\\s*;\\s*", MOST)) {
                Matcher ofThermometer = THERMOMETER.matcher(part);
                Matcher reading = READING.matcher(part);
                if (ofThermometer.matches()) {
                    thermometer = new Thermometer(Double.parseDouble(ofThermometer.group(1)));
                } else if (reading.matches()) {
                    readings.add(new Reading(
                            Shown.valueOf(reading.group(1)),
                            Double.parseDouble(reading.group(2)),
                            new Temperature(Double.parseDouble(reading.group(4))),
                            Double.parseDouble(reading.group(3))));
                } else {
                    return Optional.empty();
                }
            }
        } catch (IllegalArgumentException cannotBe) {
            return Optional.empty();
        }
        return Optional.of(new Read(readings, thermometer));
    }
}

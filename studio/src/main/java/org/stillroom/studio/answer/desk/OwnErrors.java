package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.stillroom.core.gauging.HydrometerScale;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What is known of the maker's own instruments: what each shows too much, and how far it may be off; "hydrometer=0.002 SG". */
final class OwnErrors {
    static final String OFFSET = "offset";
    static final String WITHIN = "within";

    private static final String INDEX = "n";
    private static final List<String> READINGS = List.of(
            "density",
            "hydrometer",
            "refractometer",
            "flask",
            "flask-weight",
            "residue",
            "dry-residue",
            "strength",
            "sugar",
            "acidity",
            "volume",
            "mass");
    private static final String TEMPERATURE = "temperature";
    private static final Pattern AMOUNT = Pattern.compile("^±?\\s*([-−+.,0-9]+)\\s*(.*)$");
    /** Kelvin in a degree Fahrenheit. */
    private static final double OF_FAHRENHEIT = 5.0 / 9.0;

    private static final double WIDEST_THERMOMETER = 20.0;

    private final AskedTexts asked;
    private final VolumeBasis basis;
    private final Set<String> told = new TreeSet<>();

    OwnErrors(AskedTexts asked, VolumeBasis basis) {
        this.asked = asked;
        this.basis = basis;
        List<String> known =
                Stream.concat(READINGS.stream(), Stream.of(TEMPERATURE)).toList();
        refuseUnknown(WITHIN, known);
        refuseUnknown(OFFSET, known);
    }

    private void refuseUnknown(String kind, List<String> known) {
        for (String text : asked.texts(kind)) {
            int sign = text.indexOf('=');
            String named = sign < 0 ? text.strip() : text.substring(0, sign).strip();
            if (sign < 0 || !known.contains(named)) {
                asked.object(
                        kind,
                        "\"" + text + "\" names no reading.",
                        "Write the reading, = and how much, such as refractometer=0.1; it may be one of "
                                + String.join(", ", known) + ".");
            }
        }
    }

    /** Returns what a thermometer read, put right. */
    Temperature corrected(Temperature read) {
        return new Temperature(corrected(TEMPERATURE, "°C", Shown.VOLUME, read.celsius()));
    }

    /** Returns the thermometer that all temperatures were read by: as it is known, else as a kitchen has one. */
    Thermometer thermometer() {
        Optional<Double> half = within(TEMPERATURE, "°C", Shown.VOLUME);
        half.filter(each -> each > WIDEST_THERMOMETER)
                .ifPresent(wide -> asked.object(
                        WITHIN,
                        "a thermometer that may be " + QuantityWords.plain(wide) + " °C off tells nothing.",
                        "Give up to 20 °C, such as temperature=0.5C."));
        return half.filter(each -> each <= WIDEST_THERMOMETER)
                .map(Thermometer::new)
                .orElse(Thermometer.USUAL);
    }

    /** Returns how far the instrument of a part may be off, in the unit that it shows. */
    Optional<Double> within(String part, String unit, Shown shown) {
        Optional<Double> half = number(WITHIN, part, shown);
        half.filter(each -> !(each > 0.0))
                .ifPresent(none -> asked.object(
                        WITHIN, "no instrument is exact.", "Give how far it may be off, in " + unit + "."));
        return half.filter(each -> each > 0.0);
    }

    /** Returns what a reading is once that is taken off which its instrument shows too much, and says so once. */
    double corrected(String part, String unit, Shown shown, double read) {
        double offset = number(OFFSET, part, shown).orElse(0.0);
        if (offset != 0.0 && told.add(part)) {
            asked.note(Finding.of(
                    "reading-corrected",
                    Severity.NOTE,
                    asked.name(part),
                    "corrected",
                    "Your instrument shows " + QuantityWords.plain(Math.abs(offset)) + "\u00a0" + unit
                            + (offset > 0.0 ? " too much" : " too little") + ", which is put right here.",
                    ""));
        }
        return read - offset;
    }

    private Optional<Double> number(String kind, String part, Shown shown) {
        for (String text : asked.texts(kind)) {
            int sign = text.indexOf('=');
            Matcher amount =
                    AMOUNT.matcher(sign < 0 ? "" : text.substring(sign + 1).strip());
            boolean named = sign > 0 && text.substring(0, sign).strip().equals(part);
            if (named && (!amount.matches() || isOf(amount.group(2), shown))) {
                String unit = amount.matches() ? amount.group(2).strip() : "";
                return asked.read(kind, amount.matches() ? amount.group(1) : text.substring(sign + 1), TEXT::number)
                        .map(value -> part.equals(TEMPERATURE) ? degrees(kind, value, unit) : value);
            }
        }
        return Optional.empty();
    }

    /** Returns a difference of temperatures in °C. */
    private double degrees(String kind, double value, String unit) {
        switch (unit.replace("°", "").strip().toUpperCase(Locale.ROOT)) {
            case "", "C", "K" -> {}
            case "F" -> {
                return value * OF_FAHRENHEIT;
            }
            default ->
                asked.object(
                        kind,
                        "\"" + unit + "\" is no unit of temperature.",
                        "Write °C or °F, such as temperature=0.5C.");
        }
        return value;
    }

    /** Returns whether an amount is meant for a scale: without a unit it is meant for all. */
    private boolean isOf(String unit, Shown shown) {
        return unit.isBlank()
                || switch (shown) {
                    case GRAVITY, SACCHAROMETER, BAUME, SPIRIT_20C, SPIRIT_15C, PROOF ->
                        HydrometerScale.of(unit, basis)
                                .filter(each -> each == shown)
                                .isPresent();
                    case REFRACTIVE_INDEX -> unit.equalsIgnoreCase(INDEX);
                    case REFRACTOMETER, COMPENSATED_REFRACTOMETER -> !unit.equalsIgnoreCase(INDEX);
                    case DENSITY, VOLUME, MASS, RESIDUE_DENSITY, DRY_RESIDUE, TRUE_STRENGTH, TRUE_SUGAR, ACIDITY ->
                        true;
                };
    }
}

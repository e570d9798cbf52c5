package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.gauging.HydrometerScale;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.VolumeBasis;

/** What a hydrometer or a refractometer showed, with its scale, read from text such as "SG 1.045" or "31.5Bx". */
final class ScaleText {
    /** A number, then what scale it is on. */
    private static final Pattern ON_SCALE = Pattern.compile("(?i)^(n[Dd]?|sg)?\\s*([-−+.,0-9]+)\\s*(.*)$");

    private final AskedTexts asked;
    private final VolumeBasis basis;

    /** @param basis temperature that a hydrometer of % vol is marked for */
    ScaleText(AskedTexts asked, VolumeBasis basis) {
        this.asked = asked;
        this.basis = basis;
    }

    /** A number on a scale. */
    record OnScale(Shown shown, double value) {}

    /** Reads what a hydrometer showed. */
    Optional<OnScale> hydrometer(String part, String text) {
        Matcher on = ON_SCALE.matcher(text.strip());
        Optional<Shown> shown = on.matches() ? HydrometerScale.of(on.group(3), basis) : Optional.empty();
        if (shown.isEmpty()) {
            asked.object(
                    part,
                    "\"" + text + "\" does not say on which scale.",
                    "Write it as SG 1.045, 12Bx, 12 Plato, 6.5 Baumé, 25% or 50proof.");
            return Optional.empty();
        }
        return asked.read(part, on.group(2), TEXT::number).map(value -> new OnScale(shown.get(), value));
    }

    /** Reads what a refractometer showed. */
    Optional<OnScale> refractometer(String part, String text) {
        Shown brix = asked.has("compensated") ? Shown.COMPENSATED_REFRACTOMETER : Shown.REFRACTOMETER;
        Matcher on = ON_SCALE.matcher(text.strip());
        return on.matches() && on.group(1) != null
                ? asked.read(part, on.group(2), TEXT::number).map(value -> new OnScale(Shown.REFRACTIVE_INDEX, value))
                : asked.read(part, text, TEXT::brix).map(Brix::degrees).map(value -> new OnScale(brix, value));
    }
}

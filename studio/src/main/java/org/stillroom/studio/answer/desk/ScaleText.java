package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.gauging.HydrometerScale;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Stem;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.VolumeBasis;

/** What a hydrometer or a refractometer showed, with its scale, read from text such as "SG 1.045" or "31.5Bx". */
final class ScaleText {
    static final String GLASS = "glass";

    /** A number, then what scale it is on. */
    private static final Pattern ON_SCALE = Pattern.compile("(?i)^(n[Dd]?|sg)?\\s*([-−+.,0-9]+)\\s*(.*)$");

    /** A specific gravity with its pair of temperatures. */
    private static final Pattern PAIR =
            Pattern.compile("(?i)^(?:sg)?\\s*([.,0-9]+)\\s*(?:sg)?\\s*(20/20|60/60)(?:\\s*°?\\s*[CF])?$");

    /** Refractive indices of what a kitchen has; °Brix are seldom so few. */
    private static final double LEAST_INDEX = 1.3;

    private static final double MOST_INDEX = 1.6;

    private final AskedTexts asked;
    private final VolumeBasis basis;

    /** @param basis temperature that hydrometers are marked for that do not say it themselves */
    ScaleText(AskedTexts asked, VolumeBasis basis) {
        this.asked = asked;
        this.basis = basis;
    }

    /**
     * A number on a scale.
     *
     * @param stem of the hydrometer; of anything else it says nothing
     */
    record OnScale(Shown shown, double value, Stem stem) {
        OnScale(Shown shown, double value) {
            this(shown, value, Stem.usual(shown));
        }

        /** Returns what the usual instrument of that scale would have shown. */
        double restated(Temperature at) {
            return stem.restated(shown, value, at);
        }
    }

    /** Reads what a hydrometer showed. */
    Optional<OnScale> hydrometer(String part, String text) {
        Matcher pair = PAIR.matcher(text.strip());
        if (pair.matches()) {
            return ofPair(part, text, pair);
        }
        Matcher on = ON_SCALE.matcher(text.strip());
        Optional<Shown> shown = on.matches() ? HydrometerScale.of(on.group(3), basis) : Optional.empty();
        if (shown.isEmpty()) {
            asked.object(
                    part,
                    "\"" + text + "\" does not say on which scale.",
                    "Write it as SG 1.045, SG 1.045 60/60, 12Bx, 12 Plato, 6.5 Baumé, 25% or 50proof.");
            return Optional.empty();
        }
        Stem stem = stem(shown.get());
        if (!stem.carries(shown.get())) {
            asked.object(
                    "reference",
                    "a " + shown.get().label() + " is marked for 60 °F.",
                    "Leave " + asked.name("reference") + " out, or write 60F.");
            return Optional.empty();
        }
        return asked.read(part, on.group(2), TEXT::number).map(value -> new OnScale(shown.get(), value, stem));
    }

    private Optional<OnScale> ofPair(String part, String text, Matcher pair) {
        VolumeBasis said = pair.group(2).equals("60/60") ? VolumeBasis.AT_60F : VolumeBasis.AT_20C;
        if (asked.isTyped("reference") && basis != said) {
            asked.object(
                    "reference",
                    "\"" + text + "\" is marked for " + said.label() + ", not for " + basis.label() + ".",
                    "Leave " + asked.name("reference") + " out.");
        }
        return asked.read(part, pair.group(1), TEXT::number)
                .map(value -> new OnScale(Shown.GRAVITY, value, new Stem(said.temperature(), glass())));
    }

    /** Returns the stem that was asked for; one that names no temperature is marked as its scale usually is. */
    private Stem stem(Shown shown) {
        return new Stem(
                asked.isTyped("reference")
                        ? basis.temperature()
                        : Stem.usual(shown).markedFor(),
                glass());
    }

    private Stem.Glass glass() {
        return asked.has(GLASS)
                ? asked.choice(GLASS, List.of(Stem.Glass.values()), Stem.Glass::label)
                        .orElse(Stem.Glass.SODA_LIME)
                : Stem.Glass.SODA_LIME;
    }

    /** Reads what a refractometer showed. */
    Optional<OnScale> refractometer(String part, String text) {
        Shown brix = asked.has("compensated") ? Shown.COMPENSATED_REFRACTOMETER : Shown.REFRACTOMETER;
        Matcher on = ON_SCALE.matcher(text.strip());
        if (on.matches() && on.group(1) == null && on.group(3).isEmpty() && isIndexOrBrix(on.group(2))) {
            asked.object(
                    part,
                    "\"" + text + "\" may be a refractive index or °Brix.",
                    "Write \"n " + text.strip() + "\" or " + text.strip() + "Bx.");
            return Optional.empty();
        }
        return on.matches() && on.group(1) != null
                ? asked.read(part, on.group(2), TEXT::number).map(value -> new OnScale(Shown.REFRACTIVE_INDEX, value))
                : asked.read(part, text, TEXT::brix).map(Brix::degrees).map(value -> new OnScale(brix, value));
    }

    private static boolean isIndexOrBrix(String number) {
        return TEXT.number(number) instanceof Understanding.Understood<Double> understood
                && understood.typed().value() >= LEAST_INDEX
                && understood.typed().value() <= MOST_INDEX;
    }
}

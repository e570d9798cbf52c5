package org.stillroom.studio.answer.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.ByName;
import org.stillroom.core.safety.Grounds;

/**
 * The parts of one question as they were typed, and what is understood of them.
 *
 * <p>Every part is read before any is refused; what was taken for granted is told with the answer.
 */
final class AskedTexts {
    static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    private final Map<String, List<String>> typed;
    private final Set<String> usual = new HashSet<>();
    private final Manner manner;
    private final Objections objections;
    private final List<Finding> assumed = new ArrayList<>();

    /**
     * Takes what was typed.
     *
     * @param parts what the question takes; the usual text stands for what was left out
     * @param typed texts by the names of their parts
     * @param manner how whoever asks writes parts
     * @param objections takes what is wrong, and may hold some already
     */
    AskedTexts(List<Part> parts, Map<String, List<String>> typed, Manner manner, Objections objections) {
        Map<String, List<String>> all = new LinkedHashMap<>(typed);
        for (Part part : parts) {
            if (part.usual() != null && all.putIfAbsent(part.name(), List.of(part.usual())) == null) {
                usual.add(part.name());
            }
        }
        this.typed = Collections.unmodifiableMap(all);
        this.manner = manner;
        this.objections = objections;
        parts.stream()
                .filter(part -> part.isRequired() && !has(part.name()))
                .forEach(part -> object(part.name(), "it is missing.", "Give " + part.description() + "."));
    }

    /** Returns the text of a part, or null when it was left out. */
    @Nullable
    String text(String part) {
        List<String> texts = texts(part);
        return texts.isEmpty() ? null : texts.get(texts.size() - 1);
    }

    /** Returns all texts of a part. */
    List<String> texts(String part) {
        return typed.getOrDefault(part, List.of());
    }

    boolean has(String part) {
        return typed.containsKey(part);
    }

    /** Returns whether a part is a dose per litre, such as "12 ml/L". */
    boolean isPerLitre(String part) {
        String text = text(part);
        return text != null && TEXT.dose(text) instanceof Understanding.Understood<Dose>;
    }

    /** Returns whether somebody typed a part; what is usual was not typed. */
    boolean isTyped(String part) {
        return has(part) && !usual.contains(part);
    }

    /** Tells something with the answer. */
    void note(Finding finding) {
        assumed.add(finding);
    }

    /** Returns what was taken for granted. */
    List<Finding> assumed() {
        return Collections.unmodifiableList(assumed);
    }

    /** Returns the name of a part as whoever asks writes it. */
    String name(String part) {
        return part.isEmpty() ? "" : manner.name(part);
    }

    /** Returns an example as whoever asks would write it. */
    String write(String part, String value) {
        return manner.write(List.of(new Manner.Given(part, value)));
    }

    /** Returns an example of two parts together. */
    String write(String part, String value, String other, String otherValue) {
        return manner.write(List.of(new Manner.Given(part, value), new Manner.Given(other, otherValue)));
    }

    /** Returns what a part was understood as; empty when it was left out or not understood. */
    <Q> Optional<Q> read(String part, Function<String, Understanding<Q>> reader) {
        return read(part, text(part), reader);
    }

    /** Returns what a text was understood as. */
    <Q> Optional<Q> read(String part, @Nullable String text, Function<String, Understanding<Q>> reader) {
        if (text == null) {
            return Optional.empty();
        }
        Understanding<Q> understanding = reader.apply(text);
        if (understanding instanceof Understanding.Understood<Q> understood) {
            understood
                    .assumed()
                    .forEach(sentence -> assumed.add(
                            Finding.of("taken-for-granted", Severity.NOTE, name(part), "", sentence + ".", "")));
        }
        return objections.take(name(part), understanding);
    }

    /** Notes what is wrong with a part; with an empty name, with the question. */
    void object(String part, String message, String remedy) {
        objections.object(name(part), message, remedy);
    }

    /** Notes why something that no table has must not be drunk, where a name says so; returns whether it does. */
    boolean objectsToDrinking(String part, Ingredient named, Grounds grounds) {
        Optional<Finding> stop = ByName.stops(named, grounds).stream().findFirst();
        stop.ifPresent(
                why -> object(part, "\"" + named.name() + "\" must not be drunk: " + why.message(), why.remedy()));
        return stop.isPresent();
    }

    /** Refuses the question when anything was wrong with its parts. */
    void refuseIfAnyWrong() {
        objections.refuseIfAny();
    }

    Optional<Temperature> temperature() {
        return read("temperature", TEXT::temperature);
    }

    /** Reads a content of sugar, g/L at 20 °C. */
    Optional<MassConcentration> sugar() {
        Optional<Span> span = read("sugar", AskedTexts::sugarOf);
        return span.map(Span::low).map(MassConcentration::new);
    }

    private static Understanding<Span> sugarOf(String text) {
        Understanding<Span> understanding = TEXT.sugarSpan(text);
        boolean range = understanding instanceof Understanding.Understood<Span> understood
                && !understood.typed().value().isExact();
        return range
                ? new Understanding.Refused<>(text, "one figure is wanted, not a range; write for instance 180 g/L")
                : understanding;
    }

    /** Reads the temperature that strengths and volumes are on; 20 °C when it was left out or not understood. */
    VolumeBasis basis() {
        return read("reference", AskedTexts::basisOf).orElse(VolumeBasis.AT_20C);
    }

    static Understanding<VolumeBasis> basisOf(String text) {
        if (TEXT.temperature(text) instanceof Understanding.Understood<Temperature> understood) {
            for (VolumeBasis basis : VolumeBasis.values()) {
                double away = understood.typed().value().celsius()
                        - basis.temperature().celsius();
                if (Math.abs(away) < 1e-9) {
                    return new Understanding.Understood<>(new Typed<>(text, basis));
                }
            }
        }
        return new Understanding.Refused<>(text, "strengths are stated at 20C, 15C or 60F; write one of these");
    }

    /** Reads a strength; one by volume that names no temperature is on the basis of the question. */
    Optional<Strength> strength(String part, VolumeBasis basis) {
        return strength(part, text(part), basis);
    }

    Optional<Strength> strength(String part, @Nullable String text, VolumeBasis basis) {
        return read(part, text, TEXT::strength).map(strength -> onBasis(strength, String.valueOf(text), basis));
    }

    private static Strength onBasis(Strength strength, String text, VolumeBasis basis) {
        return strength instanceof AlcoholByVolume byVolume && !namesTemperature(text)
                ? new AlcoholByVolume(byVolume.percent(), basis)
                : strength;
    }

    private static boolean namesTemperature(String text) {
        return text.contains("@") || text.matches("(?i).*\\bat\\b.*");
    }

    /** Returns the one of these that was typed, or notes that none was. */
    <E extends Enum<E>> Optional<E> choice(String part, List<E> choices, Function<E, String> label) {
        String text = String.valueOf(text(part));
        for (E choice : choices) {
            if (label.apply(choice).equalsIgnoreCase(text.strip())) {
                return Optional.of(choice);
            }
        }
        object(
                part,
                "\"" + text + "\" is not known here.",
                "Write one of: " + String.join(", ", choices.stream().map(label).toList()) + ".");
        return Optional.empty();
    }
}

package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.AlcoholByVolume;
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
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.Impossible;

/**
 * A command of desk arithmetic: quantities in as options, one use case, figures out.
 *
 * <p>It reads every option before it refuses any, and tells what it took for granted.
 */
abstract class DeskCommand extends Subcommand {
    static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    private final Objections objections = new Objections();
    private final List<Finding> assumed = new ArrayList<>();

    /** Reads the options, asks the use case, and returns its figures. */
    protected abstract Told tell(Workings workings);

    @Override
    protected final Answer answer(Workings workings) {
        try {
            Told told = tell(workings);
            assumed.forEach(told::finding);
            return new ToldAnswer(told);
        } catch (Impossible impossible) {
            String where = impossible.part().isEmpty() ? "" : "--" + impossible.part();
            throw Refusal.wrongInput(where, impossible.reason(), impossible.remedy());
        }
    }

    /** Returns what an option was understood as; empty when it was not typed or not understood. */
    final <Q> Optional<Q> read(String option, @Nullable String text, Function<String, Understanding<Q>> reader) {
        if (text == null) {
            return Optional.empty();
        }
        Understanding<Q> understanding = reader.apply(text);
        if (understanding instanceof Understanding.Understood<Q> understood) {
            understood
                    .assumed()
                    .forEach(sentence -> assumed.add(
                            Finding.of("taken-for-granted", Severity.NOTE, option, "", sentence + ".", "")));
        }
        return objections.take(option, understanding);
    }

    /** Notes what is wrong with an option. */
    final void object(String option, String message, String remedy) {
        objections.raise(Finding.of("wrong-input", Severity.STOP, option, "not understood", message, remedy));
    }

    /** Refuses the command when anything was wrong with its options. */
    final void refuseIfAnyWrong() {
        objections.refuseIfAny();
    }

    final Optional<Temperature> temperature(@Nullable String text) {
        return read("--temperature", text, TEXT::temperature);
    }

    /** Reads a content of sugar, g/L at 20 °C. */
    final Optional<MassConcentration> sugar(String text) {
        Optional<Span> span = read("--sugar", text, DeskCommand::sugarOf);
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

    /** Reads the temperature that strengths and volumes are on. */
    final Optional<VolumeBasis> basis(String option, @Nullable String text) {
        return read(option, text, DeskCommand::basisOf);
    }

    private static Understanding<VolumeBasis> basisOf(String text) {
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

    /** Reads a strength; one by volume that names no temperature is on the basis of the command. */
    final Optional<Strength> strength(String option, @Nullable String text, VolumeBasis basis) {
        return read(option, text, TEXT::strength).map(strength -> onBasis(strength, String.valueOf(text), basis));
    }

    private static Strength onBasis(Strength strength, String text, VolumeBasis basis) {
        return strength instanceof AlcoholByVolume byVolume && !namesTemperature(text)
                ? new AlcoholByVolume(byVolume.percent(), basis)
                : strength;
    }

    static boolean namesTemperature(String text) {
        return text.contains("@") || text.matches("(?i).*\\bat\\b.*");
    }

    /** Returns the one of these that was typed, or notes that none was. */
    final <E extends Enum<E>> Optional<E> choice(
            String option, String text, List<E> choices, Function<E, String> label) {
        for (E choice : choices) {
            if (label.apply(choice).equalsIgnoreCase(text.strip())) {
                return Optional.of(choice);
            }
        }
        object(
                option,
                "\"" + text + "\" is not known here.",
                "Write one of: " + String.join(", ", choices.stream().map(label).toList()) + ".");
        return Optional.empty();
    }
}

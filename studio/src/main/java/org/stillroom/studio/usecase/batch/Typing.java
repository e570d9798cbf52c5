package org.stillroom.studio.usecase.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.usecase.BareNumber;

/** Reads what was typed into a form about a batch; what is wrong is gathered, each at its field. */
final class Typing {
    private final Map<String, String> typed;
    private final SheetReader reader;
    private final List<Finding> problems = new ArrayList<>();

    Typing(Map<String, String> typed, OunceMeaning ounce) {
        this.typed = typed;
        this.reader = new SheetReader(ounce);
    }

    String text(String field) {
        return typed.getOrDefault(field, "").strip();
    }

    boolean has(String field) {
        return !text(field).isEmpty();
    }

    /** Returns what was typed, without what was left empty. */
    Map<String, String> kept() {
        Map<String, String> kept = new LinkedHashMap<>();
        typed.forEach((field, text) -> {
            if (!text.isBlank()) {
                kept.put(field, text.strip());
            }
        });
        return kept;
    }

    List<Finding> problems() {
        return problems;
    }

    void object(String field, String rule, String message, String remedy) {
        problems.add(Finding.of(rule, Severity.STOP, field, "not understood", message, remedy));
    }

    /** Returns one of some words, in whatever letters it was written; another where the field is empty. */
    <E extends Enum<E>> E choice(String field, E[] words, E otherwise) {
        for (E word : words) {
            if (word.name().equalsIgnoreCase(text(field))) {
                return word;
            }
        }
        if (has(field)) {
            String known = Arrays.stream(words)
                    .map(word -> word.name().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(", "));
            object(field, "word-not-known", "“" + text(field) + "” is not known here.", "Write one of: " + known + ".");
        }
        return otherwise;
    }

    /**
     * Returns an amount by weight or by volume, or null when the field is empty or not understood.
     *
     * @param unit of a number alone where only one can be meant; empty where it is asked for
     */
    @Nullable
    Amount amount(String field, String unit) {
        if (!has(field)) {
            return null;
        }
        if (unit.isEmpty() && !BareNumber.withUnit(text(field), "ml").equals(text(field))) {
            object(
                    field,
                    "amount-without-unit",
                    "“" + text(field) + "” has no unit.",
                    "Write " + text(field) + " ml or " + text(field) + " g.");
            return null;
        }
        Amount amount = quantity(field, unit, QuantityText::amount, unit.equals("g") ? "“40 g”" : "“350 ml”");
        if (amount instanceof Drops) {
            object(field, "amount-in-drops", "“" + text(field) + "” counts drops.", "Give a weight or a volume.");
            return null;
        }
        return amount;
    }

    /** Returns an amount that has to be there. */
    @Nullable
    Amount required(String field, String unit) {
        if (!has(field)) {
            object(field, "amount-missing", "How much is not said.", "Write an amount, such as 350 ml or 320 g.");
        }
        return amount(field, unit);
    }

    /** Returns a quantity, or null when the field is empty or not understood. */
    <Q> @Nullable Q quantity(
            String field, String unit, BiFunction<QuantityText, String, Understanding<Q>> how, String example) {
        return has(field) ? parsed(field, BareNumber.withUnit(text(field), unit), how, example) : null;
    }

    /** Returns a quantity that is part of a field, or null when it is not understood. */
    <Q> @Nullable Q parsed(
            String field, String text, BiFunction<QuantityText, String, Understanding<Q>> how, String example) {
        SheetReading<Typed<Q>> reading = reader.quantity(field, text.strip(), how, example);
        if (reading instanceof SheetReading.Understood<Typed<Q>> understood) {
            return understood.value().value();
        }
        ((SheetReading.Refused<Typed<Q>>) reading)
                .problems().stream()
                        .map(SheetProblem::finding)
                        .map(finding -> at(field, finding))
                        .forEach(problems::add);
        return null;
    }

    private static Finding at(String field, Finding finding) {
        return Finding.of(
                finding.rule(), finding.severity(), field, finding.verdict(), finding.message(), finding.remedy());
    }

    /**
     * Returns when it happened: now, or on an earlier day at noon, not before the batch if that was the day on which it was made.
     *
     * @param made when the batch was made
     */
    Instant moment(Instant now, Instant made, ZoneId zone) {
        String text = text("day");
        LocalDate today = now.atZone(zone).toLocalDate();
        try {
            LocalDate day = text.isEmpty() ? today : LocalDate.parse(text);
            if (day.isAfter(today)) {
                object(
                        "day",
                        "in-the-future",
                        "That day is still to come.",
                        "Enter what happened, when it has happened.");
            }
            if (!day.isBefore(today)) {
                return now;
            }
            Instant noon = day.atTime(12, 0).atZone(zone).toInstant();
            boolean ofMaking = day.equals(made.atZone(zone).toLocalDate());
            return ofMaking && noon.isBefore(made) ? made : noon;
        } catch (DateTimeParseException noDay) {
            object("day", "day-not-understood", "“" + text + "” is no day.", "Write it as year-month-day: 2026-03-14.");
            return now;
        }
    }
}

package org.stillroom.studio.web.tables;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.wording.Words;

/**
 * A question as its page shows it.
 *
 * @param told the answer, or null as long as nothing was asked or something is wrong
 * @param steps by which the answer came about
 * @param problems what is wrong with what was typed
 */
public record Asked(List<AskedField> fields, @Nullable Told told, List<Workings.Step> steps, List<Finding> problems) {
    public Asked {
        fields = List.copyOf(fields);
        steps = List.copyOf(steps);
        problems = List.copyOf(problems);
    }

    /**
     * Fields under one heading.
     *
     * @param heading empty for those that are always shown
     */
    public record Group(String heading, List<AskedField> fields) {
        public Group {
            fields = List.copyOf(fields);
        }

        /** Returns whether something else than what is usual stands in one of them. */
        public boolean isTyped() {
            return fields.stream()
                    .anyMatch(field -> !field.typed().isEmpty()
                            && !field.typed().equals(field.part().usual()));
        }
    }

    /** Returns the fields under their headings, those that are always shown first. */
    public List<Group> groups() {
        Map<String, List<AskedField>> groups = new LinkedHashMap<>();
        groups.put("", new ArrayList<>());
        fields.forEach(field -> groups.computeIfAbsent(field.part().group(), heading -> new ArrayList<>())
                .add(field));
        return groups.entrySet().stream()
                .map(group -> new Group(group.getKey(), group.getValue()))
                .toList();
    }

    /** Returns the part of an address that asks with one text typed. */
    public String query(String part, String text) {
        return part + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** Returns the value of a figure as the reader writes it. */
    public String value(Told.Row row, Words words) {
        Estimate estimate = row.estimate();
        return estimate == null
                ? "–"
                : words.number(estimate.value(), row.name().decimalsOf(estimate.value()));
    }

    /** Returns the half-width of the central 90 %, or its ends where they are not alike to both sides. */
    public String doubt(Told.Row row, Words words) {
        Estimate estimate = row.estimate();
        Told.Ends uneven = row.uneven();
        if (estimate == null || uneven == null) {
            return halfWidth(row, words);
        }
        int decimals = row.name().decimalsOf(estimate.value());
        String low = words.number(uneven.low(), decimals);
        return uneven.isOpen()
                ? words.say("tables.orMore", low)
                : words.say("tables.from", low, words.number(uneven.high(), decimals));
    }

    /** Returns the half-width of the central 90 %, in one decimal more where it would vanish; empty where there is none. */
    private static String halfWidth(Told.Row row, Words words) {
        Estimate estimate = row.estimate();
        if (estimate == null || estimate.doubt() == 0.0 || !estimate.tellsDoubt()) {
            return "";
        }
        int decimals = row.name().decimalsOf(estimate.value());
        boolean vanishes = estimate.doubt() < 0.5 * Math.pow(10, -decimals);
        return "± " + words.number(estimate.doubt(), vanishes ? decimals + 1 : decimals);
    }
}

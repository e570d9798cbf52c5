package org.stillroom.core.ingredient;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

/**
 * Which oils something carries, and which single constituents: of an essence from its recipe, of a distillate from its analysis.
 *
 * @param parts one or more, each with its share of the whole; all by mass or all per litre
 */
public record Aroma(List<Part> parts) {
    private static final String EXAMPLE = "juniper 180 mg/L, limonene 12 mg/L";
    private static final int MOST = 60;

    /** A comma within a number has no blank after it. */
    private static final Pattern BETWEEN = Pattern.compile("\\s*;\\s*|,\\s+");

    /** Where a name can end and its content begin. */
    private static final Pattern CONTENT = Pattern.compile("\\s*[:=]?\\s+(?=\\d)");

    public Aroma {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("at least one oil or constituent is carried");
        }
        boolean byMass = isByMass(parts.get(0).share());
        if (parts.stream().anyMatch(part -> isByMass(part.share()) != byMass)) {
            throw new IllegalArgumentException("all parts of an aroma are by mass, or all per litre");
        }
    }

    /**
     * An oil or a constituent.
     *
     * @param name of an oil or a plant as in the table of materials, or name or CAS number of a constituent
     */
    public record Part(String name, Share share) {
        double amount() {
            return amountOf(share);
        }
    }

    /** Returns whether its shares are by mass of the whole; else they are per litre. */
    public boolean isByMass() {
        return isByMass(parts.get(0).share());
    }

    static boolean isByMass(Share share) {
        return share instanceof MassFraction;
    }

    static double amountOf(Share share) {
        return share instanceof MassFraction byMass ? byMass.fraction() : ((MassConcentration) share).gramsPerLitre();
    }

    /** Reads a text such as "juniper 180 mg/L, limonene 12 mg/L". */
    public static Understanding<Aroma> read(String text, QuantityText quantities) {
        List<Part> parts = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (String each : BETWEEN.split(text.strip(), -1)) {
            if (each.isBlank()) {
                continue;
            }
            Part part = part(each.strip(), quantities);
            if (part == null) {
                return refused(text, "“" + each.strip() + "” names no oil with its content");
            }
            if (!names.add(part.name())) {
                return refused(text, part.name() + " is named twice");
            }
            parts.add(part);
        }
        if (parts.isEmpty()) {
            return refused(text, "nothing is named");
        }
        if (parts.size() > MOST) {
            return refused(text, "more than " + MOST + " oils and constituents are not taken");
        }
        if (parts.stream().map(part -> isByMass(part.share())).distinct().count() > 1) {
            return refused(text, "some are by mass and some per litre; give all in one way");
        }
        return new Understanding.Understood<>(new Typed<>(text, new Aroma(parts)));
    }

    /** Names may hold numbers, so that the content is the first end of the text that is one. */
    private static @Nullable Part part(String text, QuantityText quantities) {
        Matcher gap = CONTENT.matcher(text);
        while (gap.find()) {
            Understanding<Share> share = quantities.share(text.substring(gap.end()));
            if (gap.start() > 0 && share instanceof Understanding.Understood<Share> understood) {
                return new Part(
                        text.substring(0, gap.start()), understood.typed().value());
            }
        }
        return null;
    }

    private static Understanding<Aroma> refused(String text, String reason) {
        return new Understanding.Refused<>(text, reason + ", such as " + EXAMPLE);
    }

    /** Returns everything that is named together, on the basis of its shares: g/g or g/L. */
    double together() {
        return parts.stream().mapToDouble(Part::amount).sum();
    }
}

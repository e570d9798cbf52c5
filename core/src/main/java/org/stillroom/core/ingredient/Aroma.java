package org.stillroom.core.ingredient;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    private static final Pattern PART = Pattern.compile("(.*?\\S)\\s*[:=]?\\s+(\\d[\\d.,]*\\s*\\S.*)");

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
            Matcher part = PART.matcher(each.strip());
            if (!part.matches()) {
                return refused(text, "“" + each + "” names no oil with its amount");
            }
            String name = part.group(1);
            if (!(quantities.share(part.group(2)) instanceof Understanding.Understood<Share> understood)) {
                return refused(text, "“" + part.group(2) + "” is no content of " + name);
            }
            if (!names.add(name)) {
                return refused(text, name + " is named twice");
            }
            parts.add(new Part(name, understood.typed().value()));
        }
        if (parts.size() > MOST) {
            return refused(text, "more than " + MOST + " oils and constituents are not taken");
        }
        if (parts.stream().map(part -> isByMass(part.share())).distinct().count() > 1) {
            return refused(text, "some are by mass and some per litre; give all in one way");
        }
        return new Understanding.Understood<>(new Typed<>(text, new Aroma(parts)));
    }

    private static Understanding<Aroma> refused(String text, String reason) {
        return new Understanding.Refused<>(text, reason + ", such as " + EXAMPLE);
    }

    /** Returns everything that is named together, on the basis of its shares: g/g or g/L. */
    double together() {
        return parts.stream().mapToDouble(Part::amount).sum();
    }
}

package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.Aroma;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

/**
 * What a laboratory found of watched substances in the whole of something: in the drink, in a distillate, in fruit.
 *
 * <p>It speaks for what it lists and for nothing else. A substance that is a sum, as thujone is of alpha and beta, is told by its own
 * name or by all that counts into it; one of these alone tells nothing of the sum.
 *
 * @param parts what was found, each once
 */
public record Assay(List<Part> parts) {
    /** Nothing was looked for. */
    public static final Assay NONE = new Assay(List.of());

    private static final String EXAMPLE = "; write for instance thujone 8 mg/kg; hydrogen cyanide < 0.5 mg/L";

    /** A comma within a number has no blank after it. */
    private static final Pattern BETWEEN = Pattern.compile("\\s*[;\\n]\\s*|,\\s+");

    private static final Pattern PART = Pattern.compile("(.*?\\S)\\s*[:=]?\\s+([<≤]?\\s*\\d.*)");
    private static final Pattern BOUND = Pattern.compile("[<≤]\\s*");

    public Assay {
        parts = List.copyOf(parts);
    }

    /**
     * One substance.
     *
     * @param name of a watched substance, or of a constituent that counts into one
     * @param share of the whole; where it is bounded, the bound
     * @param bounded whether there is anything from none to that, as in &lt; 0.5 mg/kg
     */
    public record Part(String name, Share share, boolean bounded) {
        private Range fractions(double gramsPerMillilitre) {
            double most = share instanceof MassConcentration perLitre
                    ? perLitre.gramsPerLitre() / 1000.0 / gramsPerMillilitre
                    : ((MassFraction) share).fraction();
            return new Range(bounded ? 0.0 : most, most);
        }

        /** Returns how much was found, in its {@link #unit}, in about three figures. */
        public String told() {
            return Range.figures(
                    share instanceof MassConcentration perLitre
                            ? 1e3 * perLitre.gramsPerLitre()
                            : 1e6 * ((MassFraction) share).fraction());
        }

        public String unit() {
            return isPerLitre() ? "mg/L" : "mg/kg";
        }

        /** Returns whether it is told per litre, so that nothing can be reckoned with it where no density is known. */
        public boolean isPerLitre() {
            return share instanceof MassConcentration;
        }

        /** Returns whether it counts into a watched substance that a plant holds, as plants list what they hold. */
        boolean isOf(String held) {
            return watchedBy(name).stream().anyMatch(watched -> watched.covers(held));
        }

        private boolean is(String member) {
            String key = Materials.keyOf(member);
            return key == null ? Words.plain(member).equals(Words.plain(name)) : key.equals(Materials.keyOf(name));
        }
    }

    /** Reads a text such as "thujone 8 mg/kg; hydrogen cyanide &lt; 0.5 mg/L". */
    public static Understanding<Assay> read(String text, QuantityText quantities) {
        List<Part> parts = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (String each : BETWEEN.split(text.strip(), -1)) {
            Matcher part = PART.matcher(each.strip());
            if (each.isBlank()) {
                continue;
            }
            if (!part.matches()) {
                return refused(text, each.strip() + " is said without how much was found of it" + EXAMPLE);
            }
            Understanding<Part> read = part(part.group(1), part.group(2), quantities);
            if (read instanceof Understanding.Understood<Part> understood) {
                parts.add(understood.typed().value());
            } else if (read instanceof Understanding.Refused<Part> refused) {
                return refused(text, refused.reason());
            }
            if (!names.add(Words.plain(part.group(1)))) {
                return refused(text, part.group(1) + " is named twice");
            }
        }
        if (parts.isEmpty()) {
            return refused(text, "nothing is named" + EXAMPLE);
        }
        Assay assay = new Assay(parts);
        @Nullable Part alone = assay.alone();
        return alone == null
                ? new Understanding.Understood<>(new Typed<>(text, assay))
                : refused(
                        text,
                        alone.name() + " is watched as a part of " + sumOf(alone)
                                + " alone; write that, or all that counts into it");
    }

    /** Reads one substance and how much was found of it, such as "&lt; 0.5 mg/kg". */
    public static Understanding<Part> part(String name, String found, QuantityText quantities) {
        if (!isWatched(name)) {
            return new Understanding.Refused<>(name, name + " is none of the substances that are watched");
        }
        Matcher bound = BOUND.matcher(found);
        boolean bounded = bound.lookingAt();
        Understanding<Share> share = quantities.share(bounded ? found.substring(bound.end()) : found);
        return share instanceof Understanding.Understood<Share> understood
                ? new Understanding.Understood<>(
                        new Typed<>(found, new Part(name, understood.typed().value(), bounded)))
                : new Understanding.Refused<>(
                        found, "“" + found + "” does not say how much " + name + " there is; write mg/kg or mg/L");
    }

    private static Understanding<Assay> refused(String text, String reason) {
        return new Understanding.Refused<>(text, reason);
    }

    /** Returns what a recipe states of an ingredient, as far as it is watched. */
    static Assay stated(List<Aroma.Part> aroma) {
        return new Assay(aroma.stream()
                .filter(part -> !watchedBy(part.name()).isEmpty())
                .map(part -> new Part(part.name(), part.share(), false))
                .toList());
    }

    /** Returns this with what a later one found; of what both tell the later counts. */
    public Assay and(Assay later) {
        List<Part> both = new ArrayList<>(parts);
        both.removeIf(part -> later.parts.stream().anyMatch(other -> other.is(part.name()))
                || watchedBy(part.name()).stream().allMatch(later::tells));
        both.addAll(later.parts);
        return new Assay(both);
    }

    /** Returns it as it can be read again, such as "thujone 8 mg/kg; hydrogen cyanide &lt; 0.5 mg/L". */
    public String told() {
        return parts.stream()
                .map(part -> part.name() + (part.bounded() ? " < " : " ") + part.told() + " " + part.unit())
                .collect(Collectors.joining("; "));
    }

    /** Returns a part that tells nothing, because it counts into a sum of which others are not told; null where there is none. */
    public @Nullable Part alone() {
        return parts.stream()
                .filter(part -> watchedBy(part.name()).stream().noneMatch(watched -> tells(watched)))
                .findFirst()
                .orElse(null);
    }

    /** Returns the name of what a part counts into. */
    public static String sumOf(Part part) {
        return watchedBy(part.name()).get(0).name();
    }

    /** Returns whether a name is one of a watched substance or of what counts into one. */
    public static boolean isWatched(String name) {
        return !watchedBy(name).isEmpty();
    }

    private static List<Watched> watchedBy(String name) {
        Part part = new Part(name, new MassFraction(0.0), false);
        return Knowledge.SHIPPED.watched().stream()
                .filter(watched ->
                        isWhole(part, watched) || watched.members().stream().anyMatch(part::is))
                .toList();
    }

    /**
     * Returns whether a part is the watched substance itself, by its name or another of its names. One that ends in a shorter one is
     * of kin: isosafrole is not safrole, alpha-thujone not all thujone.
     */
    private static boolean isWhole(Part part, Watched watched) {
        String name = Words.plain(part.name());
        boolean kin = watched.names().stream()
                .anyMatch(other -> other.length() < name.length() && name.endsWith(other.strip()));
        boolean member =
                watched.members().size() > 1 && watched.members().stream().anyMatch(part::is);
        return name.equals(Words.plain(watched.name())) || (watched.names().contains(name) && !member && !kin);
    }

    /** Returns whether it says how much there is of a watched substance. */
    boolean tells(Watched watched) {
        return fractions(watched, OptionalDouble.of(1.0)) != null;
    }

    /**
     * Returns how much of the whole a watched substance is by it, 0 to 1 by mass; null where it does not say.
     *
     * @param gramsPerMillilitre of the whole; empty where it is not known, so that what is told per litre says nothing
     */
    @Nullable
    Range fractions(Watched watched, OptionalDouble gramsPerMillilitre) {
        List<Part> told = parts.stream().filter(part -> isWhole(part, watched)).toList();
        if (told.isEmpty()) {
            List<Part> members = new ArrayList<>();
            for (String member : watched.members()) {
                @Nullable
                Part found = parts.stream()
                        .filter(part -> part.is(member))
                        .findFirst()
                        .orElse(null);
                if (found != null) {
                    members.add(found);
                } else if (!member.endsWith("(sum)")) {
                    return null;
                }
            }
            told = members;
        }
        boolean notReckoned = told.stream().anyMatch(Part::isPerLitre) && gramsPerMillilitre.isEmpty();
        return notReckoned || told.isEmpty()
                ? null
                : told.stream()
                        .map(part -> part.fractions(gramsPerMillilitre.orElse(Double.NaN)))
                        .reduce(Range.NOTHING, Range::plus);
    }

    /** Returns the greater of what several bottles hold, and the least, of what the analyses of all of them tell; null where one does not. */
    static @Nullable Range together(List<Assay> bottles, Watched watched, OptionalDouble gramsPerMillilitre) {
        List<@Nullable Range> each = new ArrayList<>();
        bottles.forEach(bottle -> each.add(bottle.fractions(watched, gramsPerMillilitre)));
        return each.isEmpty() || each.contains(null)
                ? null
                : each.stream()
                        .map(Objects::requireNonNull)
                        .reduce(FarAnalysis::hull)
                        .orElseThrow();
    }
}

package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What US food law forbids or limits. */
final class UsLaw {
    private static final String ACETIC_ACID = "acetic acid";

    /** What the law is asked about by name; what it says stands in the table. */
    private static final Set<String> PROHIBITED =
            Set.of("calamus", "cinnamyl anthranilate", "tonka", "coumarin", "sassafras", "safrole");

    private UsLaw() {}

    static List<Finding> prohibited(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.US)) {
            for (Portion portion : drink.portions()) {
                drink.knowledge().prohibited().stream()
                        .filter(row -> row.isAbout(portion))
                        .forEach(row -> findings.add(stop(portion, row)));
                notKnown(portion, drink.knowledge()).forEach(findings::add);
            }
        }
        return findings;
    }

    /** Where a row is missing, what the law says is not known, and not nothing. */
    private static Stream<Finding> notKnown(Portion portion, Knowledge knowledge) {
        Stream<String> plants = portion.plants().stream().map(Plant::name);
        Stream<String> substance = Stream.ofNullable(portion.substance()).map(Watched::name);
        return Stream.concat(plants, substance)
                .filter(PROHIBITED::contains)
                .filter(name -> knowledge.prohibited().stream()
                        .noneMatch(row -> row.names().contains(name)))
                .map(name -> finding(
                        portion,
                        Severity.CAUTION,
                        "not known",
                        "What US law says of " + name + " is not known here.",
                        "Ask an authority before using it.",
                        null,
                        Source.CFR_21_LIMITS));
    }

    private static Finding stop(Portion portion, Knowledge.Prohibited row) {
        return finding(
                portion,
                Severity.STOP,
                "prohibited",
                "US law forbids adding " + row.what() + " (" + row.clause() + ") to any food.",
                "Leave it out.",
                "none added",
                row.status().mayClear() ? Source.CFR_21_LIMITS : Source.CFR_21_189_180);
    }

    private static Finding finding(
            Portion portion,
            Severity severity,
            String verdict,
            String message,
            String remedy,
            @Nullable String limit,
            Source source) {
        return new Finding(
                "us-prohibited",
                severity,
                portion.where(),
                Place.US.label(),
                verdict,
                message,
                "",
                remedy,
                limit,
                source);
    }

    static List<Finding> limits(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.US)) {
            for (Knowledge.UsLimit row : drink.knowledge().usLimits()) {
                @Nullable
                Amount amount = row.watched().equals(ACETIC_ACID) ? addedAcetic(drink, row) : counted(drink, row);
                if (amount != null && row.isFor(drink) && !Kernels.isToldOnce(drink, amount)) {
                    findings.add(limit(row).judge(amount));
                }
            }
        }
        return findings;
    }

    /** Of bark all its alkaloids count, and only quinine is known of them. */
    private static @Nullable Amount counted(Drink drink, Knowledge.UsLimit row) {
        @Nullable Amount amount = drink.amount(row.watched());
        if (amount == null || !row.watched().equals("quinine")) {
            return amount;
        }
        return amount.andNotKnownFrom(drink.portions().stream()
                .filter(portion -> portion.is("cinchona"))
                .map(Portion::where)
                .toList());
    }

    /** Returns the strictest limit of a substance in any drink with alcohol, or null where there is none. */
    static OilLimits.@Nullable Maximum maximum(Knowledge knowledge, String watched) {
        return knowledge.usLimits().stream()
                .filter(row -> row.watched().equals(watched) && !row.drinks().equals("without alcohol"))
                .map(row -> new OilLimits.Maximum(row.milligramsPerKilogram(), Place.US.label(), Source.CFR_21_LIMITS))
                .reduce(OilLimits::stricter)
                .orElse(null);
    }

    private static Limit limit(Knowledge.UsLimit row) {
        return new Limit(
                "us-limit",
                Place.US.label(),
                row.says(),
                row.milligramsPerKilogram(),
                Limit.Basis.PER_KILOGRAM,
                row.edge().equals("below") ? Limit.Edge.BELOW : Limit.Edge.UP_TO,
                Source.CFR_21_LIMITS);
    }

    /** Vinegar is a food of its own; the acid by itself is limited, and told where there is more of it. */
    private static @Nullable Amount addedAcetic(Drink drink, Knowledge.UsLimit row) {
        List<PlannedLine> lines = drink.lines().stream()
                .filter(line -> line.ingredient().kind() == Kind.ACID
                        && line.ingredient().perGram().grams(Substance.ACETIC) > 0.0)
                .toList();
        double grams = lines.stream()
                .mapToDouble(line -> line.grams() * line.ingredient().perGram().grams(Substance.ACETIC))
                .sum();
        return grams > row.milligramsPerKilogram() * drink.kilograms() / 1000.0
                ? Amount.weighed(
                        ACETIC_ACID,
                        grams,
                        lines.stream().map(PlannedLine::name).toList(),
                        drink)
                : null;
    }
}

package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * The most that laws allow of what is weighed in by itself: sweeteners, gums, acids.
 *
 * <p>What is dissolved in something else nobody can weigh here, so that how much of it goes in is not known.
 */
final class AddedLimits {
    /** Kinds that are weighed in as they are. */
    private static final Set<Kind> WEIGHED = Set.of(Kind.SALT, Kind.ACID, Kind.SUGAR, Kind.OTHER);

    /** Words by which even such a kind is a solution. */
    private static final List<String> DISSOLVED =
            List.of(" solution", " syrup", " liquid", " drops", " lösung", " sirup", " flüssig", " tropfen");

    private AddedLimits() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (Knowledge.AddedLimit row : drink.knowledge().addedLimits()) {
            @Nullable Amount amount = serving.places().contains(row.place()) ? added(drink, row) : null;
            if (amount != null) {
                findings.add(judge(row, amount));
            }
        }
        return findings;
    }

    private static @Nullable Amount added(Drink drink, Knowledge.AddedLimit row) {
        Set<String> from = new LinkedHashSet<>();
        Set<String> notKnownFrom = new LinkedHashSet<>();
        double grams = 0.0;
        for (PlannedLine line : drink.lines()) {
            boolean named = Words.named(line.words(), drink.knowledge().addedLimits(), Knowledge.AddedLimit::names)
                    .contains(row);
            if (named && WEIGHED.contains(line.ingredient().kind()) && !Words.any(line.words(), DISSOLVED)) {
                grams += line.grams();
                from.add(line.name());
            } else if (named) {
                notKnownFrom.add(line.name());
            }
        }
        return from.isEmpty() && notKnownFrom.isEmpty()
                ? null
                : Amount.weighed(
                        row.substance(), new Range(grams, grams), List.copyOf(from), List.copyOf(notKnownFrom), drink);
    }

    /** Above what is allowed of a flavouring it may be a lawful sweetener, so that it asks and does not stop. */
    private static Finding judge(Knowledge.AddedLimit row, Amount amount) {
        Finding finding = new Limit(
                        "added-limit",
                        row.place().label(),
                        row.says(),
                        row.milligramsPerKilogram(),
                        Limit.Basis.PER_KILOGRAM,
                        Limit.Edge.UP_TO,
                        row.place() == Place.EU ? Source.EU_872_2012 : Source.CFR_21_LIMITS)
                .judge(amount);
        return row.sweetens() && finding.severity() == Severity.STOP
                ? new Finding(
                        finding.rule(),
                        Severity.CAUTION,
                        finding.where(),
                        finding.jurisdiction(),
                        "above the limit of a flavouring",
                        finding.message(),
                        finding.howSure(),
                        "Take less, or ask an authority whether it may sweeten this drink: of sweeteners no table here tells.",
                        finding.limit(),
                        finding.source())
                : finding;
    }
}

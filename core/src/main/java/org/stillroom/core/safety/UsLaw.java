package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What US food law forbids or limits. */
final class UsLaw {
    /** Thujone free means below so much, mg/kg. Source: 21 CFR 172.510 footnote 1; TTB Industry Circular 2007-5. */
    static final double THUJONE = 10.0;
    /** Quinine and cinchona alkaloids, mg/kg. Source: 21 CFR 172.575, 172.510. */
    private static final double QUININE = 83.0;
    /** Glycyrrhizin in alcoholic and other drinks as served, mg/kg. Source: 21 CFR 184.1408. */
    private static final double GLYCYRRHIZIN = 1000.0;

    private static final double GLYCYRRHIZIN_WITHOUT_ALCOHOL = 1500.0;
    /** Prussic acid of cherry pits and cherry laurel, mg/kg. Source: 21 CFR 172.510(b). */
    private static final double PRUSSIC_ACID = 25.0;

    /** Acetic acid as an ingredient in drinks, mg/kg. Source: 21 CFR 184.1005, all other food categories. */
    private static final double ACETIC_ACID = 1500.0;

    private UsLaw() {}

    static List<Finding> prohibited(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.US)) {
            for (Portion portion : drink.portions()) {
                @Nullable
                String substance =
                        portion.substance() == null ? null : portion.substance().name();
                if (portion.is("calamus")) {
                    findings.add(stop(portion, "calamus, its oil and extract (21 CFR 189.110)", Source.CFR_21_LIMITS));
                }
                if (portion.is("tonka") || "coumarin".equals(substance)) {
                    findings.add(stop(portion, "coumarin and tonka beans (21 CFR 189.130)", Source.CFR_21_LIMITS));
                }
                boolean leaves = Words.any(portion.words(), List.of(" leaf", " leaves"));
                if ((portion.is("sassafras") && !leaves) || "safrole".equals(substance)) {
                    findings.add(stop(portion, "safrole and oil of sassafras (21 CFR 189.180)", Source.CFR_21_189_180));
                }
            }
        }
        return findings;
    }

    private static Finding stop(Portion portion, String what, Source source) {
        return new Finding(
                "us-prohibited",
                Severity.STOP,
                portion.where(),
                Place.US.label(),
                "prohibited",
                "US law forbids adding " + what + " to any food.",
                "",
                "Leave it out.",
                "none added",
                source);
    }

    static List<Finding> limits(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.US)) {
            add(findings, drink, "thujone", THUJONE, "finished drink thujone free");
            add(findings, drink, "quinine", QUININE, "cinchona alkaloids in the finished drink");
            double glycyrrhizin = drink.isAlcoholic() ? GLYCYRRHIZIN : GLYCYRRHIZIN_WITHOUT_ALCOHOL;
            add(findings, drink, "glycyrrhizic acid", glycyrrhizin, "glycyrrhizin as served");
            add(findings, drink, "hydrogen cyanide", PRUSSIC_ACID, "prussic acid");
            addAcetic(findings, drink);
        }
        return findings;
    }

    /** Vinegar is a food of its own; the acid by itself is limited. */
    private static void addAcetic(List<Finding> findings, Drink drink) {
        List<PlannedLine> lines = drink.lines().stream()
                .filter(line -> line.ingredient().kind() == Kind.ACID
                        && line.ingredient().perGram().grams(Substance.ACETIC) > 0.0)
                .toList();
        double grams = lines.stream()
                .mapToDouble(line -> line.grams() * line.ingredient().perGram().grams(Substance.ACETIC))
                .sum();
        if (grams > ACETIC_ACID * drink.kilograms() / 1000.0) {
            findings.add(new Limit(
                            "us-limit",
                            Place.US.label(),
                            "acetic acid in drinks",
                            ACETIC_ACID,
                            Limit.Basis.PER_KILOGRAM,
                            Limit.Edge.UP_TO,
                            Source.CFR_21_LIMITS)
                    .judge(Amount.weighed(
                            "acetic acid",
                            grams,
                            lines.stream().map(PlannedLine::name).toList(),
                            drink)));
        }
    }

    private static void add(List<Finding> findings, Drink drink, String name, double value, String category) {
        @Nullable Amount amount = drink.amount(name);
        if (amount != null) {
            Limit.Edge edge = name.equals("thujone") ? Limit.Edge.BELOW : Limit.Edge.UP_TO;
            findings.add(new Limit(
                            "us-limit",
                            Place.US.label(),
                            category,
                            value,
                            Limit.Basis.PER_KILOGRAM,
                            edge,
                            Source.CFR_21_LIMITS)
                    .judge(amount));
        }
    }
}

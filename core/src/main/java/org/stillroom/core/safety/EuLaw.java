package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.OilPart;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** The rest of the EU's law on flavourings and statements that a liqueur meets. */
final class EuLaw {
    /** From so much of what it carries on, an extract is one substance with traces of others. Own judgement. */
    private static final double NEARLY_ALL = 0.9;

    /** A spirit drink has at least so much, % vol. Source: Regulation (EU) 2019/787, article 2(c). */
    private static final double SPIRIT_DRINK = 15.0;
    /** Quinine as base, mg/kg. Source: Regulation (EU) 872/2012, FL-no 14.011, 14.152, 14.155. */
    private static final double QUININE_IN_SPIRIT_DRINKS = 250.0;

    private static final double QUININE_IN_OTHER_DRINKS = 100.0;
    /** d-Camphor added as such, mg/L. Source: the same, FL-no 07.215. */
    private static final double CAMPHOR = 50.0;
    /** Glycyrrhizic acid added as such, alcoholic and other drinks, mg/kg. Source: the same, FL-no 16.012. */
    private static final double GLYCYRRHIZIC_ACID = 550.0;

    private static final double GLYCYRRHIZIC_ACID_WITHOUT_ALCOHOL = 50.0;

    private static final Map<String, String> PLANTS_OF_ANNEX_IV = Map.of(
            "calamus", "calamus, tetraploid",
            "quassia", "quassia",
            "white agaric", "white agaric mushroom",
            "St John's wort", "St John's wort",
            "germander", "wall germander");

    private EuLaw() {}

    static List<Finding> notAsSuch(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (!serving.places().contains(Place.EU)) {
            return findings;
        }
        for (Portion portion : drink.portions()) {
            Watched substance = portion.substance();
            if (substance != null && substance.asSuch()) {
                findings.add(asSuch(
                        Severity.STOP,
                        portion.where(),
                        "must not be added",
                        "EU law forbids adding " + substance.name() + " as such to any food.",
                        "Leave it out; it may only come with a plant that holds it, within the maximum."));
            }
        }
        List<Watched> none =
                drink.knowledge().watched().stream().filter(Watched::asSuch).toList();
        for (PlannedLine line : drink.lines()) {
            if (line.ingredient().ingredient().from() == null
                    && findings.stream().noneMatch(found -> found.where().contains(line.name()))) {
                none.forEach(watched -> withoutItsPlant(line, watched, drink, findings));
            }
        }
        return findings;
    }

    /** What comes with a natural extract is not added as such; where no plant is named that brings it, nothing says that it does. */
    private static void withoutItsPlant(PlannedLine line, Watched watched, Drink drink, List<Finding> findings) {
        List<OilPart> parts = line.ingredient().oilParts();
        double part = parts.stream()
                .filter(each -> watched.counts(each.constituent()))
                .mapToDouble(OilPart::part)
                .sum();
        boolean comesAlong = Stream.concat(
                        Stream.of(line.words()), parts.stream().map(OilPart::name))
                .flatMap(name -> NamedPlants.of(name, drink.knowledge().plants()).plants().stream())
                .anyMatch(plant -> plant.holds().stream().anyMatch(watched::covers));
        String name = watched.name();
        if (part >= NEARLY_ALL && !comesAlong) {
            findings.add(asSuch(
                    Severity.STOP,
                    line.name(),
                    "must not be added",
                    "What it carries is nearly all " + name
                            + ", and no plant is named that is known to bring it, so that it is" + " taken for " + name
                            + " as such, which EU law forbids adding to any food.",
                    "Leave it out; of a natural extract, name the plant that it was made of (plant: …)."));
        } else if (part > 0.0 && !comesAlong) {
            findings.add(asSuch(
                    Severity.CAUTION,
                    line.name(),
                    "not known if as such",
                    "It carries " + name
                            + ", and no plant is named that is known to bring it: whether it was added as such,"
                            + " which EU law forbids in any food, is not known.",
                    "Name the plant that it was made of (plant: …), and leave it out where " + name + " was added."));
        }
    }

    private static Finding asSuch(Severity severity, String where, String verdict, String message, String remedy) {
        return new Finding(
                "eu-not-as-such",
                severity,
                where,
                Place.EU.label(),
                verdict,
                message,
                "",
                remedy,
                "none as such",
                Source.EU_1334_2008);
    }

    static List<Finding> restrictedPlants(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.EU)) {
            for (Portion portion : drink.portions()) {
                for (Plant plant : portion.plants()) {
                    String listed = PLANTS_OF_ANNEX_IV.get(plant.name());
                    if (listed != null) {
                        findings.add(restricted(drink, portion, plant, listed));
                    }
                }
            }
        }
        return findings;
    }

    private static Finding restricted(Drink drink, Portion portion, Plant plant, String listed) {
        Knowledge.@Nullable Restricted row = drink.knowledge().restricted().stream()
                .filter(each -> each.commonName().equals(listed))
                .findFirst()
                .orElse(null);
        if (row == null) {
            return annexIv(
                    portion,
                    Severity.CAUTION,
                    "not known",
                    "What EU law says of " + plant.name() + " is not known here.",
                    "Ask an authority before using it.",
                    null);
        }
        String says = plant.name() + " (" + row.latinName() + "): " + row.condition() + ".";
        if (row.part().equals("A")) {
            return bannedForm(portion, says, row.condition());
        }
        boolean onlyAlcoholic = row.condition().contains("only for alcoholic");
        if (onlyAlcoholic && !drink.isAlcoholic()) {
            return annexIv(
                    portion, Severity.STOP, "not in this drink", "EU law on " + says, "Leave it out.", row.condition());
        }
        return annexIv(portion, Severity.NOTE, "restricted", "EU law on " + says, "", row.condition());
    }

    /** The tetraploid form is banned; a form that is not said is taken for it, and no name clears another. */
    private static Finding bannedForm(Portion portion, String says, String condition) {
        TextWords words = TextWords.of(portion.words());
        String law = "EU law on " + says;
        if (names(words, "tetraploid*")) {
            return annexIv(
                    portion,
                    Severity.STOP,
                    "banned",
                    law + " By its name it is this form.",
                    "Leave it out.",
                    condition);
        }
        if (names(words, "diploid*;triploid*;acorus americanus")) {
            return annexIv(
                    portion,
                    Severity.CAUTION,
                    "form by its name",
                    law + " By its name it is another form; a name alone clears nothing.",
                    "Have the supplier state the form in writing; the maximum of beta-asarone holds all the same.",
                    condition);
        }
        return annexIv(
                portion,
                Severity.STOP,
                "kind not known",
                law + " Which form this is, is not said, so that it is taken for the banned one.",
                "Leave it out, or have the supplier state the diploid form in writing.",
                condition);
    }

    private static boolean names(TextWords words, String phrases) {
        return TextCaution.phrases(phrases).stream()
                .anyMatch(phrase -> !words.places(phrase).isEmpty());
    }

    private static Finding annexIv(
            Portion portion, Severity severity, String verdict, String message, String remedy, @Nullable String limit) {
        return new Finding(
                "eu-restricted-plant",
                severity,
                portion.where(),
                Place.EU.label(),
                verdict,
                message,
                "",
                remedy,
                limit,
                Source.EU_1334_2008);
    }

    static List<Finding> useLimits(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.EU)) {
            boolean spirit = drink.strength() >= SPIRIT_DRINK;
            add(
                    findings,
                    drink.amount("quinine"),
                    limit(
                            spirit
                                    ? "spirit drinks, as quinine base"
                                    : "drinks other than spirit drinks, as quinine base",
                            spirit ? QUININE_IN_SPIRIT_DRINKS : QUININE_IN_OTHER_DRINKS,
                            Limit.Basis.PER_KILOGRAM));
            if (addedAsSuch(drink, "camphor")) {
                add(findings, drink.amount("camphor"), limit("added as such", CAMPHOR, Limit.Basis.PER_LITRE));
            }
            if (addedAsSuch(drink, "glycyrrhizic acid")) {
                add(
                        findings,
                        drink.amount("glycyrrhizic acid"),
                        limit(
                                "added as such",
                                drink.isAlcoholic() ? GLYCYRRHIZIC_ACID : GLYCYRRHIZIC_ACID_WITHOUT_ALCOHOL,
                                Limit.Basis.PER_KILOGRAM));
            }
        }
        return findings;
    }

    private static void add(List<Finding> findings, @Nullable Amount amount, Limit limit) {
        if (amount != null) {
            findings.add(limit.judge(amount));
        }
    }

    private static Limit limit(String category, double value, Limit.Basis basis) {
        return new Limit(
                "eu-use-limit", Place.EU.label(), category, value, basis, Limit.Edge.UP_TO, Source.EU_872_2012);
    }

    private static boolean addedAsSuch(Drink drink, String name) {
        return drink.portions().stream()
                .anyMatch(portion -> portion.substance() != null
                        && portion.substance().name().equals(name));
    }
}

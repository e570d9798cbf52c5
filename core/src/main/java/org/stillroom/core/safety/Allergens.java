package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Allergens and sulphites: what the lines bring, what washing and fining leave, and of what it is not known.
 *
 * <p>Source: Regulation (EU) No 1169/2011, Annex II, fourteen allergens; cereals, whey and nuts for making alcoholic distillates are
 * exempt there. The nine of the USA are from memory, so that they are told and clear nothing.
 */
final class Allergens {
    /** Above this in all, as SO₂, sulphites are named, mg/kg or mg/L. Source: Regulation (EU) No 1169/2011, Annex II, 12. */
    private static final double NAMED_ABOVE = 10.0;

    /** From so much of it on the USA asks for them, mg/kg of the drink. From memory: 27 CFR 5.63(c) says parts per million of the whole. */
    private static final double NAMED_FROM_IN_US = 10.0;

    /** What is said of cereals, whey and nuts from which a spirit was distilled. */
    static final String EXEMPT = "distilled: exempt in the EU";

    private static final double MILLIGRAMS = 1000.0;
    private static final String MEMORY = "general knowledge, from memory";
    private static final String LOOK = "Look at its label, and write on yours what it contains.";

    /** What a distillate is exempt of: cereals, whey and nuts. Milk itself is not among them. */
    private static final Set<String> DISTILLED = Set.of("gluten", "nuts");

    private static final String REFINED =
            "From memory, Annex II of Regulation (EU) 1169/2011 exempts fully refined soya oil, glucose syrup of wheat (dextrose"
                    + " too) or barley, and maltodextrin of wheat. That was not read here and clears nothing: read Annex II"
                    + " before you rely on it; for the USA it is not held.";

    private final Drink drink;
    private final Set<Place> places;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> told = new HashSet<>();
    /** Whether a line brings some or may. */
    private boolean toldOfSulphites;

    private Allergens(Drink drink, Serving serving) {
        this.drink = drink;
        this.places = serving.places();
    }

    static List<Finding> judge(Drink drink, Serving serving) {
        Allergens all = new Allergens(drink, serving);
        all.lines(drink.plan(), 1.0);
        all.toldOfSulphites =
                all.findings.stream().anyMatch(finding -> finding.rule().equals(AllergenName.SULPHITES));
        Passages.of(drink.plan()).forEach(all::passage);
        return all.findings;
    }

    /** @param part how much of the plan goes in at most; of a stage often less than all is drawn */
    private void lines(Plan plan, double part) {
        Set<String> made = new HashSet<>();
        plan.stages().forEach(stage -> made.add(stage.ingredient()));
        for (PlannedLine line : plan.lines()) {
            if (line.grams() > 0.0) {
                line(line, made.contains(line.name()), part);
            }
        }
        plan.stages()
                .forEach(stage ->
                        lines(stage.plan(), part * Leaf.drawn(plan, stage).most()));
    }

    /** @param made whether its own lines are looked at, as those of a stage are */
    private void line(PlannedLine line, boolean made, double part) {
        Kind kind = line.ingredient().kind();
        List<AllergenName> rows = drink.knowledge().allergens().stream()
                .filter(row -> row.holdsOf(kind))
                .toList();
        List<AllergenName> named = new ArrayList<>(AllergenWords.in(line.words(), rows));
        @Nullable AllergenName byKind = byKind(line, named);
        if (byKind != null) {
            named.add(byKind);
        }
        boolean kernels = Kernels.areAll(line, drink.knowledge());
        for (AllergenName row : named) {
            boolean asFruit = kernels && row.isAbout(AllergenName.SULPHITES) && row.says() == AllergenName.Says.MAY;
            if (!asFruit && (!row.isAbout(AllergenName.ANY) || !made)) {
                add(row, line, part);
            }
        }
    }

    /** A dairy, an egg, a wine, a liqueur and a mixture of nobody knows what are such by their kind, unless the name says that it is another thing of a like name. */
    private @Nullable AllergenName byKind(PlannedLine line, List<AllergenName> named) {
        String word = switch (line.ingredient().kind()) {
            case DAIRY -> "dairy";
            case EGG -> "egg";
            case WINE -> "wine";
            case LIQUEUR -> "liqueur";
            case ESSENCE, OTHER -> named.isEmpty() && isNotRecognised(line) ? "premix" : "";
            default -> "";
        };
        return AllergenWords.in(word, drink.knowledge().allergens()).stream()
                .filter(row -> named.stream().noneMatch(other -> other.isAbout(row.allergen())))
                .findFirst()
                .orElse(null);
    }

    /** Returns whether no table knows what it is, so that it may be a mixture of anything. */
    private boolean isNotRecognised(PlannedLine line) {
        return drink.portions().stream()
                .anyMatch(portion -> portion.name().equals(line.name()) && portion.isNotRecognised());
    }

    private void add(AllergenName row, PlannedLine line, double part) {
        String where = line.name();
        Kind kind = line.ingredient().kind();
        if (row.says() == AllergenName.Says.NONE) {
            return;
        }
        if (row.isAbout(AllergenName.SULPHITES)) {
            sulphites(row, line, part);
        } else if (row.isAbout(AllergenName.ANY)) {
            findings.add(finding(
                    row,
                    where,
                    "allergens not known",
                    "What is in it beyond its name is not known here, nor which allergens.",
                    LOOK));
        } else if (row.says() == AllergenName.Says.EXEMPT || isDistilled(row, kind)) {
            exempt(row, where);
        } else if (row.says() == AllergenName.Says.REFINED) {
            notKnown(row, where, REFINED, LOOK);
        } else if (row.says() == AllergenName.Says.MAY || (kind == Kind.SPIRIT && row.isAbout("nuts"))) {
            notKnown(row, where, "Whether there is " + row.what() + " in it is not known.", LOOK);
        } else {
            contains(row, where, "Write contains " + row.what() + ".");
        }
    }

    private static boolean isDistilled(AllergenName row, Kind kind) {
        return DISTILLED.contains(row.allergen())
                && (kind == Kind.DISTILLATE || (kind == Kind.SPIRIT && row.isAbout("gluten")));
    }

    private void contains(AllergenName row, String where, String remedy) {
        if (row.inUs() == AllergenName.InUs.ONLY && !places.contains(Place.US)) {
            return;
        }
        told.add(row.what());
        findings.add(finding(row, where, "contains " + row.what(), asked(row), remedy));
    }

    private String asked(AllergenName row) {
        String what = row.what();
        return switch (row.inUs()) {
            case ONLY ->
                "The USA counts " + what + " among its nine allergens (from memory); the list of the EU does not.";
            case NO ->
                "The EU asks that " + what + " be named"
                        + (places.contains(Place.US)
                                ? "; it is none of the nine allergens of the USA (from memory)."
                                : ".");
            case YES -> {
                if (!places.contains(Place.EU)) {
                    yield "The USA asks that " + what + " be named (from memory).";
                }
                yield "The EU asks that " + what + " be named"
                        + (places.contains(Place.US)
                                ? "; it is one of the nine allergens of the USA as well (from memory)."
                                : ".");
            }
        };
    }

    private void notKnown(AllergenName row, String where, String message, String remedy) {
        boolean only = row.inUs() == AllergenName.InUs.ONLY;
        if (only && !places.contains(Place.US)) {
            return;
        }
        findings.add(finding(
                row,
                where,
                "not known if it contains " + row.what(),
                only
                        ? "The EU does not count " + row.what()
                                + "; from memory, the USA does no longer since guidance of January 2025."
                        : message,
                only ? "Ask before it is sold in the USA." : remedy));
    }

    private void exempt(AllergenName row, String where) {
        if (!places.contains(Place.EU)) {
            notKnown(row, where, "Whether there is " + row.what() + " in it is not known.", LOOK);
            return;
        }
        String law = "Cereals, whey and nuts for making alcoholic distillates are exempt from the list of the EU; "
                + "what was added after distilling is not";
        findings.add(finding(
                row,
                where,
                EXEMPT,
                places.contains(Place.US) ? law + ". How the USA takes it is not held here." : law + ".",
                "Look at its label for what was added."));
    }

    private void sulphites(AllergenName row, PlannedLine line, double part) {
        if (row.sulphurDioxide() > 0.0) {
            weighedSulphites(row, line, part * line.grams() * row.sulphurDioxide() * MILLIGRAMS);
        } else if (row.says() == AllergenName.Says.CONTAINS) {
            findings.add(finding(
                    row,
                    line.name(),
                    "contains sulphites",
                    "It brings sulphites; how much is not known. " + sulphitesAreAsked(),
                    "Write contains sulphites, or weigh it by its salt."));
        } else {
            boolean wine = line.ingredient().kind() == Kind.WINE;
            findings.add(finding(
                    row,
                    line.name(),
                    "sulphites not known",
                    "It mostly brings sulphites; how much is not known. " + sulphitesAreAsked(),
                    wine
                            ? "Look at its label, for egg and milk of fining as well, or write contains sulphites."
                            : "Look at its label, or write contains sulphites."));
        }
    }

    /** @param milligrams of sulphur dioxide at most */
    private void weighedSulphites(AllergenName row, PlannedLine line, double milligrams) {
        double perLitre = milligrams / drink.litres();
        double perKilogram = milligrams / drink.kilograms();
        boolean asksEu = places.contains(Place.EU) && Math.max(perLitre, perKilogram) > NAMED_ABOVE;
        boolean asksUs = places.contains(Place.US) && perKilogram >= NAMED_FROM_IN_US;
        boolean named = asksEu || asksUs;
        findings.add(finding(
                row,
                line.name(),
                named ? "contains sulphites" : "sulphites not known",
                "It adds up to " + QuantityWords.figures(perLitre) + " mg/L, "
                        + QuantityWords.figures(perKilogram)
                        + " mg/kg of sulphur dioxide, by its molar mass. " + sulphitesAreAsked(),
                named ? "Write contains sulphites." : "Ask what the other lines bring, or write contains sulphites."));
    }

    private String sulphitesAreAsked() {
        List<String> asked = new ArrayList<>();
        if (places.contains(Place.EU)) {
            asked.add("Above 10 mg/kg or 10 mg/L in all, as SO₂, the EU asks that sulphites be named.");
        }
        if (places.contains(Place.US)) {
            asked.add("From 10 mg/kg in all, as SO₂, the USA asks that sulphites be named (from memory).");
        }
        return String.join(" ", asked);
    }

    private void passage(Passages.Passage passage) {
        boolean goesIn = passage.goesIn();
        for (AllergenName row :
                AllergenWords.in(passage.text(), drink.knowledge().allergens())) {
            boolean ofWords = row.says() == AllergenName.Says.CONTAINS || row.says() == AllergenName.Says.MAY;
            boolean sulphites = row.isAbout(AllergenName.SULPHITES);
            if (ofWords && row.kinds().isEmpty() && !row.isAbout(AllergenName.ANY) && !told.contains(row.what())) {
                if (sulphites) {
                    inWords(row, passage);
                } else if (goesIn && row.says() == AllergenName.Says.CONTAINS) {
                    contains(
                            row,
                            passage.where(),
                            "Write contains " + row.what() + ": what washes or fines stays in part.");
                } else {
                    notKnown(
                            row,
                            passage.where(),
                            "These words speak of " + row.what() + "; whether it goes in is not known.",
                            "Name it on the label where it goes in.");
                }
            }
        }
    }

    /** Of wine and fruit that go in, words tell where no line does; a salt of sulphite may stand in a step alone. */
    private void inWords(AllergenName row, Passages.Passage passage) {
        if (row.says() == AllergenName.Says.CONTAINS) {
            findings.add(finding(
                    row,
                    passage.where(),
                    "sulphites not known",
                    "These words speak of sulphites; how much goes in is not known. " + sulphitesAreAsked(),
                    "Make it a line with its weight, or write contains sulphites."));
        } else if (!toldOfSulphites
                && AllergenWords.in(passage.goingIn(), List.of(row)).contains(row)) {
            findings.add(finding(
                    row,
                    passage.where(),
                    "sulphites not known",
                    "These words name what mostly brings sulphites; how much is not known. " + sulphitesAreAsked(),
                    "Make it a line with its weight, or write contains sulphites."));
        }
    }

    private Finding finding(AllergenName row, String where, String verdict, String message, String remedy) {
        if (row.says() == AllergenName.Says.REFINED) {
            return finding(row, where, verdict, message, remedy, Source.EU_1169_RECALLED);
        }
        boolean ofEu = places.contains(Place.EU) && row.inUs() != AllergenName.InUs.ONLY;
        Source ofUs = row.isAbout(AllergenName.SULPHITES) ? Source.CFR_27_RECALLED : Source.US_ALLERGENS;
        return finding(row, where, verdict, message, remedy, ofEu ? Source.EU_1169_LABEL : ofUs);
    }

    private static Finding finding(
            AllergenName row, String where, String verdict, String message, String remedy, Source source) {
        return new Finding(
                row.rule(),
                Severity.NOTE,
                where,
                "",
                verdict,
                message,
                row.status().mayClear() ? "" : MEMORY,
                remedy,
                null,
                source);
    }
}

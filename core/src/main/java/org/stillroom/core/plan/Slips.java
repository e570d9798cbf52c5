package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Meant;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.tasting.AromaContents;
import org.stillroom.core.tasting.Note;

/**
 * Asks whether a dose of oil was meant: millilitres written for drops, neat oil for an essence, a batch scaled without its doses.
 *
 * <p>What is plausible of an oil {@link MostOil} says; on the other side a dose is asked about of which no constituent reaches its
 * threshold. It only asks: a dose that it passes is not thereby a good one.
 */
public final class Slips {
    private static final double TEN = 10.0;

    private static final String IMPLAUSIBLE = "dose-implausible";
    private static final String ASKED = "is this meant?";

    private Slips() {}

    /**
     * A dose that nothing goes on with before somebody says that it is meant.
     *
     * @param from the recipe whose line it is, as the ingredient of a stage names it, or null for the recipe itself
     * @param line its index there
     * @param name of the line, after the name of its stage
     * @param finding the question
     * @param answer what the line says where it is meant
     */
    public record Asked(@Nullable String from, int line, String name, Finding finding, Typed<Meant> answer) {}

    /** Returns whether a finding of this name comes from here and has to be known with the bottle in hand. */
    public static boolean isOne(String rule) {
        return rule.equals(IMPLAUSIBLE) || rule.equals(LookAlikes.NAME);
    }

    /** Returns whether a finding of this rule asks whether a dose is meant. */
    public static boolean isQuestion(String rule) {
        return rule.equals(IMPLAUSIBLE);
    }

    /** Returns whether a finding asks whether a dose is meant, and nobody has answered. */
    public static boolean isOpen(Finding finding) {
        return isQuestion(finding.rule()) && finding.verdict().equals(ASKED);
    }

    /** Returns what is to be asked and known of doses in a recipe and in all its stages; of stages the place begins with their name. */
    public static List<Finding> of(Plan plan) {
        List<Finding> findings = new ArrayList<>(in(plan.recipe(), plan.lines(), plan.millilitres()));
        for (Plan.StagePlan stage : plan.stages()) {
            of(stage.plan()).forEach(finding -> findings.add(inStage(finding, stage.ingredient())));
        }
        return findings;
    }

    /** Returns the doses of a recipe and of all its stages that nobody said are meant. */
    public static List<Asked> asked(Plan plan) {
        List<Asked> asked = new ArrayList<>();
        List<PlannedLine> lines = plan.lines();
        for (int i = 0; i < lines.size(); i++) {
            double perLitre = perLitre(lines.get(i), plan.millilitres());
            if (isAsked(plan.recipe(), lines.get(i), perLitre)
                    && !lines.get(i).line().means(perLitre)) {
                String name = lines.get(i).name();
                Finding finding = tooMuch(place(i, name), lines.get(i), perLitre);
                asked.add(new Asked(null, i, name, finding, Meant.of(perLitre, name)));
            }
        }
        for (Plan.StagePlan stage : plan.stages()) {
            String name = stage.ingredient();
            for (Asked each : asked(stage.plan())) {
                String from = each.from() == null ? from(plan.recipe(), name) : each.from();
                Finding finding = inStage(each.finding(), name);
                asked.add(new Asked(from, each.line(), name + ": " + each.name(), finding, each.answer()));
            }
        }
        return asked;
    }

    private static @Nullable String from(Recipe recipe, String stage) {
        return recipe.ingredients().stream()
                .filter(ingredient -> ingredient.name().equals(stage))
                .map(Ingredient::from)
                .findFirst()
                .orElse(null);
    }

    private static Finding inStage(Finding finding, String stage) {
        String where = Stream.of(finding.where().split("; ", -1))
                .map(place -> stage + ": " + place.replaceFirst("^line \\d+, ", ""))
                .collect(Collectors.joining("; "));
        return finding.at(where);
    }

    /**
     * Asks whether a dose of an oil that stands in no recipe is meant.
     *
     * @param oil its name
     * @param typed the dose as it was typed, or null
     * @param perLitre g of it per litre of the finished drink
     */
    public static Optional<Finding> ofDose(String oil, @Nullable Amount typed, double perLitre) {
        Resolved resolved =
                Resolution.of(Ingredient.named(oil, Kind.ESSENTIAL_OIL)).resolved();
        if (resolved == null) {
            return Optional.empty();
        }
        MostOil most = MostOil.of(oil, resolved.perGram());
        if (!(perLitre > most.gramsPerLitre())) {
            return Optional.empty();
        }
        return Optional.of(tooMuch("dose of " + oil, perLitre, most, meant(typed, true, perLitre, most)));
    }

    /**
     * Asks whether so much is meant of something of which nobody says what it is, where no neat oil is plausible at it.
     *
     * @param typed the dose as it was typed
     */
    public static Optional<Finding> ofAnyOil(Mass typed) {
        if (!(typed.grams() > MostOil.OF_ANETHOLE)) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                IMPLAUSIBLE,
                Severity.CAUTION,
                "dose",
                "",
                ASKED,
                Words.grams(typed.grams()) + " to the litre are more than is plausible of any neat oil: at most "
                        + Words.number(MostOil.OF_ANETHOLE, 0) + " g/L even of anise, and far less of most.",
                "The bound is our own judgement, wide on purpose.",
                "Look at the unit and at the decimal point, before anybody tastes it. If it is an essence or an extract, its"
                        + " own oil per litre counts.",
                Words.number(MostOil.OF_ANETHOLE, 1) + " g/L",
                Source.RULE_OF_THUMB));
    }

    /** Returns the doses of oil that are to be asked about; in what a recipe says is an essence, whatever the strength, none. */
    static List<Finding> in(Recipe recipe, List<PlannedLine> lines, double millilitres) {
        List<Finding> findings = new ArrayList<>(LookAlikes.among(lines));
        for (int i = 0; i < lines.size(); i++) {
            PlannedLine line = lines.get(i);
            double perLitre = perLitre(line, millilitres);
            if (isAsked(recipe, line, perLitre)) {
                Finding question = tooMuch(place(i, line.name()), line, perLitre);
                findings.add(line.line().means(perLitre) ? answered(question) : question);
            } else if (!recipe.isEssence() && isUnsmelt(line, perLitre)) {
                findings.add(tooLittle(place(i, line.name()), perLitre));
            }
        }
        return findings;
    }

    private static String place(int line, String name) {
        return "line " + (line + 1) + ", " + name;
    }

    private static boolean isAsked(Recipe recipe, PlannedLine line, double perLitre) {
        return !recipe.isEssence()
                && perLitre > 0.0
                && perLitre > mostOil(line.name(), line.ingredient().perGram());
    }

    /** Returns g of oil per litre that a line of neat oil or essence brings; 0 where it brings none, or is something else. */
    private static double perLitre(PlannedLine line, double millilitres) {
        double oil = line.ingredient().perGram().grams(Substance.OIL);
        Kind kind = line.ingredient().kind();
        boolean aroma = kind == Kind.ESSENTIAL_OIL || kind == Kind.ESSENCE || kind == Kind.TINCTURE;
        return aroma && millilitres > 0.0 && line.grams() > 0.0 ? 1000.0 * oil * line.grams() / millilitres : 0.0;
    }

    private static boolean isUnsmelt(PlannedLine line, double perLitre) {
        if (!(perLitre > 0.0)) {
            return false;
        }
        Contents perGram = line.ingredient().perGram();
        Map<String, Double> parts = MostOil.parts(perGram, perGram.grams(Substance.OIL));
        List<Note> known = Note.of(AromaContents.of(line.name(), 1000.0 * perLitre, parts), 0.0).stream()
                .filter(note -> note.threshold() != null)
                .toList();
        return !known.isEmpty() && known.stream().allMatch(note -> note.most() < 1.0);
    }

    /**
     * Returns the most oil that is plausible in a drink, g/L; infinite for what carries none.
     *
     * @param name of the oil, or of what carries it
     * @param perGram what a gram of it holds
     */
    public static double mostOil(String name, Contents perGram) {
        return MostOil.of(name, perGram).gramsPerLitre();
    }

    private static Finding tooMuch(String where, PlannedLine line, double perLitre) {
        MostOil most = MostOil.of(line.name(), line.ingredient().perGram());
        boolean neat = line.ingredient().kind() == Kind.ESSENTIAL_OIL;
        String remedy = meant(typed(line.line().amount()), neat, perLitre, most) + " If it is meant, write “meant: "
                + Meant.of(perLitre, line.name()).text() + "” with the line.";
        return tooMuch(where, perLitre, most, remedy);
    }

    private static Finding tooMuch(String where, double perLitre, MostOil most, String remedy) {
        Note note = most.surest(perLitre);
        return new Finding(
                IMPLAUSIBLE,
                Severity.CAUTION,
                where,
                "",
                ASKED,
                "It comes to " + Words.number(perLitre, 2) + " g of oil per litre, which is "
                        + Words.number(perLitre / most.gramsPerLitre(), 1)
                        + " times the most that is plausible for this oil." + (note == null ? "" : " " + smelt(note)),
                "The bound is our own judgement, wide on purpose"
                        + (note == null ? "." : "; odour thresholds are known to a decade at best."),
                remedy,
                Words.number(most.gramsPerLitre(), QuantityWords.places(most.gramsPerLitre()) - 1) + " g/L",
                Source.RULE_OF_THUMB);
    }

    private static String smelt(Note note) {
        return "It then holds " + note.name() + " at " + QuantityWords.figures(note.atHighestFound())
                + " times or more the least that is smelt of it in water.";
    }

    private static Finding answered(Finding question) {
        return new Finding(
                IMPLAUSIBLE,
                Severity.CAUTION,
                question.where(),
                "",
                "meant, says its maker",
                question.message(),
                question.howSure(),
                "Look at the amount once more before it goes in.",
                question.limit(),
                question.source());
    }

    private static String meant(@Nullable Amount amount, boolean neat, double perLitre, MostOil most) {
        if (amount instanceof Volume volume && volume.millilitres() <= 50.0) {
            return "If drops were meant, write " + Words.number(volume.millilitres(), 0)
                    + " drops. If it is an essence, list it as one with its g/L. If the batch was scaled, scale the dose.";
        }
        if (neat && perLitre / TEN <= most.gramsPerLitre()) {
            return "A tenth of it would be plausible: if this is a dilution or an essence, list it as one with its g/L.";
        }
        return amount instanceof Drops
                ? "Look at the count, at what a drop weighs, and at the size of the batch."
                : "Look at the unit and at the decimal point; if the batch was scaled, scale the dose too.";
    }

    private static @Nullable Amount typed(LineAmount amount) {
        if (amount instanceof LineAmount.PerLitre perLitre) {
            return perLitre.dose().value().perLitre();
        }
        return amount instanceof LineAmount.Fixed fixed ? fixed.amount().value() : null;
    }

    private static Finding tooLittle(String where, double perLitre) {
        return new Finding(
                "dose-not-smelt",
                Severity.NOTE,
                where,
                "",
                "is this meant?",
                "It comes to " + Words.number(1000.0 * perLitre, 3)
                        + " mg of oil per litre; nothing in it reaches a threshold that is known.",
                "Thresholds as they were found in water; in spirit they are mostly not known.",
                "Look at the unit: drops for millilitres, or an essence for the neat oil.",
                null,
                Source.ODOUR_THRESHOLDS);
    }
}

package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.OilPart;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.LotAnalyses;
import org.stillroom.core.tasting.AromaContents;
import org.stillroom.core.tasting.Note;
import org.stillroom.core.tasting.OdourThreshold;

/** Tells which constituents a recipe's oils bring, how much of each, and which notes lead. */
public final class TellNotes {
    private static final double PERCENT = 100.0;

    /** So much of an oil is all of it, but for rounding and traces, %. Own judgement. */
    private static final double ALL_OF_IT = 99.0;

    /** A usual constituent from so much is worth naming where it is missing, %. Own judgement. */
    private static final double WORTH_NAMING = 1.0;

    private final LotAnalyses lots;
    private final Map<String, Note.Content> perLitre = new TreeMap<>();
    private final Set<String> analysed = new TreeSet<>();
    private final List<Finding> findings = new ArrayList<>();

    private TellNotes(LotAnalyses lots) {
        this.lots = lots;
    }

    /**
     * The notes.
     *
     * @param notes the leading one first
     * @param strength of the liquid, % vol
     * @param analysed ingredients whose oil is what the analyses of their lots list
     * @param findings what to know
     */
    public record Found(List<Note> notes, double strength, List<String> analysed, List<Finding> findings) {
        public Found {
            notes = List.copyOf(notes);
            analysed = List.copyOf(analysed);
            findings = List.copyOf(findings);
        }
    }

    /** Returns the notes of what a plan makes, by the analyses of the lots that it was judged on. */
    public static Found answer(WorkedPlan worked, Workings workings) {
        Plan plan = worked.plan();
        TellNotes tell = new TellNotes(worked.grounds().analyses());
        tell.add(plan, 1.0, plan.millilitres() / 1000.0);
        double strength = Essentials.of(plan.liquid().toGrams()).strength();
        List<Note> notes = Note.of(tell.perLitre, strength);
        for (Note note : notes) {
            workings.step(note.name(), note.content().typical(), "mg/L", Source.OIL_COMPOSITIONS);
        }
        if (notes.isEmpty()) {
            tell.findings.add(Finding.of(
                    "no-notes",
                    Severity.NOTE,
                    "",
                    "",
                    "No line of this recipe brings a constituent that is known here: there is no essential oil in it, and nothing that"
                            + " says which oils it holds.",
                    "Add an essential oil by a dose, such as “use: lemon oil, dose: 50 mg/L”, or say of an essence or a distillate"
                            + " what is in it, such as aroma: lemon oil 5 g/L. What a plant gives to spirit is not known by its"
                            + " constituents."));
        }
        tell.tellMedia(notes, strength);
        return new Found(notes, strength, List.copyOf(tell.analysed), tell.findings);
    }

    private void add(Plan plan, double factor, double litres) {
        for (PlannedLine line : plan.lines()) {
            double oil = line.grams() * factor * line.ingredient().perGram().grams(Substance.OIL);
            Plan.StagePlan stage = stage(plan, line.name());
            if (stage != null && oil > 0.0) {
                double part = line.grams() * factor / stage.plan().liquid().total();
                add(stage.plan(), part, litres);
            } else if (oil > 0.0) {
                addOils(line.ingredient(), 1000.0 * oil / litres);
            }
        }
    }

    private static Plan.@Nullable StagePlan stage(Plan plan, String name) {
        for (Plan.StagePlan stage : plan.stages()) {
            if (stage.ingredient().equals(name)) {
                return stage;
            }
        }
        return null;
    }

    /** Takes what the lots' own analyses list for the whole of their oil; else the oils and constituents that are named in it one by one. */
    private void addOils(Resolved ingredient, double milligrams) {
        Map<String, Span> own = lots.oil(ingredient.name());
        if (!own.isEmpty()) {
            analysed.add(ingredient.name());
            take(AromaContents.analysed(milligrams, own));
            leftOut(ingredient.name(), AromaContents.analysed(PERCENT, own)).ifPresent(findings::add);
            return;
        }
        for (OilPart part : ingredient.oilParts()) {
            Constituent constituent = part.constituent();
            if (constituent != null) {
                take(AromaContents.analysed(milligrams * part.part(), Map.of(constituent.cas(), Span.exactly(1.0))));
            } else {
                addOil(part, milligrams * part.part());
            }
        }
    }

    /** Tells what an analysis names no constituent of, and what is usual in such an oil and not named in it. */
    private static Optional<Finding> leftOut(String name, Map<String, Note.Content> named) {
        double percent = named.entrySet().stream()
                .filter(each -> Constituents.find(each.getKey()) != null)
                .mapToDouble(each -> each.getValue().typical())
                .sum();
        List<String> missing = missing(name, named.keySet());
        if (percent > ALL_OF_IT && missing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                "analysis-leaves-out",
                Severity.NOTE,
                name,
                "not all is named",
                "Its analysis names " + QuantityWords.fixed(percent, 1)
                        + " % of the oil; what it does not name is not counted here."
                        + (missing.isEmpty() ? "" : " Usual in it and not named: " + String.join(", ", missing) + "."),
                "Ask the supplier for the whole analysis; what is left out may lead all the same."));
    }

    private static List<String> missing(String name, Set<String> named) {
        EssentialOil usual = EssentialOils.find(name);
        if (usual == null) {
            return List.of();
        }
        return AromaContents.of(name, PERCENT, usual.shares()).entrySet().stream()
                .filter(each -> each.getValue().typical() >= WORTH_NAMING && !named.contains(each.getKey()))
                .map(each -> Constituents.find(each.getKey()))
                .filter(Objects::nonNull)
                .map(Constituent::name)
                .toList();
    }

    private void take(Map<String, Note.Content> brings) {
        brings.forEach((cas, content) -> perLitre.merge(cas, content, Note.Content::plus));
    }

    private void addOil(OilPart part, double milligrams) {
        String name = part.name();
        Map<String, Note.Content> brings = AromaContents.of(name, milligrams, part.composition());
        if (brings.isEmpty()) {
            findings.add(Finding.of(
                    "oil-not-known",
                    Severity.CAUTION,
                    name,
                    "not known",
                    "What this oil is made of is in no table, so its notes are missing here.",
                    "Give the analysis of your lot, or name the oil as the table of materials does."));
        } else if (Materials.find(name) == null && EssentialOils.find(name) != null) {
            findings.add(Finding.of(
                    "oil-without-range",
                    Severity.NOTE,
                    name,
                    "",
                    "Only a typical composition is known; half to twice as much is shown as its range.",
                    ""));
        }
        take(brings);
    }

    private void tellMedia(List<Note> notes, double strength) {
        long known = notes.stream().filter(note -> note.threshold() != null).count();
        long inWater = notes.stream()
                .map(Note::threshold)
                .filter(each -> each != null && each.medium() == OdourThreshold.Medium.WATER)
                .filter(each -> each.isOfAnotherMedium(strength))
                .count();
        if (inWater > 0) {
            findings.add(new Finding(
                    "threshold-in-water",
                    Severity.CAUTION,
                    "odour activity",
                    "",
                    "weakly known",
                    String.format(
                            Locale.ROOT,
                            "%d of %d thresholds were found in water, and this is %.1f %% vol.",
                            inWater,
                            known,
                            strength),
                    "Ethanol of 20 to 60 % vol moved thresholds of 40 constituents 2 to 692 times.",
                    "Take the order of the notes as a hint and trust your nose; compare a dose ladder.",
                    null,
                    Source.ETHANOL_ON_THRESHOLDS));
        }
        List<String> without = notes.stream()
                .filter(note -> note.threshold() == null)
                .map(Note::name)
                .toList();
        if (!without.isEmpty()) {
            findings.add(Finding.of(
                    "threshold-unknown",
                    Severity.NOTE,
                    "odour activity",
                    "not known",
                    "No threshold was found of " + String.join(", ", without) + "; they may lead all the same.",
                    ""));
        }
    }
}

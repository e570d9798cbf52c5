package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Remeasured;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.core.plan.Correction.Batch;
import org.stillroom.core.plan.Correction.Way;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells what brings a batch to its target, several ways side by side, and whether it is worth it. */
public final class CorrectBatch {
    /** What a kitchen has besides sugar and water. */
    public static final Addition CITRIC =
            new Addition("citric acid", Contents.of(Substance.CITRIC, 1.0), Double.POSITIVE_INFINITY);

    /** Below this a batch holds no acid to speak of, g/L. */
    private static final double NO_ACID = 0.005;

    private CorrectBatch() {}

    /**
     * What is there and what is wanted.
     *
     * @param batch what is in the vessel, and how sure
     * @param target strength (% vol), sugar and acidity (g/L); what is absent is left open
     * @param with what the maker has for it
     * @param shelf what stands on the maker's shelf, with how much is left of it; null where none was asked
     * @param flavours extracts whose flavour is to be kept, with how much of each went in
     * @param vessel the most that there is room for, or null
     */
    public record Asking(
            Batch batch,
            Map<Asked, Double> target,
            List<Addition> with,
            @Nullable List<Addition> shelf,
            List<Added> flavours,
            @Nullable Volume vessel) {
        public Asking {
            target = Map.copyOf(target);
            with = List.copyOf(with);
            shelf = shelf == null ? null : List.copyOf(shelf);
            flavours = List.copyOf(flavours);
        }
    }

    /** The ways to correct a batch. */
    public enum Kind {
        LEAST("least added"),
        NAMED("only what was named"),
        SHELF("only what is on the shelf"),
        WATER("only water");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * What can be done.
     *
     * @param ways by kind, those that are open, least added first
     * @param goodEnough whether the batch lies on its target within its own doubt
     * @param restores whether extracts are among what is added, so that their flavour stays
     * @param findings what to know
     */
    public record Found(Map<Kind, Way> ways, boolean goodEnough, boolean restores, List<Finding> findings) {
        public Found {
            ways = new EnumMap<>(ways);
            findings = List.copyOf(findings);
        }

        /** Returns the way that adds least. */
        public Way least() {
            return Objects.requireNonNull(ways.get(Kind.LEAST));
        }
    }

    /**
     * Returns a batch by its figures.
     *
     * @param volume at 20 °C
     * @param figures strength (% vol), sugar and acidity (g/L)
     * @param doubt their half-widths where they are in doubt
     * @throws Impossible when no litre can hold that
     */
    public static Batch batch(Volume volume, Map<Asked, Double> figures, Map<Asked, Double> doubt) {
        Contents dry = Contents.of(Substance.SUCROSE, figures.getOrDefault(Asked.SUGAR, 0.0))
                .with(Substance.CITRIC, figures.getOrDefault(Asked.ACIDITY, 0.0))
                .with(Substance.ETHANOL, MadeUp.ethanolOfLitre(figures.getOrDefault(Asked.STRENGTH, 0.0)));
        Contents litre = Impossible.unless(
                "strength", "Check strength and sugar.", () -> MadeUp.withWater(dry, Volume.litres(1.0)));
        return new Batch(litre.times(volume.millilitres() / 1000.0), doubt);
    }

    /** Returns a batch as it was gauged. */
    public static Batch batch(Gauged gauged) {
        Map<Asked, Double> doubt = new EnumMap<>(Asked.class);
        doubt.put(Asked.STRENGTH, gauged.strength().halfWidth());
        doubt.put(Asked.SUGAR, gauged.sugar().halfWidth());
        return new Batch(asGauged(gauged), doubt);
    }

    /** Returns the liquid with the very figures of the estimate, which may lie beside what the formulas make of its grams. */
    private static Contents asGauged(Gauged gauged) {
        Map<Asked, Double> figures = new EnumMap<>(Asked.class);
        figures.put(Asked.STRENGTH, gauged.strength().value());
        figures.put(Asked.SUGAR, gauged.sugar().value());
        Interval acidity = gauged.acidity();
        if (acidity != null) {
            figures.put(Asked.ACIDITY, acidity.value());
        }
        Interval volume = gauged.volume();
        if (volume != null) {
            figures.put(Asked.VOLUME, volume.value());
        }
        return Impossible.unless(
                "strength", "Check strength and sugar.", () -> Remeasured.to(gauged.contents(), figures));
    }

    /** Returns the ways. */
    public static Found answer(Asking asking, Workings workings) {
        Map<Kind, Way> ways = new EnumMap<>(Kind.class);
        ways.put(Kind.LEAST, way(everything(asking), asking));
        if (!asking.with().isEmpty()) {
            ways.put(Kind.NAMED, way(asking.with(), asking));
        }
        List<Addition> shelf = asking.shelf();
        if (shelf != null) {
            ways.put(Kind.SHELF, way(ofShelf(shelf), asking));
        }
        ways.put(Kind.WATER, way(List.of(Addition.WATER), asking));
        boolean goodEnough =
                Correction.isGoodEnough(asking.batch(), asking.target()) && !Correction.isTooOpen(asking.batch());
        explain(asking, Objects.requireNonNull(ways.get(Kind.LEAST)), workings);
        return new Found(ways, goodEnough, !asking.flavours().isEmpty(), findings(asking, ways, goodEnough));
    }

    private static void explain(Asking asking, Way least, Workings workings) {
        double before = Essentials.of(asking.batch().contents().toGrams()).millilitres();
        workings.step("volume of the batch", before, "mL at 20 °C", Source.VOLUME_MODEL);
        least.added()
                .forEach(each -> workings.step(each.addition().name() + " to add", each.grams(), "g", Source.BALANCE));
        Essentials then = least.essentials();
        workings.step("volume then", then.millilitres(), "mL at 20 °C", Source.VOLUME_MODEL);
        workings.step("strength then", then.strength(), "% vol at 20 °C", Source.VOLUME_MODEL);
        workings.step("sugar then", then.sugar(), "g/L at 20 °C", Source.VOLUME_MODEL);
    }

    private static Way way(List<Addition> additions, Asking asking) {
        Volume vessel = asking.vessel();
        return Correction.restoring(
                asking.flavours(),
                additions,
                asking.batch(),
                asking.target(),
                vessel == null ? null : vessel.millilitres());
    }

    /** Returns what stands on the shelf, and water, which does not stand there. */
    private static List<Addition> ofShelf(List<Addition> shelf) {
        List<Addition> all = new ArrayList<>(shelf);
        if (all.stream().noneMatch(each -> each.name().equals(Addition.WATER.name()))) {
            all.add(Addition.WATER);
        }
        return all;
    }

    /** Returns what was named and what stands on the shelf, then what every kitchen has and is not among that. */
    private static List<Addition> everything(Asking asking) {
        List<Addition> all = new ArrayList<>(asking.with());
        List<Addition> shelf = asking.shelf();
        all.addAll(shelf == null ? List.of() : shelf);
        List<Addition> kitchen = new ArrayList<>(List.of(Addition.WHITE_SUGAR, Addition.WATER));
        if (asking.target().containsKey(Asked.ACIDITY)) {
            kitchen.add(CITRIC);
        }
        for (Addition each : kitchen) {
            if (all.stream().noneMatch(named -> named.name().equals(each.name()))) {
                all.add(each);
            }
        }
        return all;
    }

    private static List<Finding> findings(Asking asking, Map<Kind, Way> ways, boolean goodEnough) {
        List<Finding> findings = new ArrayList<>();
        Way least = Objects.requireNonNull(ways.get(Kind.LEAST));
        if (goodEnough) {
            findings.add(Finding.of(
                    "good-enough",
                    Severity.NOTE,
                    "",
                    "good enough",
                    asking.batch().doubt().isEmpty()
                            ? "The batch lies on its target. Leave it."
                            : "It is good enough: the batch lies on its target within its own doubt. Leave it.",
                    asking.batch().doubt().isEmpty() ? "" : "Measure more closely before you correct it."));
        } else if (Correction.isTooOpen(asking.batch())) {
            findings.add(Finding.of(
                    "batch-too-open",
                    Severity.CAUTION,
                    "",
                    "cannot be told",
                    "So little is known of the batch that nobody can tell whether it needs correcting: strength within ± "
                            + QuantityWords.fixed(asking.batch().doubt().getOrDefault(Asked.STRENGTH, 0.0), 1)
                            + "\u00a0% vol, sugar within ± "
                            + QuantityWords.fixed(asking.batch().doubt().getOrDefault(Asked.SUGAR, 0.0), 0)
                            + "\u00a0g/L.",
                    "Measure again, or in another way, before you add anything."));
        }
        if (!least.reached() && !goodEnough) {
            findings.add(Finding.of(
                    "correction-out-of-reach",
                    Severity.STOP,
                    "",
                    "cannot be reached",
                    "What can be added does not bring it to the target; this is the nearest.",
                    "Add something stronger or sweeter, or ask for less."));
        }
        if (least.drawnOff() > 0.0) {
            findings.add(Finding.of(
                    "vessel-full",
                    Severity.CAUTION,
                    "vessel",
                    "no room",
                    "The vessel has no room for that: draw off " + QuantityWords.fixed(least.drawnOff(), 0)
                            + "\u00a0mL of the batch first.",
                    "Or move it to a larger one."));
        }
        for (Added each : least.added()) {
            boolean ofFlavour = asking.flavours().stream()
                    .anyMatch(flavour -> flavour.addition().equals(each.addition()));
            if (ofFlavour && each.grams() > each.addition().atHand()) {
                findings.add(Finding.of(
                        "extract-short",
                        Severity.CAUTION,
                        each.addition().name(),
                        "not enough",
                        "There are only " + QuantityWords.fixed(each.addition().atHand(), 1) + "\u00a0g of "
                                + each.addition().name() + " left for the "
                                + QuantityWords.fixed(each.grams(), 1) + "\u00a0g that keep its flavour.",
                        "Make more of it, or let the flavour thin a little."));
            }
        }
        boolean noAcid = Essentials.of(asking.batch().contents().toGrams()).acidity() < NO_ACID;
        if (noAcid && asking.target().containsKey(Asked.ACIDITY)) {
            findings.add(Finding.of(
                    "batch-taken-without-acid",
                    Severity.CAUTION,
                    "acidity",
                    "taken for granted",
                    "The batch is taken to hold no acid at all.",
                    "Titrate it first where that is not known: fruit and juice bring acid."));
        }
        if (asking.batch().doubt().isEmpty()) {
            findings.add(
                    Finding.of(
                            "batch-taken-as-exact",
                            Severity.NOTE,
                            "",
                            "taken for granted",
                            "Strength and sugar of the batch are taken as exact.",
                            "Say how far they may be off, as gauge tells it, and it is told whether a correction is worth it."));
        }
        return findings;
    }
}

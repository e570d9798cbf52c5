package org.stillroom.studio.usecase.essence;

import java.util.List;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.Essence;

/** What is to be known about an essence in whole drops. */
final class EssenceFindings {
    private EssenceFindings() {}

    static Finding byRule(List<String> names) {
        return new Finding(
                "drop-by-rule",
                Severity.CAUTION,
                String.join(", ", names),
                "",
                "estimated",
                "Nobody weighed these drops; they are taken from the official dropper.",
                "Within 30 % for ordinary droppers, which is far more than the tolerance of the proportions.",
                "Weigh 20 to 50 drops of each with its own dropper and write the mass of one as “drop”.",
                null,
                Source.SURFACE_TENSION);
    }

    static Finding dilutionByRule(double gramsPerDrop) {
        return new Finding(
                "dilution-by-rule",
                Severity.NOTE,
                "",
                "",
                "estimated",
                "A drop of a dilution is taken to weigh " + QuantityWords.fixed(1000.0 * gramsPerDrop, 1)
                        + " mg, as its spirit drops from the official dropper.",
                "Within 30 % for ordinary droppers; what is dosed is as far off.",
                "Weigh 50 drops of the dilution from its own dropper, or weigh the dose of it.",
                null,
                Source.SURFACE_TENSION);
    }

    static Finding dilutedInStrong(Diluted diluted) {
        return new Finding(
                "dilution-in-strong",
                Severity.NOTE,
                "carrier",
                "",
                "too weak for a dilution",
                "A dilution made up with the carrier would hold " + QuantityWords.fixed(diluted.carrierLoad(), 1)
                        + " times the oil that stays dissolved; it is made up with spirit of "
                        + QuantityWords.fixed(diluted.told().strength(), 0) + " % vol here.",
                "Solubilities are known to a factor of 1.6.",
                "",
                null,
                Source.CLARITY_MODEL);
    }

    static Finding dilutionNotClear(Diluted diluted) {
        return new Finding(
                "dilution-not-clear",
                Severity.CAUTION,
                "dilution",
                "",
                "may separate",
                "Even in spirit of " + QuantityWords.fixed(diluted.told().strength(), 0) + " % vol the dilution holds "
                        + QuantityWords.fixed(diluted.load(), 1) + " times the oil that stays dissolved.",
                "Solubilities are known to a factor of 1.6.",
                "Make no dilution; make the essence for more batches, or weigh the oils.",
                null,
                Source.CLARITY_MODEL);
    }

    static Finding onMark(double dose, double wanted) {
        return Finding.of(
                "dose-on-mark",
                Severity.NOTE,
                "dose",
                "",
                "The dose is taken as " + millilitres(dose) + " for a batch, the nearest mark to " + millilitres(wanted)
                        + "; the essence is made so much stronger or weaker.",
                "");
    }

    static Finding tooSmall(String measure, double dose, double mark) {
        return new Finding(
                "dose-too-small",
                Severity.CAUTION,
                "dose",
                "",
                "too small to repeat",
                millilitres(dose) + " cannot be repeated to 10 % on " + measure + ", whose marks are "
                        + millilitres(mark) + " apart.",
                "",
                "Dose " + millilitres(5.0 * mark) + " or more for a batch: a weaker essence, or a finer measure.",
                "10 %",
                Source.TRADE);
    }

    static Finding notWhole(Essence asked, Choice best) {
        return Finding.of(
                "drops-not-whole",
                Severity.NOTE,
                "",
                "",
                "One batch would want " + wanted(asked) + " drops, and drops cannot be split.",
                best.batches() == 1
                        ? "Take the whole drops that come nearest, or dilute the oil of fewest drops first."
                        : "Make the essence for " + batches(best.batches()) + " at once and dose it by the measure.");
    }

    private static String wanted(Essence asked) {
        return String.join(
                ", ",
                asked.dropsPerBatch().stream()
                        .map(each -> QuantityWords.fixed(each, 2))
                        .toList());
    }

    static Finding dilutedAlone(Essence asked) {
        return Finding.of(
                "drops-not-whole",
                Severity.CAUTION,
                "",
                "with a dilution alone",
                "One batch would want " + wanted(asked) + " drops, and no whole ones come near for up to "
                        + batches(asked.mostBatches()) + " at once.",
                "Dilute first as it is told here; or allow more batches, or make a batch larger.");
    }

    static Finding toleranceNotKept(Essence asked, Choice best) {
        return Finding.of(
                "tolerance-not-kept",
                Severity.CAUTION,
                "tolerance",
                "not kept",
                "No essence for up to " + batches(asked.mostBatches()) + " keeps every oil within "
                        + QuantityWords.fixed(100.0 * asked.tolerance(), 1) + " %; the nearest is off by "
                        + QuantityWords.fixed(100.0 * best.worstError(), 1) + " %.",
                "Allow more batches or a wider tolerance, or dilute the oil of fewest drops first.");
    }

    static Finding notClear(double strength, double load) {
        return new Finding(
                "essence-not-clear",
                Severity.CAUTION,
                "carrier",
                "",
                "may separate",
                "At " + QuantityWords.fixed(strength, 1) + " % vol the essence holds " + QuantityWords.fixed(load, 1)
                        + " times the oil that stays dissolved.",
                "Solubilities are known to a factor of 1.6.",
                "Take a stronger carrier, or a larger dose of a weaker essence.",
                null,
                Source.CLARITY_MODEL);
    }

    static String batches(int count) {
        return count + (count == 1 ? " batch" : " batches");
    }

    static String millilitres(double volume) {
        return QuantityWords.metric(new Volume(volume));
    }
}

package org.stillroom.studio.cli;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.LearntFields;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.learn.LearnOffsets;
import org.stillroom.studio.usecase.learn.Learnt;
import org.stillroom.studio.usecase.learn.LearntDrop;
import org.stillroom.studio.usecase.learn.LearntLabel;
import org.stillroom.studio.usecase.learn.TakeOffset;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what the batches of a studio say of labels and droppers, and takes it for a bottle where that is asked. */
final class LearnedCommand extends Subcommand {
    @Mixin
    private BatchOptions studio = new BatchOptions();

    @Option(
            names = "--take",
            paramLabel = "LOT",
            description =
                    "put the sheet of this bottle right by what is clear of it; its id, or its name where just one has it")
    private @Nullable String take;

    @Override
    protected Answer answer(Workings workings) {
        String lot = take;
        return studio.ask(store -> {
            LearnOffsets learn = LearnOffsets.of(store);
            if (lot != null) {
                taken(store, learn, lot);
            }
            return new Told(learn.answer());
        });
    }

    private static void taken(Store store, LearnOffsets learn, String name) {
        List<Lot> meant = store.lots().all().stream()
                .filter(lot -> lot.id().equals(name) || lot.sheet().name().equalsIgnoreCase(name.strip()))
                .toList();
        if (meant.size() != 1) {
            throw Refusal.notFound(
                    "--take",
                    meant.isEmpty()
                            ? "there is no bottle \"" + name + "\" on the shelf."
                            : meant.size() + " bottles are called \"" + name + "\".",
                    "Give the id of one; stillroom learned --json tells it.");
        }
        TakeOffset.Outcome outcome = new TakeOffset(store, learn)
                .answer(meant.get(0).id(), "", UUID.randomUUID().toString());
        if (!(outcome instanceof TakeOffset.Outcome.Taken)) {
            throw Refusal.wrongInput(
                    "--take",
                    "nothing clear is told of \"" + name + "\".",
                    "stillroom learned lists what is clear; measure a batch that it goes into.");
        }
    }

    /** What is told. */
    private record Told(Learnt learnt) implements Answer {
        @Override
        public Fields fields() {
            return LearntFields.of(learnt);
        }

        @Override
        public void print(Page page) {
            page.heading("What your batches tell of labels and droppers");
            if (learnt.labels().isEmpty() && learnt.drops().isEmpty()) {
                page.paragraph(
                        "Nothing yet: measure batches before anything is added to them, and weigh bottles that you count drops from.");
                return;
            }
            learnt.leftOut()
                    .forEach(batch ->
                            page.paragraph("Batch " + batch + " fits nothing that the others say; it is left out."));
            learnt.labels().forEach(label -> page.paragraph(told(label)));
            learnt.drops().forEach(drop -> page.paragraph(told(drop)));
            page.blank();
            page.paragraph("Nothing of it is used by itself. --take puts the sheet of a bottle right.");
        }

        private static String told(LearntLabel label) {
            int decimals = label.figure().decimals();
            String unit = " " + label.figure().unit();
            String bottle = label.lot() == null ? "" : " (bottle " + label.lot() + ")";
            String found = QuantityWords.fixed(label.found().value(), decimals) + unit + " (± "
                    + QuantityWords.fixed(label.found().halfWidth(), Math.max(1, decimals)) + ")";
            String by = " by " + label.batches() + (label.batches() == 1 ? " batch" : " batches");
            String labelled = QuantityWords.fixed(label.labelled(), decimals) + unit;
            String says = switch (label.standing()) {
                case CLEAR -> "comes out at " + found + by + "; its label says " + labelled + ".";
                case AS_LABELLED -> "comes out as labelled, " + labelled + ": " + found + by + ".";
                case OPEN -> "too little is known: " + found + by + ", labelled " + labelled + ".";
            };
            String beyond = label.beyondTolerance() ? " That is beyond what its label may be off." : "";
            String or = label.orOf().isEmpty()
                    ? ""
                    : " It cannot be told apart from " + String.join(", ", label.orOf())
                            + ", which went into the same batches.";
            return label.ingredient() + bottle + ": " + says + beyond + or;
        }

        private static String told(LearntDrop drop) {
            Interval found = drop.found();
            String by = " by " + drop.weighings() + (drop.weighings() == 1 ? " weighing" : " weighings");
            return drop.liquid() == null
                    ? drop.dropper() + ": drops weigh " + QuantityWords.fixed(found.value(), 2)
                            + " times what they are reckoned to (± " + QuantityWords.fixed(found.halfWidth(), 2) + ")"
                            + by
                            + "."
                    : drop.liquid() + " (bottle " + drop.lot() + "): a drop out of " + drop.dropper() + " weighs "
                            + QuantityWords.fixed(found.value(), 4) + " g (± "
                            + QuantityWords.fixed(found.halfWidth(), 4)
                            + ")" + by + "; it is reckoned as " + QuantityWords.fixed(drop.reckoned(), 4) + " g.";
        }
    }
}

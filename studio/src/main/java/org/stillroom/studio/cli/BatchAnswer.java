package org.stillroom.studio.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.safety.Keeping;
import org.stillroom.studio.answer.BatchFields;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.usecase.batch.ShowBatch.Bottles;
import org.stillroom.studio.usecase.batch.ShowBatch.Line;
import org.stillroom.studio.usecase.batch.ShowBatch.Rests;
import org.stillroom.studio.usecase.batch.ShowBatch.Told;
import org.stillroom.studio.usecase.batch.ShowBatch.Vessel;
import org.stillroom.studio.usecase.batch.TellKeeping;

/** Batches and what waits, on a screen. */
final class BatchAnswer {
    private BatchAnswer() {}

    /** All batches. */
    record All(List<Told> batches) implements Answer {
        @Override
        public Fields fields() {
            return BatchFields.list(
                    "batches", batches.stream().map(BatchFields::head).toList());
        }

        @Override
        public void print(Page page) {
            page.heading("Batches, latest first");
            if (batches.isEmpty()) {
                page.paragraph("There is none yet: a make that is finished becomes one.");
                return;
            }
            Table table = vesselTable("batch", "");
            for (Told batch : batches) {
                String title = batch.title();
                String number = "" + batch.number();
                if (batch.vessels().isEmpty()) {
                    table.row(number, title, "nothing left", "", "", "", "", "");
                }
                batch.vessels().forEach(vessel -> row(table, number, title, vessel));
            }
            page.table(table);
        }
    }

    /**
     * One batch with its log.
     *
     * @param whole whether all cautions are told, else what stops it alone
     */
    record One(Told batch, boolean whole) implements Answer {
        @Override
        public Fields fields() {
            return BatchFields.whole(batch);
        }

        @Override
        public void print(Page page) {
            page.heading("Batch " + batch.number() + ": " + batch.title());
            keeping(page, One::stops);
            Table table = vesselTable("", "");
            batch.vessels().forEach(vessel -> row(table, "", "", vessel));
            if (batch.vessels().isEmpty()) {
                page.paragraph("Nothing is left of it.");
            } else {
                page.table(table);
            }
            bottles(page);
            page.blank();
            if (whole) {
                page.heading("What else there is to know, and whether it keeps");
                keeping(page, One::besides);
            } else {
                page.paragraph(
                        "What else there is to know, and whether it keeps: stillroom batches " + batch.number() + ".");
            }
            page.blank();
            page.heading("Log");
            if (batch.log().isEmpty()) {
                page.paragraph("Nothing was written of it yet.");
            }
            batch.log().forEach(line -> page.paragraph(words(line)));
            batch.waits()
                    .forEach(waiting -> page.paragraph("Waits until " + waiting.until() + ": "
                            + waiting.what().name().toLowerCase(Locale.ROOT) + "."));
        }

        private void bottles(Page page) {
            if (batch.bottles().isEmpty()) {
                return;
            }
            page.blank();
            page.heading("Bottles");
            Table table = new Table()
                    .text("")
                    .figure("mL each")
                    .figure("% vol")
                    .text("filled")
                    .text("pasteurised")
                    .text("keeps");
            for (Bottles each : batch.bottles()) {
                Bottling bottling = each.bottling();
                Instant pasteurised = bottling.pasteurised();
                table.row(
                        numbers(bottling),
                        Figure.decimals(bottling.fill().millilitres(), 0),
                        Figure.decimals(bottling.each().essentials().strength(), 1),
                        day(bottling.at()),
                        pasteurised == null ? "" : day(pasteurised),
                        keeps(each));
            }
            page.table(table);
        }

        private static String numbers(Bottling bottling) {
            return bottling.fill().count() == 1 ? "" + bottling.first() : bottling.first() + " to " + bottling.last();
        }

        private static String keeps(Bottles bottles) {
            Keeping keeping = bottles.keeps().keeping();
            if (keeping == null) {
                return "not known";
            }
            LocalDate filled =
                    bottles.bottling().at().atZone(ZoneId.systemDefault()).toLocalDate();
            return keeping.where().label().replaceFirst("^keep it |^keeps ", "")
                    + (keeping.days() == 0 ? "" : ", until " + filled.plusDays(keeping.days()));
        }

        /** How one thing is told of a vessel or of bottles. */
        private interface Telling {
            void tell(Page page, String what, TellKeeping.Found found);
        }

        /** Tells of each vessel and of all bottles. */
        private void keeping(Page page, Telling telling) {
            for (Vessel vessel : batch.vessels()) {
                TellKeeping.Found found = vessel.keeps();
                if (found != null) {
                    telling.tell(page, "In vessel " + vessel.name(), found);
                }
            }
            for (Bottles each : batch.bottles()) {
                Bottling bottling = each.bottling();
                telling.tell(
                        page,
                        (bottling.fill().count() == 1 ? "Bottle " : "Bottles ") + numbers(bottling),
                        each.keeps());
            }
        }

        private static void stops(Page page, String what, TellKeeping.Found found) {
            if (!found.stops().isEmpty()) {
                page.paragraph(what + ":");
                found.stops().forEach(page::finding);
                page.blank();
            }
        }

        private static void besides(Page page, String what, TellKeeping.Found found) {
            page.paragraph(what
                    + (found.isKnown()
                            ? found.stops().isEmpty() ? ":" : ", beside what stops it:"
                            : ": not known, for its recipe cannot be worked out any more."));
            found.besides().forEach(page::finding);
        }

        private static String day(Instant moment) {
            return moment.atZone(ZoneId.systemDefault()).toLocalDate().toString();
        }

        private static String words(Line line) {
            String note = line.typed().getOrDefault("note", "");
            return line.id() + "  " + day(line.at()) + "  " + line.told()
                    + (note.isEmpty() ? "" : " – " + note)
                    + (line.undone() ? " (taken back)" : "");
        }
    }

    /** What waits. */
    record Resting(List<Rests> rests) implements Answer {
        @Override
        public Fields fields() {
            return BatchFields.list(
                    "rest", rests.stream().map(BatchFields::rests).toList());
        }

        @Override
        public void print(Page page) {
            page.heading("What waits, by day");
            if (rests.isEmpty()) {
                page.paragraph("Nothing waits.");
                return;
            }
            Table table = new Table()
                    .text("until")
                    .text("")
                    .text("batch")
                    .figure("number")
                    .text("");
            for (Rests each : rests) {
                table.row(
                        each.waiting().until().toString(),
                        each.waiting().what().name().toLowerCase(Locale.ROOT),
                        (each.number() == null ? "" : each.number() + " ") + each.title(),
                        "" + each.waiting().id(),
                        each.due() ? "ready" : "");
            }
            page.table(table);
        }
    }

    private static Table vesselTable(String batch, String title) {
        return new Table()
                .text(batch)
                .text(title)
                .text("vessel")
                .figure("volume")
                .figure("% vol")
                .figure("±")
                .figure("sugar, g/L")
                .figure("±");
    }

    private static void row(Table table, String number, String title, Vessel vessel) {
        Essentials essentials = vessel.held().essentials();
        table.row(
                number,
                title,
                vessel.name(),
                QuantityWords.metric(new Volume(essentials.millilitres())),
                Figure.decimals(essentials.strength(), 1),
                within(vessel, Asked.STRENGTH, 1),
                Figure.decimals(essentials.sugar(), 0),
                within(vessel, Asked.SUGAR, 0));
    }

    /** Returns the doubt of a figure, empty where it is not known. */
    private static String within(Vessel vessel, Asked asked, int decimals) {
        Double doubt = vessel.held().doubt().get(asked);
        return doubt == null ? "" : Figure.decimals(doubt, decimals);
    }
}

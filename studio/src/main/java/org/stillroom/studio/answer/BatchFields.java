package org.stillroom.studio.answer;

import static org.stillroom.core.liquid.Figure.ACIDITY;
import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.SUGAR;
import static org.stillroom.core.liquid.Figure.VOLUME_20C;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stillroom.core.batch.BottlePlan;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Held;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.safety.Keeping;
import org.stillroom.planner.shopping.Money;
import org.stillroom.studio.usecase.batch.LogBatch;
import org.stillroom.studio.usecase.batch.PlanBottling;
import org.stillroom.studio.usecase.batch.ShowBatch.Bottles;
import org.stillroom.studio.usecase.batch.ShowBatch.Line;
import org.stillroom.studio.usecase.batch.ShowBatch.Rests;
import org.stillroom.studio.usecase.batch.ShowBatch.Told;
import org.stillroom.studio.usecase.batch.ShowBatch.Vessel;
import org.stillroom.studio.usecase.batch.TellKeeping;
import org.stillroom.studio.usecase.batch.Waiting;

/** Batches, what waits and what is bottled, by their keys. */
public final class BatchFields {
    private BatchFields() {}

    /** Returns a batch with what is in its vessels. */
    public static Fields head(Told batch) {
        return new Fields()
                .put("id", batch.id())
                .putCount("number", batch.number())
                .put("title", batch.title())
                .put("recipe", batch.recipe())
                .put("make", batch.make())
                .put("made", batch.made().toString())
                .put("went_in", WentIn.fields(batch.sheet()))
                .put(
                        "vessels",
                        batch.vessels().stream().map(BatchFields::vessel).toList());
    }

    /** Returns a batch with its log besides. */
    public static Fields whole(Told batch) {
        return head(batch)
                .put("log", batch.log().stream().map(BatchFields::line).toList())
                .put("waits", batch.waits().stream().map(BatchFields::waiting).toList())
                .put(
                        "bottles",
                        batch.bottles().stream().map(BatchFields::bottling).toList());
    }

    private static Fields vessel(Vessel vessel) {
        Essentials essentials = vessel.held().essentials();
        Fields fields = new Fields()
                .put("vessel", vessel.name())
                .put("mass_g", vessel.held().grams())
                .put(VOLUME_20C.key(), essentials.millilitres())
                .put(STRENGTH.key(), essentials.strength())
                .put(SUGAR.key(), essentials.sugar())
                .put(ACIDITY.key(), essentials.acidity());
        analysed(fields.putOrNone("ph", vessel.held().ph()), vessel.held());
        fields.putOrNone("mean_age_days", vessel.meanDays());
        fields.putOrNone("youngest_days", vessel.youngestDays());
        Map<Asked, Double> doubt = vessel.held().doubt();
        fields.put(
                "doubt",
                new Fields()
                        .putOrNone(VOLUME_20C.key(), doubt.get(Asked.VOLUME))
                        .putOrNone(STRENGTH.key(), doubt.get(Asked.STRENGTH))
                        .putOrNone(SUGAR.key(), doubt.get(Asked.SUGAR))
                        .putOrNone(ACIDITY.key(), doubt.get(Asked.ACIDITY)));
        cost(fields, vessel.held().outlay());
        TellKeeping.Found keeps = vessel.keeps();
        return keeps == null ? fields : keeps(fields, keeps);
    }

    private static void analysed(Fields fields, Held held) {
        String found = held.analysed().told();
        if (found.isEmpty()) {
            fields.putNone("analysed");
        } else {
            fields.put("analysed", found);
        }
    }

    private static Fields keeps(Fields fields, TellKeeping.Found keeps) {
        Keeping keeping = keeps.keeping();
        fields.put("keeping_known", keeps.isKnown());
        Fields with = keeping == null ? fields.putNone("keeping") : fields.put("keeping", KeepingFields.of(keeping));
        return with.put("findings", FindingFields.of(keeps.findings()));
    }

    private static Fields cost(Fields fields, Outlay outlay) {
        List<Fields> sums = outlay.money().entrySet().stream()
                .map(sum -> PlanFields.money(new Money(sum.getKey(), sum.getValue())))
                .toList();
        return fields.put("cost", sums).put("cost_known", outlay.complete());
    }

    private static Fields line(Line line) {
        Fields typed = new Fields();
        line.typed().forEach((field, text) -> {
            if (LogBatch.FIELDS.contains(field)) { // a form may have been made to send others
                typed.put(field, text);
            }
        });
        Fields fields = new Fields()
                .putCount("entry", line.id())
                .put("at", line.at().toString())
                .put("kind", line.kind())
                .put("told", line.told())
                .put("typed", typed)
                .put("undone", line.undone());
        Long undoes = line.undoes();
        return undoes == null ? fields.putNone("undoes") : fields.putCount("undoes", undoes);
    }

    private static Fields waiting(Waiting waiting) {
        return new Fields()
                .putCount("wait", waiting.id())
                .put("what", waiting.what().name().toLowerCase(Locale.ROOT))
                .put("from", waiting.from().toString())
                .put("until", waiting.until().toString())
                .put("note", waiting.note());
    }

    private static Fields bottling(Bottles bottles) {
        Bottling bottling = bottles.bottling();
        Fields fields = new Fields()
                .putCount("first", bottling.first())
                .putCount("last", bottling.last())
                .put("each_ml", bottling.fill().millilitres())
                .put(STRENGTH.key(), bottling.each().essentials().strength())
                .put("at", bottling.at().toString());
        analysed(fields.putOrNone("ph", bottling.each().ph()), bottling.each());
        Instant pasteurised = bottling.pasteurised();
        fields =
                pasteurised == null ? fields.putNone("pasteurised") : fields.put("pasteurised", pasteurised.toString());
        cost(fields, bottling.each().outlay())
                .put("bottle_counted", bottling.fill().bottle() != null);
        return keeps(fields, bottles.keeps());
    }

    /** Returns what waits, with the batch that does. */
    public static Fields rests(Rests rests) {
        Waiting.Made make = rests.waiting().make();
        Fields fields = waiting(rests.waiting());
        Integer number = rests.number();
        if (number == null) {
            fields.putNone("batch").putNone("number");
        } else {
            fields.put("batch", rests.waiting().batch()).putCount("number", number);
        }
        return fields.put("make", make == null ? null : make.id())
                .put("title", rests.title())
                .put("due", rests.due());
    }

    /** Returns a plan of bottles. */
    public static Fields bottles(PlanBottling.Found found) {
        Fields fields = new Fields()
                .put("fills", found.typed())
                .putCount("first", found.first())
                .put("full", found.plan().full().stream().map(BatchFields::fill).toList());
        BottlePlan.Last last = found.plan().last();
        if (last == null) {
            fields.putNone("last");
        } else {
            fields.put("last", new Fields().put("size_ml", last.size()).put("filled_ml", last.millilitres()));
        }
        return fields.put("unfilled_ml", found.plan().unfilled())
                .put("part_of_batch", found.part())
                .put("sizes", found.rooms().stream().map(BatchFields::room).toList())
                .put("lots", found.typedLots());
    }

    private static Fields fill(Event.Fill fill) {
        return new Fields().putCount("count", fill.count()).put("each_ml", fill.millilitres());
    }

    private static Fields room(PlanBottling.Room room) {
        Fields fields = new Fields()
                .put("size_ml", room.size())
                .put("fill_to_ml", room.fillTo())
                .put("at_40c_ml", room.warmest());
        fields.putOrNone(
                "full_at_c",
                room.fullAt().isPresent() ? Double.valueOf(room.fullAt().getAsDouble()) : null);
        return cost(fields, room.cost()).put("bottle_counted", room.bottleCounted());
    }

    /** Returns the keys of all of a list. */
    public static Fields list(String key, List<Fields> rows) {
        return new Fields().put(key, rows);
    }
}

package org.stillroom.studio.answer;

import java.util.Locale;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.studio.usecase.learn.Learnt;
import org.stillroom.studio.usecase.learn.LearntDrop;
import org.stillroom.studio.usecase.learn.LearntLabel;

/** What batches tell of labels and droppers, by its keys. */
public final class LearntFields {
    private LearntFields() {}

    public static Fields of(Learnt learnt) {
        return new Fields()
                .putCount("batches", learnt.batches())
                .put("labels", learnt.labels().stream().map(LearntFields::label).toList())
                .put("drops", learnt.drops().stream().map(LearntFields::drop).toList())
                .putNumbers("left_out", learnt.leftOut());
    }

    private static Fields label(LearntLabel label) {
        boolean offered = label.standing() == LearntLabel.Standing.CLEAR;
        return new Fields()
                .put("ingredient", label.ingredient())
                .put("lot", label.lot())
                .put("figure", label.figure().field())
                .put("unit", label.figure().unit())
                .put("labelled", label.labelled())
                .put("found", interval(label.found()))
                .putCount("batches", label.batches())
                .put(
                        "standing",
                        label.standing().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("beyond_tolerance", label.beyondTolerance())
                .putTexts("cannot_be_told_from", label.orOf())
                .put("take", offered ? label.typed() : null);
    }

    private static Fields drop(LearntDrop drop) {
        return new Fields()
                .put("dropper", drop.dropper())
                .put("liquid", drop.liquid())
                .put("lot", drop.lot())
                .put("reckoned", drop.reckoned())
                .put("found", interval(drop.found()))
                .put("unit", drop.liquid() == null ? "times" : "g")
                .putCount("weighings", drop.weighings())
                .put("take", drop.isClear() && drop.lot() != null ? drop.typed() : null);
    }

    private static Fields interval(Interval interval) {
        return new Fields()
                .put("value", interval.value())
                .put("low", interval.low())
                .put("high", interval.high());
    }
}

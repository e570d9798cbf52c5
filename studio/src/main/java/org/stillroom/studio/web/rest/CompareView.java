package org.stillroom.studio.web.rest;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Offset;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.studio.usecase.batch.CompareBatches;
import org.stillroom.studio.usecase.batch.CompareBatches.Row;
import org.stillroom.studio.wording.Words;

/** Batches of one recipe side by side, in the words of their reader. */
public record CompareView(String title, CompareBatches.Found found, Words words) {
    /** What is compared. */
    public static final List<Asked> FIGURES = List.of(Asked.STRENGTH, Asked.SUGAR, Asked.VOLUME);

    private String figure(double value, Asked asked) {
        return words.number(value, asked == Asked.STRENGTH ? 1 : 0) + "\u00a0" + words.say("rest.unit." + asked.name());
    }

    public String planned(Row row, Asked asked) {
        @Nullable Essentials planned = row.planned();
        return planned == null ? "" : figure(Correction.of(asked, planned), asked);
    }

    public String poured(Row row, Asked asked) {
        return figure(Correction.of(asked, row.poured()), asked);
    }

    public String measured(Row row, Asked asked) {
        @Nullable Double value = row.measured().get(asked);
        @Nullable Double doubt = row.doubt().get(asked);
        String sure = doubt == null ? "" : " ± " + words.number(doubt, asked == Asked.STRENGTH ? 1 : 0);
        return value == null ? words.say("rest.notMeasured") : figure(value, asked) + sure;
    }

    public String cost(Row row) {
        return BatchView.cost(words, row.cost());
    }

    public String score(Row row) {
        return row.score().isPresent()
                ? words.say("rest.scored", words.plain(row.score().getAsDouble()))
                : "";
    }

    /** Returns what this kitchen does again and again, each with its doubt. */
    public List<String> learned() {
        List<String> learned = new ArrayList<>();
        for (Asked asked : FIGURES) {
            @Nullable Offset offset = found.offsets().get(asked);
            if (offset != null) {
                String key = !offset.isClear()
                        ? "rest.offset.none"
                        : offset.mean() > 0 ? "rest.offset.more" : "rest.offset.less";
                learned.add(words.say(
                        key,
                        words.say("rest.figure." + asked.name()),
                        figure(Math.abs(offset.mean()), asked),
                        words.number(offset.halfWidth(), asked == Asked.STRENGTH ? 1 : 0),
                        "" + offset.batches()));
            }
        }
        return learned;
    }
}

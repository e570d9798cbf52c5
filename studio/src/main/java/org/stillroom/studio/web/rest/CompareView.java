package org.stillroom.studio.web.rest;

import java.time.ZoneId;
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

    /** Part of a figure that tells it from another. */
    private static final double TELLING = 0.002;

    private String figure(double value, Asked asked) {
        return words.number(value, asked == Asked.STRENGTH ? 1 : 0) + "\u00a0"
                + words.say("rest.plainUnit." + asked.name());
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
        if (value == null) {
            return words.say("rest.notMeasured");
        }
        int decimals = asked == Asked.STRENGTH ? 1 : 0;
        String sure = doubt == null ? "" : " ± " + words.number(doubt, decimals);
        return words.number(value, decimals) + sure + "\u00a0" + words.say("rest.plainUnit." + asked.name());
    }

    /** Returns what the log made of a measured figure where that is not what was poured, since something was lost on the way. */
    public String reckoned(Row row, Asked asked) {
        @Nullable Double reckoned = row.reckoned().get(asked);
        double poured = Correction.of(asked, row.poured());
        return reckoned == null || Math.abs(reckoned - poured) < TELLING * poured
                ? ""
                : words.say("rest.reckonedThen", figure(reckoned, asked));
    }

    public String cost(Row row) {
        return BatchView.cost(words, row.cost());
    }

    /** A score and its day. */
    public record Score(String score, String day) {}

    /** Returns the scores over time, earliest first. */
    public List<Score> scores(Row row) {
        return row.scores().stream()
                .map(note -> new Score(
                        note.score() == null ? "" : words.plain(note.score()),
                        words.day(note.at().atZone(ZoneId.systemDefault()).toLocalDate())))
                .toList();
    }

    /** Returns the day on which a batch was made. */
    public String made(Row row) {
        return words.day(row.batch().made().atZone(ZoneId.systemDefault()).toLocalDate());
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

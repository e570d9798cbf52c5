package org.stillroom.studio.web.frame;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.studio.usecase.learn.Learnt;
import org.stillroom.studio.usecase.learn.LearntDrop;
import org.stillroom.studio.usecase.learn.LearntLabel;
import org.stillroom.studio.usecase.learn.LearntLabel.Figure;
import org.stillroom.studio.wording.Words;

/** What batches tell of labels and droppers, in the words of a reader. */
public final class LearntLines {
    private static final double MILLIGRAMS = 1000.0;

    private final Words words;

    public LearntLines(Words words) {
        this.words = words;
    }

    /**
     * A thing that is told.
     *
     * @param told in a sentence or two
     * @param field that a press would put right, or empty where nothing is offered
     * @param take what the button says, such as "Take 95.2 %"
     */
    public record Line(String told, String field, String take) {
        public boolean isOffered() {
            return !field.isEmpty();
        }
    }

    /** Returns what is told of a bottle. */
    public List<Line> ofBottle(Learnt learnt, String lot) {
        List<Line> lines = new ArrayList<>();
        for (LearntLabel label : learnt.labelsOf(lot)) {
            boolean offered = label.standing() == LearntLabel.Standing.CLEAR;
            lines.add(offered ? offer(label) : new Line(told(label), "", ""));
        }
        for (LearntDrop drop : learnt.dropsOf(lot)) {
            lines.add(drop.isClear() ? offer(drop) : new Line(told(drop), "", ""));
        }
        return lines;
    }

    /** Returns what is told, with the button that takes it. */
    public Line offer(LearntLabel label) {
        return new Line(told(label), label.figure().field(), take(words.marked(label.typed())));
    }

    /** Returns what is told, with the button that takes it. */
    public Line offer(LearntDrop drop) {
        return new Line(told(drop), "drop", take(words.marked(drop.typed())));
    }

    private String take(String what) {
        return words.say("rest.learnt.take", what);
    }

    /** Returns what is told of a label. */
    public String told(LearntLabel label) {
        Figure figure = label.figure();
        Interval found = label.found();
        String told = words.say(
                "rest.learnt." + label.standing().name() + (label.batches() == 1 ? ".one" : ""),
                label.ingredient(),
                words.say("rest.learnt.figure." + figure.name(), words.number(found.value(), figure.decimals())),
                words.number(found.halfWidth(), Math.max(1, figure.decimals())),
                "" + label.batches(),
                words.say("rest.learnt.figure." + figure.name(), words.number(label.labelled(), figure.decimals())));
        if (label.beyondTolerance()) {
            told += " " + words.say("rest.learnt.beyond");
        }
        return label.orOf().isEmpty()
                ? told
                : told + " " + words.say("rest.learnt.or", String.join(", ", label.orOf()));
    }

    /** Returns what is told of drops. */
    public String told(LearntDrop drop) {
        Interval found = drop.found();
        String count = "" + drop.weighings();
        if (drop.liquid() == null) {
            return words.say(
                    "rest.learnt.dropper",
                    drop.dropper(),
                    words.number(found.value(), 2),
                    words.number(found.halfWidth(), 2),
                    count);
        }
        return words.say(
                "rest.learnt.drop",
                drop.liquid(),
                drop.dropper(),
                words.number(MILLIGRAMS * found.value(), 1),
                words.number(MILLIGRAMS * found.halfWidth(), 1),
                count,
                words.number(MILLIGRAMS * drop.reckoned(), 1));
    }
}

package org.stillroom.studio.web.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.usecase.learn.Learnt;
import org.stillroom.studio.usecase.learn.LearntDrop;
import org.stillroom.studio.usecase.learn.LearntLabel;
import org.stillroom.studio.web.frame.LearntLines;
import org.stillroom.studio.wording.Words;

/**
 * All that batches tell of labels and droppers.
 *
 * @param names of the bottles on the shelf, by id
 */
public record LearntView(Learnt learnt, Map<String, String> names, Words words) {
    public LearntView {
        names = Map.copyOf(names);
    }

    public boolean isEmpty() {
        return learnt.labels().isEmpty() && learnt.drops().isEmpty();
    }

    /** Returns which batches fit nothing that the others say, in a sentence; empty as a rule. */
    public String leftOut() {
        return learnt.leftOut().isEmpty()
                ? ""
                : words.say(
                        "rest.learnt.leftOut",
                        String.join(
                                ", ",
                                learnt.leftOut().stream().map(String::valueOf).toList()));
    }

    public int batches() {
        return learnt.batches();
    }

    /** A bottle, and what is told of it. */
    public record Bottle(String lot, String name, List<LearntLines.Line> lines) {}

    /** What is told of whatever bottle, and of each. */
    public record Ingredient(String name, String told, boolean inRecipes, List<Bottle> bottles) {}

    public List<Ingredient> ingredients() {
        LearntLines lines = new LearntLines(words);
        List<Ingredient> all = new ArrayList<>();
        List<LearntLabel> labels = learnt.labels();
        for (int i = 0; i < labels.size(); i++) {
            LearntLabel label = labels.get(i);
            if (label.lot() == null) {
                List<Bottle> bottles = new ArrayList<>();
                for (int j = i + 1; j < labels.size(); j++) {
                    LearntLabel of = labels.get(j);
                    @Nullable String lot = of.lot();
                    if (lot == null) {
                        break;
                    }
                    boolean offered = of.standing() == LearntLabel.Standing.CLEAR;
                    bottles.add(bottle(lot, offered ? lines.offer(of) : told(lines.told(of))));
                }
                boolean clear = label.standing() == LearntLabel.Standing.CLEAR;
                all.add(new Ingredient(label.ingredient(), lines.told(label), clear, bottles));
            }
        }
        return all;
    }

    private static LearntLines.Line told(String told) {
        return new LearntLines.Line(told, "", "");
    }

    private Bottle bottle(String lot, LearntLines.Line line) {
        return new Bottle(lot, names.getOrDefault(lot, words.say("rest.learnt.bottleGone")), List.of(line));
    }

    public List<String> droppers() {
        LearntLines lines = new LearntLines(words);
        return learnt.drops().stream()
                .filter(drop -> drop.lot() == null)
                .map(lines::told)
                .toList();
    }

    public List<Bottle> drops() {
        LearntLines lines = new LearntLines(words);
        List<Bottle> all = new ArrayList<>();
        for (LearntDrop drop : learnt.drops()) {
            String lot = drop.lot();
            if (lot != null) {
                all.add(bottle(lot, drop.isClear() ? lines.offer(drop) : told(lines.told(drop))));
            }
        }
        return all;
    }
}

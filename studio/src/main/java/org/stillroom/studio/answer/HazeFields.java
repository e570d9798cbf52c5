package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.stillroom.core.clarity.OtherHazes;

/** What a haze may be as fields. */
public final class HazeFields {
    private HazeFields() {}

    /**
     * Returns what to look for, and what it most likely is.
     *
     * @param seen signs that are true of it, of {@link OtherHazes#asked()}
     */
    public static Fields of(Set<String> seen) {
        List<Fields> questions = new ArrayList<>();
        OtherHazes.asked()
                .forEach((sign, question) ->
                        questions.add(new Fields().put("sign", sign).put("question", question)));
        List<Fields> likely = new ArrayList<>();
        OtherHazes.likely(seen).forEach(haze -> likely.add(haze(haze)));
        return new Fields().put("questions", questions).put("likely", likely).put("findings", List.of());
    }

    private static Fields haze(OtherHazes.Haze haze) {
        List<Fields> ways = new ArrayList<>();
        haze.then().forEach(way -> ways.add(way(way)));
        return new Fields()
                .put("haze", haze.name())
                .putTexts("signs", haze.signs())
                .put("test", haze.test())
                .put("try_first", haze.tryFirst())
                .put("clarifying", ways)
                .put("status", haze.standing().label());
    }

    private static Fields way(OtherHazes.Way way) {
        return new Fields()
                .put("way", way.name())
                .put("takes_out", way.takesOut())
                .put("dose", way.dose())
                .put("wait", way.waiting())
                .put("loss_percent", way.lossPercent())
                .put("strength_after", way.strengthAfter())
                .put("allergens", way.allergens())
                .put("status", way.standing().label());
    }
}

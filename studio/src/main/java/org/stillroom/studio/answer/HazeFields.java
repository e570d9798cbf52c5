package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.clarity.Clarified;
import org.stillroom.core.clarity.Cream;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.studio.usecase.TellHaze;

/** What a haze may be, whether cream keeps, and what clarifying takes, as fields. */
public final class HazeFields {
    private HazeFields() {}

    public static Fields of(TellHaze.Found found) {
        List<Fields> questions = new ArrayList<>();
        OtherHazes.asked()
                .forEach((sign, question) ->
                        questions.add(new Fields().put("sign", sign).put("question", question)));
        Fields fields = new Fields()
                .put("questions", questions)
                .put("likely", found.likely().stream().map(HazeFields::haze).toList());
        if (found.cream() == null) {
            fields.putNone("cream");
        } else {
            fields.put("cream", cream(found.cream()));
        }
        if (found.clarified() == null) {
            fields.putNone("clarified");
        } else {
            fields.put("clarified", clarified(found.clarified()));
        }
        return fields.put("findings", FindingFields.of(found.findings()));
    }

    private static Fields haze(OtherHazes.Haze haze) {
        return new Fields()
                .put("haze", haze.name())
                .putTexts("signs", haze.signs())
                .put("test", haze.test())
                .put("try_first", haze.tryFirst())
                .put("clarifying", haze.then().stream().map(HazeFields::way).toList())
                .put("status", haze.standing().label());
    }

    private static Fields way(OtherHazes.Way way) {
        return new Fields()
                .put("way", way.name())
                .put("takes_out", way.takesOut())
                .put("unit", way.dose().unit())
                .put("least_per_l", way.dose().least())
                .put("most_per_l", way.dose().most())
                .put("how", way.how())
                .put("wait", way.waiting())
                .put("loss_percent", way.lossPercent())
                .put("allergens", way.allergens())
                .put("status", way.standing().label())
                .put("source", way.source());
    }

    private static Fields cream(Cream cream) {
        List<Fields> signs = cream.signs().stream()
                .map(sign -> new Fields()
                        .put("cause", sign.limit().cause().label())
                        .put("value", sign.value())
                        .put("unit", sign.limit().cause().unit())
                        .put("keeps_below", sign.limit().keepsBelow())
                        .put("breaks_from", sign.limit().breaksFrom())
                        .put("verdict", sign.keeping().label())
                        .put("why", sign.limit().why())
                        .put("remedy", sign.limit().remedy())
                        .put("status", sign.limit().standing().label()))
                .toList();
        return new Fields().put("verdict", cream.keeping().label()).put("causes", signs);
    }

    private static Fields clarified(Clarified clarified) {
        Fields fields = way(clarified.way())
                .put("volume_ml", clarified.volume().millilitres())
                .put("least", clarified.least())
                .put("most", clarified.most())
                .put("water_least_ml", clarified.leastWater())
                .put("water_most_ml", clarified.mostWater())
                .put("left_least_ml", clarified.leftAtLeast())
                .put("left_most_ml", clarified.leftAtMost());
        strength(fields, "strength_vol_percent", clarified.strength());
        strength(fields, "strength_after_least_vol_percent", clarified.afterLeast());
        strength(fields, "strength_after_most_vol_percent", clarified.afterMost());
        return fields;
    }

    private static void strength(Fields fields, String key, OptionalDouble percent) {
        if (percent.isPresent()) {
            fields.put(key, percent.getAsDouble());
        } else {
            fields.putNone(key);
        }
    }
}

package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.stillroom.core.safety.Amount;
import org.stillroom.core.safety.Range;
import org.stillroom.core.safety.Safety;
import org.stillroom.core.safety.Serving;

/** What is in a drink and what rules say of it, as fields; what is not known is null. */
public final class SafetyFields {
    private SafetyFields() {}

    /** Returns everything that is told. */
    public static Fields of(Safety safety) {
        Serving serving = safety.serving();
        List<Fields> substances = new ArrayList<>();
        for (Amount amount : safety.drink().amounts()) {
            substances.add(substance(amount, serving));
        }
        Fields fields = new Fields()
                .put("serving_ml", serving.millilitres())
                .put("servings_per_day", serving.perDay())
                .put("body_kg", serving.bodyKilograms())
                .putTexts(
                        "places",
                        serving.places().stream()
                                .map(place -> place.label())
                                .sorted()
                                .toList())
                .put("substances", substances);
        if (safety.keeping() != null) {
            fields.put("keeping", KeepingFields.of(safety.keeping()));
        }
        return fields.put(
                        "tables",
                        RulesFields.editions(safety.drink().knowledge().tables()))
                .put("findings", FindingFields.of(safety.findings()))
                .put("standing", Safety.STANDING);
    }

    private static Fields substance(Amount amount, Serving serving) {
        double served = serving.millilitres() / 1000.0;
        return new Fields()
                .put("name", amount.watched().name())
                .put("known", amount.isKnown())
                .put("mg_per_kg", range(amount, amount.perKilogram()))
                .put("mg_per_l", range(amount, amount.perLitre()))
                .put("mg_per_serving", range(amount, amount.perLitre().times(served)))
                .put("mg_per_day", range(amount, amount.perLitre().times(served * serving.perDay())))
                .put("known_part_max_mg_per_kg", amount.perKilogram().most())
                .putTexts("from", amount.from())
                .putTexts("not_known_from", amount.notKnownFrom())
                .putTexts("source_groups", amount.basis())
                .put("status", amount.status().mayClear() ? "read" : "from memory");
    }

    /** Where a part is not known, neither middle nor most is. */
    private static Fields range(Amount amount, Range range) {
        Fields fields = new Fields().put("min", range.least());
        if (amount.isKnown()) {
            return fields.put("typical", range.middle())
                    .put("max", range.most())
                    .put("typical_basis", Objects.requireNonNullElse(amount.analysis(), "middle of the range"));
        }
        return fields.putNone("typical").putNone("max").put("typical_basis", "not known");
    }
}

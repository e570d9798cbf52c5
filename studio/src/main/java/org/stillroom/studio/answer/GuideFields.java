package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.recipe.StartingPoints;
import org.stillroom.core.reference.Source;

/** Figures to start from as fields. */
public final class GuideFields {
    private GuideFields() {}

    public static Fields all() {
        List<Fields> rows = new ArrayList<>();
        for (StartingPoints.Row row : StartingPoints.rows()) {
            rows.add(new Fields()
                    .put("of", row.of().label())
                    .put("kind", row.kind())
                    .put("range", row.words())
                    .put("status", Source.TRADE.standing().label()));
        }
        return new Fields().put("starting_points", rows).put("findings", List.of());
    }
}

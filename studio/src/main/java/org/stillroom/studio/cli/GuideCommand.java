package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.recipe.StartingPoints;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;

/** Shows figures to start from. */
final class GuideCommand extends Subcommand {
    @Override
    protected Answer answer(Workings workings) {
        return new Guide();
    }

    private record Guide() implements Answer {
        @Override
        public Fields fields() {
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

        @Override
        public void print(Page page) {
            page.heading("Figures to start from: " + Source.TRADE.standing().label());
            Table table = new Table().text("").text("kind of liqueur").text("usual at 20 °C");
            for (StartingPoints.Row row : StartingPoints.rows()) {
                table.row(row.of().label(), row.kind(), row.words());
            }
            page.table(table);
        }
    }
}

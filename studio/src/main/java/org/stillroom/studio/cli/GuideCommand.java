package org.stillroom.studio.cli;

import org.stillroom.core.recipe.StartingPoints;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.GuideFields;

/** Shows figures to start from. */
final class GuideCommand extends Subcommand {
    @Override
    protected Answer answer(Workings workings) {
        return new Guide();
    }

    private record Guide() implements Answer {
        @Override
        public Fields fields() {
            return GuideFields.all();
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

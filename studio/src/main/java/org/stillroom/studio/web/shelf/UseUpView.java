package org.stillroom.studio.web.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.leftovers.UseUp;
import org.stillroom.studio.usecase.left.CouldMake;
import org.stillroom.studio.usecase.left.PlanUseUp;
import org.stillroom.studio.wording.Words;

/**
 * A liqueur that uses several extracts up, as its page shows it.
 *
 * @param found null when there is none
 * @param problems why not
 */
public record UseUpView(Words words, PlanUseUp.Outcome.@Nullable Found found, List<Finding> problems) {
    public UseUpView {
        problems = List.copyOf(problems);
    }

    /**
     * A line of it.
     *
     * @param perLitre dose per litre of the liqueur, empty where it is no extract
     * @param part of what is left, in words, empty where it is no extract
     */
    public record Row(String name, String amount, String mass, String perLitre, String part) {}

    private PlanUseUp.Outcome.Found there() {
        return Objects.requireNonNull(found);
    }

    public String heading() {
        UseUp useUp = there().useUp();
        long whole = useUp.used().stream()
                .filter(each -> each.part() > CouldMake.ALMOST_ALL)
                .count();
        return words.say(
                useUp.isAll() ? "left.usesAll" : "left.usesPart",
                words.amount(new Volume(useUp.plan().millilitres())),
                words.say("left.emptied", "" + whole, "" + (useUp.used().size() - whole)));
    }

    public List<Row> rows() {
        UseUp useUp = there().useUp();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < useUp.plan().lines().size(); i++) {
            PlannedLine line = useUp.plan().lines().get(i);
            boolean extract = i < useUp.used().size();
            rows.add(new Row(
                    line.name(),
                    line.millilitres().isPresent()
                            ? words.amount(new Volume(line.millilitres().getAsDouble()))
                            : "",
                    words.amount(new Mass(line.grams())),
                    extract
                            ? words.say(
                                    "left.perLitre",
                                    words.marked(QuantityWords.figures(
                                            useUp.used().get(i).perLitre())))
                            : "",
                    extract
                            ? words.say(
                                    "left.part",
                                    words.marked(useUp.used().get(i).percent()))
                            : ""));
        }
        return rows;
    }

    public String text() {
        return there().text();
    }

    public List<Finding> findings() {
        return there().findings();
    }
}

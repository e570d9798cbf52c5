package org.stillroom.studio.web.triangle;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.mixing.PlanClarity;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Reach;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Contours;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Outline;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.stillroom.core.triangle.Spot;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.SketchFields;
import org.stillroom.studio.web.triangle.TriangleView.Which;
import org.stillroom.studio.wording.Words;

/** Draws the triangle of one plan, or of one liquid. */
final class TriangleDrawing {
    private final Contents liquid;
    private final Spot spot;
    private final Reading reading;
    private final Plate plate;
    private final Contours contours;
    private final Outline reach;
    private final List<Corner> border;
    private final String numbers;

    /** Takes a recipe that a hand may move. */
    TriangleDrawing(Plan plan) {
        this(PlanClarity.liquid(plan), Sketch.of(plan));
    }

    private TriangleDrawing(Contents liquid, Sketch sketch) {
        this(liquid, sketch.sugarBasis(), border(sketch), Json.of(SketchFields.of(sketch)));
    }

    /** Takes a liquid that stays where it is. */
    TriangleDrawing(Contents liquid, SugarBasis basis) {
        this(liquid, basis, Map.of(), "");
    }

    private TriangleDrawing(Contents liquid, SugarBasis basis, Map<Spot, Reading> found, String numbers) {
        this.liquid = liquid;
        this.numbers = numbers;
        Company company = Company.of(liquid, basis);
        this.spot = Company.spot(liquid);
        this.reading = company.reading(spot);
        this.plate = Plate.showing(spot);
        this.contours = new Contours(company, plate);
        this.reach = Outline.around(List.copyOf(found.keySet())).within(plate);
        this.border = reach.spots().stream()
                .map(at -> new Corner(found.getOrDefault(at, company.reading(at)), at))
                .toList();
    }

    private static Map<Spot, Reading> border(Sketch sketch) {
        Map<Spot, Reading> found = new HashMap<>();
        for (Contents at : Reach.border(sketch)) {
            Spot place = Company.spot(at);
            found.put(place, Company.of(at, sketch.sugarBasis()).reading(place));
        }
        return found;
    }

    /** A place at the border of what can be reached and is shown; where the plate cuts it off, with the recipe's own company. */
    private record Corner(Reading reading, Spot spot) {}

    TriangleView view(Words words) {
        return new TriangleView(
                words,
                plate,
                plate.outline(plate.frame()),
                lines(contours.strengths()),
                lines(contours.sugars()),
                reach.spots().size() > 1 ? plate.outline(reach.spots()) : "",
                reach.spots().size() > 2,
                new TriangleView.Here(plate.place(spot), reading, spot, Company.rest(liquid)),
                plate.line(contours.sightOfStrength(reading).spots()),
                plate.line(contours.sightOfSugar(reading).spots()),
                plate.place(contours.sightOfStrength(reading).foot()),
                plate.place(contours.sightOfSugar(reading).foot()),
                range(),
                HazeShade.of(liquid, plate),
                rows(),
                numbers);
    }

    private List<TriangleView.Line> lines(List<Contours.Contour> found) {
        return found.stream()
                .map(each -> new TriangleView.Line(each.value(), plate.line(each.spots()), plate.place(each.foot())))
                .toList();
    }

    private boolean mayMove() {
        return border.size() > 1;
    }

    private TriangleView.@Nullable Range range() {
        if (!mayMove()) {
            return null;
        }
        return new TriangleView.Range(
                least(Reading::strength).reading().strength(),
                most(Reading::strength).reading().strength(),
                least(Reading::sugar).reading().sugar(),
                most(Reading::sugar).reading().sugar());
    }

    private Corner most(ToDoubleFunction<Reading> figure) {
        return Collections.max(border, Comparator.comparingDouble(each -> figure.applyAsDouble(each.reading())));
    }

    private Corner least(ToDoubleFunction<Reading> figure) {
        return Collections.min(border, Comparator.comparingDouble(each -> figure.applyAsDouble(each.reading())));
    }

    private List<TriangleView.Row> rows() {
        if (!mayMove()) {
            return List.of();
        }
        return List.of(
                row(Which.STRONGEST, most(Reading::strength)),
                row(Which.WEAKEST, least(Reading::strength)),
                row(Which.SWEETEST, most(Reading::sugar)),
                row(Which.LEAST_SWEET, least(Reading::sugar)));
    }

    private static TriangleView.Row row(Which which, Corner corner) {
        return new TriangleView.Row(which, corner.reading(), corner.spot());
    }
}

package org.stillroom.planner.marks;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** Reads the mark to which a vessel is made up: the volume is what is measured, the grams of the line follow. */
final class ToTheMark {
    /** How far the mark of a vessel of which nothing is known may be wrong, part of it: our own estimate. */
    private static final double UNKNOWN_MARK = 0.01;

    /** Part of the volume from which on the room's temperature is worth a word. */
    private static final double WORTH_SAYING = 0.001;

    private final Plan plan;
    private final Bench bench;
    private final List<Finding> findings;

    ToTheMark(Plan plan, Bench bench, List<Finding> findings) {
        this.plan = plan;
        this.bench = bench;
        this.findings = findings;
    }

    MeasuredLine measured(int index, Temperature room, double grams) {
        PlannedLine line = plan.lines().get(index);
        String where = "line " + (index + 1) + ", " + line.name();
        sayWhatTheRoomDoes(where, room);
        Graduated vessel = vessel(line);
        double tolerance = vessel == null
                ? UNKNOWN_MARK * plan.millilitres()
                : Math.max(vessel.tolerance().fixed(), vessel.tolerance().part() * plan.millilitres());
        if (vessel != null && vessel.holds() < plan.millilitres() * (1.0 - 1e-9)) {
            findings.add(tooSmall(where, vessel));
        }
        String name = vessel == null ? "vessel" : vessel.name();
        Reading reading = Reading.offTheMarks(new Volume(plan.millilitres()), name, mark(), Reading.Manner.TO_THE_MARK);
        double density = line.ingredient().gramsPerMillilitre().orElse(1.0);
        Source source = vessel == null ? Source.USUAL_TOLERANCES : vessel.source();
        return new MeasuredLine(line, reading, grams, tolerance * density, source);
    }

    private String mark() {
        Typed<Span> asked = plan.recipe().target().volume();
        return asked != null && asked.value().isExact()
                ? asked.text()
                : QuantityWords.metric(new Volume(plan.millilitres()));
    }

    private @Nullable Graduated vessel(PlannedLine line) {
        String with = line.line().with();
        Instrument named = with == null ? null : bench.named(with);
        if (named instanceof Graduated graduated && !graduated.weighs()) {
            return graduated;
        }
        for (Instrument instrument : bench.instruments()) {
            if (instrument instanceof Graduated glass
                    && !glass.weighs()
                    && glass.holds() < Double.POSITIVE_INFINITY
                    && glass.holds() >= plan.millilitres() * (1.0 - 1e-9)) {
                return glass;
            }
        }
        return null;
    }

    private Finding tooSmall(String where, Graduated vessel) {
        return Finding.of(
                "mark-not-on-measure",
                Severity.CAUTION,
                where,
                "does not hold it",
                vessel.name() + " holds " + QuantityWords.metric(new Volume(vessel.holds())) + ", and "
                        + QuantityWords.metric(new Volume(plan.millilitres())) + " are to be made up in it.",
                "Make up in a vessel with that mark, or make less.");
    }

    private void sayWhatTheRoomDoes(String where, Temperature room) {
        double there = VolumeModel.at(room).millilitres(plan.liquid().toGrams());
        if (Math.abs(there / plan.millilitres() - 1.0) > WORTH_SAYING) {
            findings.add(Finding.of(
                    "mark-at-room-temperature",
                    Severity.NOTE,
                    where,
                    "warm or cold",
                    "The mark is meant at 20 °C; at " + QuantityWords.plain(room.celsius())
                            + " °C the same liquid fills " + QuantityWords.fixed(there, 1) + " mL.",
                    "Make up at 20 °C, or fill to that volume."));
        }
    }
}

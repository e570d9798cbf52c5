package org.stillroom.studio.answer.desk;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.GaugeVessel;

/** Finds what is in a vessel from whatever was read of it, and from what was poured where that is known. */
public final class GaugeQuestion extends DeskQuestion {
    private final @Nullable Poured poured;

    /** @param poured what is known of it before it is read, or null */
    public GaugeQuestion(@Nullable Poured poured) {
        this.poured = poured;
    }

    @Override
    public String name() {
        return "gauge";
    }

    @Override
    public String summary() {
        return "What is in the vessel, and how sure, from whatever was read of it and from what was poured.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                several("density", "measured, such as 1.0423g/ml or \"SG 1.045\"; behind @ its own temperature"),
                several(
                        "hydrometer",
                        "what it shows: \"SG 1.045\", \"SG 1.045 60/60\", 12Bx, \"12 Plato\", \"6 Baumé\", 25% or 50proof"),
                Part.text(
                        "reference",
                        "temperature that the hydrometer is marked for: 20C, 15C or 60F (default: 20C, of Baumé and proof 60F)"),
                Part.text(ScaleText.GLASS, "of the hydrometer: soda-lime or borosilicate (default: soda-lime)"),
                several("refractometer", "what it shows: 31.5Bx, or an index such as \"n 1.3812\""),
                new Part("compensated", "the refractometer corrects for temperature by itself", null, Part.Form.FLAG),
                Part.text("flask", "volume of a flask that was filled and weighed, such as 50ml"),
                several("flask-weight", "weight of what was in it as the scale shows it, such as 51.9g"),
                several("residue", "density at 20 °C of the residue made up again to its volume, such as 1.0671g/ml"),
                several("dry-residue", "weight of a dried sample per litre, such as 165g/L"),
                several("strength", "of a distilled sample or by the label, such as 28%"),
                several("sugar", "by a method of its own or by the label, such as 180g/L"),
                several("acidity", "titrated, as citric acid, such as 4g/L"),
                several("volume", "of the whole batch, such as 1.95L"),
                several("mass", "of the whole batch without its vessel, such as 2.03kg"),
                Part.usual("temperature", "20C", "of the liquid when it was read, −20 to 40 °C"),
                new Part(
                        OwnErrors.WITHIN,
                        "how far your own instrument may be off, in the unit that it shows (of a flask mL), such as"
                                + " refractometer=0.1 or, for all readings in common, temperature=0.5C; may be repeated",
                        null,
                        Part.Form.NAMED_TEXTS),
                new Part(
                        OwnErrors.OFFSET,
                        "what it shows too much, as calibrate tells it, such as hydrometer=0.002; may be repeated",
                        null,
                        Part.Form.NAMED_TEXTS));
    }

    private static Part several(String name, String description) {
        return new Part(name, description + "; may be repeated", null, Part.Form.TEXTS_AS_TYPED);
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("density", "1.0423g/ml"),
                new Manner.Given("temperature", "22C"),
                new Manner.Given("refractometer", "31.5Bx"));
    }

    @Override
    public List<String> figures() {
        return GaugedTold.FIGURES;
    }

    @Override
    public List<String> spans() {
        return GaugedTold.SPANS;
    }

    @Override
    public List<Shape.Key> further() {
        return GaugedTold.FURTHER;
    }

    /** What was read, what was found from it, and what was put right or taken for granted. */
    public record Found(List<Reading> readings, Gauged gauged, List<Finding> notes) {
        public Found {
            readings = List.copyOf(readings);
            notes = List.copyOf(notes);
        }
    }

    /**
     * Returns what is in the vessel.
     *
     * @param typed texts by the names of the parts
     * @throws WrongInput when it cannot be told because of what was typed
     */
    public Found found(Map<String, List<String>> typed, Manner manner) {
        AskedTexts asked = new AskedTexts(parts(), typed, manner, new Objections());
        return ask(asked, () -> found(asked, Workings.NONE));
    }

    private Found found(AskedTexts asked, Workings workings) {
        ReadingTexts texts = new ReadingTexts(asked);
        List<Reading> readings = texts.readings();
        Thermometer thermometer = texts.thermometer();
        if (readings.isEmpty() && poured == null) {
            asked.object(
                    "",
                    "nothing was read.",
                    "Give two readings at least, such as "
                            + asked.write("density", "1.0423g/ml", "refractometer", "31.5Bx") + ".");
        }
        asked.refuseIfAnyWrong();
        Gauged gauged = GaugeVessel.answer(new GaugeVessel.Asked(readings, thermometer, poured), workings);
        return new Found(readings, gauged, asked.assumed());
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Found found = found(asked, workings);
        return GaugedTold.told("What is in the vessel", found.gauged(), found.readings());
    }
}

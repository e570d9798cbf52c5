package org.stillroom.page;

import org.stillroom.core.plan.Sketch;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Contours;
import org.stillroom.core.triangle.Drag;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.stillroom.core.triangle.Spot;
import org.teavm.jso.JSObject;
import org.teavm.jso.JSProperty;
import org.teavm.jso.core.JSObjects;

/** What a page shows once the point has moved: figures, amounts of each line in grams, shares by mass, and lines to draw. */
interface MovedPoint extends JSObject {
    /** What to write as the target, % vol. */
    @JSProperty
    void setAskedStrength(double percent);

    /** What to write as the target, g/L. */
    @JSProperty
    void setAskedSugar(double gramsPerLitre);

    @JSProperty
    void setStrength(double percent);

    @JSProperty
    void setSugar(double gramsPerLitre);

    @JSProperty
    void setMillilitres(double millilitres);

    /** Whether the hand wanted to go farther than the lines can. */
    @JSProperty
    void setHeld(boolean held);

    /** Whether all that is asked is met, the volume too. */
    @JSProperty
    void setReached(boolean reached);

    /** Of the finished liquid, g. */
    @JSProperty
    void setMass(double grams);

    /** Of each line. */
    @JSProperty
    void setGrams(double[] grams);

    /** Of each line, mL at 20 °C; NaN for what is weighed as a solid. */
    @JSProperty
    void setVolumes(double[] millilitres);

    /** Grams of each substance in the liquid, to give back with the next move. */
    @JSProperty
    void setLiquid(double[] grams);

    @JSProperty
    void setEthanolShare(double share);

    @JSProperty
    void setSugarShare(double share);

    @JSProperty
    void setWaterShare(double share);

    /** Where the point is drawn, as "x y". */
    @JSProperty
    void setPlace(String place);

    @JSProperty
    void setSightOfStrength(String path);

    @JSProperty
    void setSightOfSugar(String path);

    /** Where the strength is written at the edge, as "x y". */
    @JSProperty
    void setTagOfStrength(String place);

    @JSProperty
    void setTagOfSugar(String place);

    /** Returns what to show of a move. */
    static MovedPoint of(Sketch sketch, Plate plate, Drag.Moved moved) {
        MovedPoint point = JSObjects.create();
        Spot spot = moved.spot();
        point.setAskedStrength(moved.asked().strength());
        point.setAskedSugar(moved.asked().sugar());
        point.setStrength(moved.reading().strength());
        point.setSugar(moved.reading().sugar());
        point.setMillilitres(moved.answer().millilitres());
        point.setHeld(moved.held());
        point.setReached(moved.answer().reached());
        point.setMass(moved.answer().liquid().total());
        amounts(point, sketch, moved.answer());
        point.setLiquid(moved.answer().liquid().toGrams());
        point.setEthanolShare(spot.ethanol());
        point.setSugarShare(spot.sugar());
        point.setWaterShare(spot.water());
        point.setPlace(plate.place(spot).toString());
        sights(point, new Contours(Company.of(moved.answer().liquid(), sketch.sugarBasis()), plate), moved.reading());
        return point;
    }

    private static void amounts(MovedPoint point, Sketch sketch, Sketch.Answer answer) {
        double[] grams = new double[answer.grams().size()];
        double[] volumes = new double[grams.length];
        for (int i = 0; i < grams.length; i++) {
            grams[i] = answer.grams().get(i);
            volumes[i] = sketch.lines().get(i).millilitres(grams[i]).orElse(Double.NaN);
        }
        point.setGrams(grams);
        point.setVolumes(volumes);
    }

    private static void sights(MovedPoint point, Contours contours, Reading reading) {
        Contours.Contour strength = contours.sightOfStrength(reading);
        Contours.Contour sugar = contours.sightOfSugar(reading);
        Plate plate = contours.plate();
        point.setSightOfStrength(plate.line(strength.spots()));
        point.setSightOfSugar(plate.line(sugar.spots()));
        point.setTagOfStrength(plate.place(strength.foot()).toString());
        point.setTagOfSugar(plate.place(sugar.foot()).toString());
    }
}

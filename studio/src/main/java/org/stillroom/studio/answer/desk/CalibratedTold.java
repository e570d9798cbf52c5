package org.stillroom.studio.answer.desk;

import java.util.List;
import org.stillroom.core.gauging.Calibrated;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.answer.desk.CalibrateQuestion.Calibration;

/** Tells what a calibration came to, and how to use it. */
final class CalibratedTold {
    private static final String OFFSET = "offset";
    private static final String WITHIN = "within";
    private static final String VOLUME = "flask_ml";
    private static final String DROP = "drop_mass_mg";

    static final List<String> FIGURES = List.of(OFFSET, WITHIN, VOLUME, DROP);

    private CalibratedTold() {}

    static Told told(Calibration calibration, AskedTexts asked) {
        Told told = calibration.told().equals(CalibrateQuestion.DROPS)
                ? ofDropper(calibration, asked)
                : ofOffset(calibration, asked);
        return told.doubtingReadings().findings(calibration.found().findings());
    }

    private static Told ofDropper(Calibration calibration, AskedTexts asked) {
        Calibrated drop = calibration.found().calibrated();
        return new Told("Calibrating a dropper")
                .put(
                        new Name(DROP, "a drop of water weighs", calibration.unit(), calibration.decimals()),
                        new Estimate(drop.value(), drop.halfWidth()))
                .section(
                        "To dose with it",
                        List.of(asked.write("water-drop", number(drop.value(), calibration.decimals()) + "mg")));
    }

    private static Told ofOffset(Calibration calibration, AskedTexts asked) {
        String part = calibration.told();
        int decimals = calibration.decimals();
        Calibrated calibrated = calibration.found().calibrated();
        double doubt = calibrated.doubt();
        boolean ofFlask = part.equals(CalibrateQuestion.FLASK);
        Told told = new Told(
                "Calibrating a " + (part.equals(CalibrateQuestion.TEMPERATURE) ? CalibrateQuestion.THERMOMETER : part));
        if (ofFlask) {
            told.put(new Name(VOLUME, "it holds", "mL at 20 °C", decimals), new Estimate(calibrated.value(), doubt));
        }
        double offset = calibration.found().offset();
        double within = calibration.found().within();
        String too = ofFlask ? "its mark says too much" : "it shows too much";
        return told.put(
                        new Name(OFFSET, too, calibration.unit(), decimals),
                        new Estimate(offset, doubt),
                        DoubtWord.NONE)
                .put(
                        new Name(WITHIN, "with that taken off it is right within", calibration.unit(), decimals),
                        new Estimate(within, 0.0),
                        DoubtWord.NONE)
                .section(
                        "To gauge with it",
                        List.of(asked.write(
                                OFFSET,
                                part + "=" + number(offset, decimals),
                                WITHIN,
                                part + "=" + number(within, decimals))));
    }

    private static String number(double value, int decimals) {
        return QuantityWords.fixed(value, decimals).replace('−', '-');
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.liquid.StrengthFromDensity.Weighed;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Reads what instruments showed, each with its temperature where one stands behind it: "31.5Bx @ 18C". */
final class ReadingTexts {
    /** Half of the last mark of a kitchen scale of 0.1 g, and how far a flask may be off its mark; from memory. */
    private static final double SCALE_GRAMS = 0.05;

    private static final double FLASK_PART = 0.001;

    private final AskedTexts asked;
    private final OwnErrors own;
    private final ScaleText scales;
    private final Temperature temperature;
    private final List<Reading> readings = new ArrayList<>();
    private final Set<String> restatedOnce = new TreeSet<>();

    ReadingTexts(AskedTexts asked) {
        this.asked = asked;
        VolumeBasis basis = asked.basis();
        this.own = new OwnErrors(asked, basis);
        this.scales = new ScaleText(asked, basis);
        Temperature read = asked.temperature().orElse(Temperature.TWENTY_CELSIUS);
        this.temperature = asked.isTyped("temperature") ? own.corrected(read) : read; // a usual one was read by nobody
    }

    /** Returns the thermometer that all temperatures were read by: as it is known, else as a kitchen has one. */
    Thermometer thermometer() {
        return own.thermometer();
    }

    /** Returns what was read. */
    List<Reading> readings() {
        for (String part : List.of("reference", ScaleText.GLASS)) {
            if (asked.isTyped(part) && !asked.has("hydrometer")) {
                asked.object(part, "only a hydrometer has one.", "Leave " + asked.name(part) + " out.");
            }
        }
        take("density", Shown.DENSITY, TEXT::density, Density::kilogramsPerCubicMetre);
        flask();
        hydrometer();
        refractometer();
        take("residue", Shown.RESIDUE_DENSITY, TEXT::density, Density::kilogramsPerCubicMetre);
        take("dry-residue", Shown.DRY_RESIDUE, TEXT::share, share -> perLitre("dry-residue", share));
        take("strength", Shown.TRUE_STRENGTH, TEXT::percent, Double::doubleValue);
        take("sugar", Shown.TRUE_SUGAR, TEXT::share, share -> perLitre("sugar", share));
        take("acidity", Shown.ACIDITY, TEXT::share, share -> perLitre("acidity", share));
        take("volume", Shown.VOLUME, TEXT::volume, Volume::millilitres);
        take("mass", Shown.MASS, TEXT::mass, Mass::grams);
        return List.copyOf(readings);
    }

    private double perLitre(String part, Object share) {
        if (share instanceof MassConcentration concentration) {
            return concentration.gramsPerLitre();
        }
        asked.object(part, asked.text(part) + " is not per litre.", "Write g/L, such as 165 g/L.");
        return 0.0;
    }

    private <Q> void take(
            String part, Shown shown, Function<String, Understanding<Q>> reader, Function<Q, Double> value) {
        for (String text : asked.texts(part)) {
            asked.read(part, before(text), reader)
                    .map(value)
                    .ifPresent(number -> add(part, shown, number, at(part, text)));
        }
    }

    private void add(String part, Shown shown, double read, Temperature at) {
        double value = own.corrected(part, shown.unit(), shown, read);
        double half = own.within(part, shown.unit(), shown).orElse(shown.usualHalfWidth(value));
        if (!(half > 0.0)) {
            asked.object(part, "nothing was measured: it is " + asked.text(part) + ".", "Leave it out.");
            return;
        }
        readings.add(new Reading(shown, value, at, half));
    }

    /** Adds what a hydrometer or refractometer showed, put right in its own marks and then restated to the usual instrument. */
    private void add(String part, ScaleText.OnScale read, Temperature at) {
        Shown shown = read.shown();
        double value = own.corrected(part, shown.unit(), shown, read.value());
        double half = own.within(part, shown.unit(), shown).orElse(shown.usualHalfWidth(value));
        double restated = new ScaleText.OnScale(shown, value, read.stem()).restated(at);
        if (restated != value && restatedOnce.add(part + value)) {
            asked.note(Finding.of(
                    "reading-restated",
                    Severity.NOTE,
                    asked.name(part),
                    "restated",
                    "A hydrometer of " + read.stem().glass().label() + " glass marked for "
                            + QuantityWords.plain(
                                    Math.round(10.0 * read.stem().markedFor().celsius()) / 10.0)
                            + "\u00a0°C that shows " + QuantityWords.fixed(value, shown.decimals())
                            + " is as good as a usual one that shows "
                            + QuantityWords.fixed(restated, shown.decimals()) + "\u00a0" + shown.unit() + ".",
                    ""));
        }
        readings.add(new Reading(shown, restated, at, half));
    }

    private void add(String part, String text, Optional<ScaleText.OnScale> read) {
        Temperature at = at(part, text);
        read.ifPresent(each -> add(part, each, at));
    }

    private static String before(String text) {
        int at = text.indexOf('@');
        return at < 0 ? text : text.substring(0, at).strip();
    }

    private Temperature at(String part, String text) {
        int at = text.indexOf('@');
        return at < 0
                ? temperature
                : asked.read(part, text.substring(at + 1).strip(), TEXT::temperature)
                        .map(own::corrected)
                        .orElse(temperature);
    }

    private void flask() {
        if (!asked.has("flask") && !asked.has("flask-weight")) {
            return;
        }
        Optional<Volume> flask = asked.read("flask", TEXT::volume);
        if (!asked.has("flask") || !asked.has("flask-weight")) {
            asked.object(
                    asked.has("flask") ? "flask-weight" : "flask",
                    "a weighed flask needs its volume and the weight of what is in it.",
                    "Give both, such as " + asked.write("flask", "50ml", "flask-weight", "51.9g") + ".");
            return;
        }
        for (String text : asked.texts("flask-weight")) {
            Temperature at = at("flask-weight", text);
            Optional<Mass> weight = asked.read("flask-weight", before(text), TEXT::mass);
            if (flask.isPresent() && weight.isPresent()) {
                weighed(flask.get(), weight.get(), at);
            }
        }
    }

    private void weighed(Volume flask, Mass weight, Temperature at) {
        if (!(flask.millilitres() > 0.0) || !(weight.grams() > 0.0)) {
            asked.object(
                    "flask", "there is nothing in the flask.", "Give its volume and the weight without the flask.");
            return;
        }
        double millilitres = own.corrected("flask", "mL", Shown.VOLUME, flask.millilitres());
        double grams = own.corrected("flask-weight", "g", Shown.MASS, weight.grams());
        double density = new Weighing(new Mass(grams), new Volume(millilitres), Weighed.IN_AIR).density();
        double ofScale = own.within("flask-weight", "g", Shown.MASS).orElse(SCALE_GRAMS) / grams;
        double ofFlask = own.within("flask", "mL", Shown.VOLUME)
                .map(half -> half / millilitres)
                .orElse(FLASK_PART);
        readings.add(new Reading(Shown.DENSITY, density, at, density * (ofScale + ofFlask)));
    }

    private void hydrometer() {
        for (String text : asked.texts("hydrometer")) {
            add("hydrometer", text, scales.hydrometer("hydrometer", before(text)));
        }
    }

    private void refractometer() {
        for (String text : asked.texts("refractometer")) {
            add("refractometer", text, scales.refractometer("refractometer", before(text)));
        }
    }
}

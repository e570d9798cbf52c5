package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.liquid.StrengthFromDensity.Weighed;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;

/** Reads what instruments showed, each with its temperature where one stands behind it: "31.5Bx @ 18C". */
final class ReadingTexts {
    /** A number, then what scale it is on. */
    private static final Pattern ON_SCALE = Pattern.compile("(?i)^(n[Dd]?|sg)?\\s*([-−+.,0-9]+)\\s*(.*)$");
    /** Half of the last mark of a kitchen scale of 0.1 g, and how far a flask may be off its mark; from memory. */
    private static final double SCALE_GRAMS = 0.05;

    private static final double FLASK_PART = 0.001;

    private final AskedTexts asked;
    private final Temperature temperature;
    private final List<Reading> readings = new ArrayList<>();

    ReadingTexts(AskedTexts asked) {
        this.asked = asked;
        this.temperature = asked.temperature().orElse(Temperature.TWENTY_CELSIUS);
    }

    /** Returns what was read. */
    List<Reading> readings() {
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

    private void add(String part, Shown shown, double value, Temperature at) {
        Optional<Double> own = within(part, shown);
        double half = own.orElse(shown.usualHalfWidth(value));
        if (!(half > 0.0)) {
            asked.object(part, "nothing was measured: it is " + asked.text(part) + ".", "Leave it out.");
            return;
        }
        readings.add(new Reading(shown, value, at, half));
    }

    /** Returns how far the maker's own instrument may be off, in the unit that it shows. */
    private Optional<Double> within(String part, Shown shown) {
        for (String text : asked.texts("within")) {
            int sign = text.indexOf('=');
            if (sign > 0 && text.substring(0, sign).strip().equals(part)) {
                Optional<Double> number =
                        asked.read("within", text.substring(sign + 1).strip(), TEXT::number);
                return number.filter(half -> isPossible(half, shown));
            }
        }
        return Optional.empty();
    }

    private boolean isPossible(double half, Shown shown) {
        if (half > 0.0) {
            return true;
        }
        asked.object("within", "no instrument is exact.", "Give how far it may be off, in " + shown.unit() + ".");
        return false;
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
                        .orElse(temperature);
    }

    private void flask() {
        if (!asked.has("flask") && !asked.has("flask-weight")) {
            return;
        }
        Optional<Volume> flask = asked.read("flask", TEXT::volume);
        Optional<Mass> weight = asked.read("flask-weight", TEXT::mass);
        if (!asked.has("flask") || !asked.has("flask-weight")) {
            asked.object(
                    asked.has("flask") ? "flask-weight" : "flask",
                    "a weighed flask needs its volume and the weight of what is in it.",
                    "Give both, such as " + asked.write("flask", "50ml", "flask-weight", "51.9g") + ".");
        } else if (flask.isPresent() && weight.isPresent()) {
            weighed(flask.get(), weight.get());
        }
    }

    private void weighed(Volume flask, Mass weight) {
        if (!(flask.millilitres() > 0.0) || !(weight.grams() > 0.0)) {
            asked.object(
                    "flask", "there is nothing in the flask.", "Give its volume and the weight without the flask.");
            return;
        }
        double density = new Weighing(weight, flask, Weighed.IN_AIR).density();
        double half = density * (SCALE_GRAMS / weight.grams() + FLASK_PART);
        double own = within("flask", Shown.DENSITY).orElse(half);
        readings.add(new Reading(Shown.DENSITY, density, temperature, own));
    }

    private void hydrometer() {
        for (String text : asked.texts("hydrometer")) {
            Matcher on = ON_SCALE.matcher(before(text).strip());
            Optional<Shown> shown =
                    on.matches() ? scale(on.group(3).strip().toLowerCase(Locale.ROOT)) : Optional.empty();
            if (shown.isEmpty()) {
                asked.object(
                        "hydrometer",
                        "\"" + text + "\" does not say on which scale.",
                        "Write it as SG 1.045, 12Bx, 12 Plato, 6.5 Baumé, 25% or 50proof.");
            } else {
                Temperature at = at("hydrometer", text);
                asked.read("hydrometer", on.group(2), TEXT::number)
                        .ifPresent(value -> add("hydrometer", shown.get(), value, at));
            }
        }
    }

    private Optional<Shown> scale(String unit) {
        return Optional.ofNullable(
                switch (unit) {
                    case "", "sg", "20/20" -> Shown.GRAVITY;
                    case "bx", "°bx", "brix", "°brix", "p", "°p", "plato", "°plato" -> Shown.SACCHAROMETER;
                    case "be", "bé", "°be", "°bé", "baume", "baumé" -> Shown.BAUME;
                    case "proof", "°proof" -> Shown.PROOF;
                    case "%", "% vol", "%vol", "% abv" ->
                        asked.basis() == VolumeBasis.AT_15C ? Shown.SPIRIT_15C : Shown.SPIRIT_20C;
                    default -> null;
                });
    }

    private void refractometer() {
        Shown shown = asked.has("compensated") ? Shown.COMPENSATED_REFRACTOMETER : Shown.REFRACTOMETER;
        for (String text : asked.texts("refractometer")) {
            Temperature at = at("refractometer", text);
            Matcher on = ON_SCALE.matcher(before(text).strip());
            if (on.matches() && on.group(1) != null) {
                asked.read("refractometer", on.group(2), TEXT::number)
                        .ifPresent(value -> add("refractometer", Shown.REFRACTIVE_INDEX, value, at));
            } else {
                asked.read("refractometer", before(text), TEXT::brix)
                        .map(Brix::degrees)
                        .ifPresent(value -> add("refractometer", shown, value, at));
            }
        }
    }
}

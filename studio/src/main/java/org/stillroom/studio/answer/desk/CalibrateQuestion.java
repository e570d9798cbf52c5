package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.drops.DropWeighings;
import org.stillroom.core.gauging.Calibrated;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.CalibrateInstrument;
import org.stillroom.studio.usecase.CalibrateInstrument.Former;
import org.stillroom.studio.usecase.CalibrateInstrument.Found;

/** Tells what a maker's own hydrometer, refractometer, thermometer, flask or dropper does, against what is known. */
public final class CalibrateQuestion extends DeskQuestion {
    public static final String HYDROMETER = "hydrometer";
    public static final String REFRACTOMETER = "refractometer";
    public static final String THERMOMETER = "thermometer";
    public static final String FLASK = "flask";
    public static final String EMPTY = "empty";
    public static final String FULL = "full";
    public static final String DROPS = "drops";
    public static final String WEIGHED = "weighed";
    public static final String IN = "in";
    public static final String TRUE = "true-temperature";
    public static final String TEMPERATURE = "temperature";
    public static final String MARKS = "marks";

    /** The least step of a scale and a thermometer where none is named, g and °C. */
    private static final double SCALE_MARKS = 0.1;

    private static final double THERMOMETER_MARKS = 1.0;
    /** How far ice water lies from 0 °C; from memory. */
    private static final double ICE_WATER = 0.1;

    private final @Nullable Former former;

    public CalibrateQuestion() {
        this(null);
    }

    /** @param former what the same instrument was found to show too much before, or null */
    CalibrateQuestion(@Nullable Former former) {
        this.former = former;
    }

    /**
     * A calibration.
     *
     * @param told what it is about, as {@code offset} and {@code within} name it, or {@link #DROPS}
     * @param unit in which it is
     * @param decimals that mean something
     * @param found what came of it
     */
    public record Calibration(String told, String unit, int decimals, Found found) {}

    @Override
    public String name() {
        return "calibrate";
    }

    @Override
    public String summary() {
        return "What your own hydrometer, refractometer, thermometer, flask or dropper shows too much.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                several(HYDROMETER, "what it shows, with its scale, such as \"SG 1.002\""),
                several(REFRACTOMETER, "what it shows, such as 0.3Bx"),
                new Part("compensated", "the refractometer corrects for temperature by itself", null, Part.Form.FLAG),
                Part.text(
                        "reference",
                        "temperature that the hydrometer is marked for: 20C, 15C or 60F (default: 20C, of Baumé and proof 60F)"),
                Part.usual(
                        IN,
                        "water",
                        "what it stood in: water, sugar weighed into it such as 10Bx, or a spirit such as 40%"),
                several(THERMOMETER, "what it shows, such as 0.6C"),
                Part.usual(TRUE, "0C", "what a thermometer should show; in ice water 0C"),
                Part.text(FLASK, "volume of a flask by its mark, such as 50ml"),
                Part.text(EMPTY, "weight of the dry flask, such as 31.2g"),
                several(FULL, "weight of the flask with water to its mark, such as 81.0g"),
                Part.text(DROPS, "drops of water of each weighing, such as 50"),
                several(WEIGHED, "what these drops weighed together, such as 2.31g"),
                Part.usual(TEMPERATURE, "20C", "of what it stood in"),
                Part.text(MARKS, "least step that it shows, in its unit; of a flask that of the scale, such as 0.1"));
    }

    private static Part several(String name, String description) {
        return new Part(name, description + "; may be repeated", null, Part.Form.TEXTS_AS_TYPED);
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given(FLASK, "50ml"),
                new Manner.Given(EMPTY, "31.2g"),
                new Manner.Given(FULL, "81.0g"),
                new Manner.Given(FULL, "80.9g"),
                new Manner.Given(TEMPERATURE, "21C"));
    }

    @Override
    public List<String> figures() {
        return CalibratedTold.FIGURES;
    }

    /**
     * Returns what was found.
     *
     * @param typed texts by the names of the parts
     * @throws WrongInput when it cannot be told because of what was typed
     */
    public Calibration found(Map<String, List<String>> typed, Manner manner) {
        AskedTexts asked = new AskedTexts(parts(), typed, manner, new Objections());
        return ask(asked, () -> found(asked, Workings.NONE));
    }

    private Calibration found(AskedTexts asked, Workings workings) {
        List<String> subjects = new ArrayList<>(List.of(HYDROMETER, REFRACTOMETER, THERMOMETER, FLASK, DROPS));
        subjects.removeIf(each -> !asked.has(each));
        if (subjects.size() != 1) {
            asked.object(
                    "",
                    subjects.isEmpty() ? "nothing was read." : "one instrument is calibrated at a time.",
                    "Say what one of them showed, such as " + asked.write(HYDROMETER, "SG 1.002") + ".");
        }
        asked.refuseIfAnyWrong();
        return switch (subjects.get(0)) {
            case HYDROMETER, REFRACTOMETER -> ofLiquid(subjects.get(0), asked, workings);
            case THERMOMETER -> ofThermometer(asked, workings);
            case FLASK -> ofFlask(asked, workings);
            default -> ofDropper(asked, workings);
        };
    }

    private Calibration ofLiquid(String part, AskedTexts asked, Workings workings) {
        ScaleText scales = new ScaleText(asked, asked.basis());
        Map<Shown, List<Double>> reads = new LinkedHashMap<>();
        Optional<Temperature> at = asked.temperature();
        Temperature read = at.orElse(Temperature.TWENTY_CELSIUS);
        for (String text : asked.texts(part)) {
            (part.equals(HYDROMETER) ? scales.hydrometer(part, text) : scales.refractometer(part, text))
                    .ifPresent(each -> reads.computeIfAbsent(each.shown(), shown -> new ArrayList<>())
                            .add(each.restated(read)));
        }
        if (reads.size() > 1) {
            asked.object(part, "it was read on several scales.", "Give all readings on one.");
        }
        Optional<Calibrated.Known> known = known(asked);
        Optional<Double> half = halfMark(asked);
        asked.refuseIfAnyWrong();
        Shown shown = reads.keySet().iterator().next();
        Found found = CalibrateInstrument.inLiquid(
                known.orElseThrow(),
                shown,
                List.copyOf(Objects.requireNonNull(reads.get(shown))),
                half.orElse(shown.usualHalfWidth(0.0)),
                at.orElseThrow(),
                elsewhere(asked),
                workings);
        return new Calibration(part, shown.unit(), shown.decimals() + 1, found);
    }

    /** Returns the calibration before, where it was made in another liquid. */
    private @Nullable Former elsewhere(AskedTexts asked) {
        String in = String.valueOf(asked.text(IN)).strip();
        return former == null || former.in().equalsIgnoreCase(in) ? null : former;
    }

    private static Optional<Calibrated.Known> known(AskedTexts asked) {
        String text = String.valueOf(asked.text(IN)).strip();
        if (text.equalsIgnoreCase("water") || text.equalsIgnoreCase("Wasser")) {
            return Optional.of(Calibrated.Known.WATER);
        }
        if (text.endsWith("%") || text.matches("(?i).*\\bvol\\b.*")) {
            return asked.read(IN, TEXT::percent)
                    .filter(percent -> isBelow(percent, 100.0, "% vol", asked))
                    .map(AlcoholByVolume::at20)
                    .map(Calibrated.Known::spirit);
        }
        return asked.read(IN, TEXT::brix)
                .filter(brix -> isBelow(brix.degrees(), 65.0, "°Bx", asked))
                .map(Brix::degrees)
                .map(Brix::new)
                .map(Calibrated.Known::syrup);
    }

    private static boolean isBelow(double value, double most, String unit, AskedTexts asked) {
        if (value >= 0.0 && value <= most) {
            return true;
        }
        asked.object(IN, "there is no such liquid.", "Give from 0 to " + QuantityWords.plain(most) + " " + unit + ".");
        return false;
    }

    /** Reads half of the least step, where one is named. */
    private static Optional<Double> halfMark(AskedTexts asked) {
        String text = asked.text(MARKS);
        String bare = text == null ? null : text.strip().replaceAll("(?i)\\s*(g|°?C|°?Bx|SG|% ?vol|%|n|ml)$", "");
        Optional<Double> marks = asked.read(MARKS, bare, TEXT::number);
        marks.filter(each -> !(each > 0.0))
                .ifPresent(none -> asked.object(MARKS, "a step is more than nothing.", "Give the least step."));
        return marks.map(each -> 0.5 * each);
    }

    private static Calibration ofThermometer(AskedTexts asked, Workings workings) {
        List<Double> reads = all(asked, THERMOMETER, TEXT::temperature, Temperature::celsius);
        Optional<Temperature> truth = asked.read(TRUE, TEXT::temperature);
        Optional<Double> half = halfMark(asked);
        asked.refuseIfAnyWrong();
        Temperature known = truth.orElseThrow();
        Found found = CalibrateInstrument.thermometer(
                known,
                known.celsius() == 0.0 ? ICE_WATER : Thermometer.USUAL.halfWidth(),
                reads,
                half.orElse(0.5 * THERMOMETER_MARKS),
                workings);
        return new Calibration(TEMPERATURE, "°C", 2, found);
    }

    private static Calibration ofFlask(AskedTexts asked, Workings workings) {
        Optional<Volume> mark = asked.read(FLASK, TEXT::volume);
        Optional<Mass> empty = asked.read(EMPTY, TEXT::mass);
        List<Mass> full = all(asked, FULL, TEXT::mass, Function.identity());
        if (!asked.has(EMPTY) || !asked.has(FULL)) {
            asked.object(
                    asked.has(EMPTY) ? FULL : EMPTY,
                    "a flask is weighed empty and full of water.",
                    "Give both, such as " + asked.write(EMPTY, "31.2g", FULL, "81.0g") + ".");
        }
        Optional<Temperature> at = asked.temperature();
        Optional<Double> half = halfMark(asked);
        asked.refuseIfAnyWrong();
        Found found = CalibrateInstrument.flask(
                mark.orElseThrow(),
                empty.orElseThrow(),
                full,
                half.orElse(0.5 * SCALE_MARKS),
                at.orElseThrow(),
                workings);
        return new Calibration(FLASK, "mL", 3, found);
    }

    private static Calibration ofDropper(AskedTexts asked, Workings workings) {
        String count = String.valueOf(asked.text(DROPS)).strip();
        if (!count.matches("[1-9]\\d{0,3}")) {
            asked.object(DROPS, "\"" + count + "\" is no count of drops.", "Write a whole number, such as 50.");
        }
        DropsQuestion.Runs weighed = DropsQuestion.Runs.of(asked, WEIGHED);
        if (weighed.grams().isEmpty() || weighed.grams().contains(0.0)) {
            asked.object(WEIGHED, "what the drops weighed is not said.", "Weigh 50 drops of water, three times.");
        }
        asked.refuseIfAnyWrong();
        DropWeighings weighings = weighed.of(Integer.parseInt(count));
        DropsQuestion.objectToNoDrop(asked, WEIGHED, weighings, DropsQuestion.WATER);
        asked.refuseIfAnyWrong();
        return new Calibration(DROPS, "mg", 1, CalibrateInstrument.dropper(weighings, workings));
    }

    private static <Q, V> List<V> all(
            AskedTexts asked, String part, Function<String, Understanding<Q>> reader, Function<Q, V> value) {
        List<V> all = new ArrayList<>();
        for (String text : asked.texts(part)) {
            asked.read(part, text, reader).map(value).ifPresent(all::add);
        }
        return all;
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        return CalibratedTold.told(found(asked, workings), asked);
    }
}

package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.gauging.HydrometerScale;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.SheetProblem;

/** The kinds of instrument that tell what is in a vessel; they stand on the shelf beside those that a recipe is measured with. */
public enum GaugeKind {
    HYDROMETER,
    REFRACTOMETER,
    FLASK,
    THERMOMETER;

    /** Keys of what is written about them. */
    public static final String SCALE = "scale";

    public static final String MARKS = "marks";
    public static final String REFERENCE = "reference";
    public static final String COMPENSATED = "compensated";
    public static final String HOLDS = "holds";
    public static final String TOLERANCE = "tolerance";

    /** What "yes" is written as under {@link #COMPENSATED}. */
    public static final List<String> YES = List.of("yes", "ja");

    private static final List<String> NO = List.of("no", "nein");
    private static final String BARE = "[-−+.,0-9]+";

    /** Returns the kind as it is written. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<GaugeKind> of(String kind) {
        return Arrays.stream(values()).filter(each -> each.label().equals(kind)).findFirst();
    }

    /** Returns the keys that are asked about it, and an example of each. */
    public Map<String, String> asked() {
        Map<String, String> asked = new LinkedHashMap<>();
        switch (this) {
            case HYDROMETER -> {
                asked.put(SCALE, "SG");
                asked.put(MARKS, "0.002");
                asked.put(REFERENCE, "20 C");
                asked.put(TOLERANCE, "0.001");
            }
            case REFRACTOMETER -> {
                asked.put(COMPENSATED, "yes");
                asked.put(MARKS, "0.2");
                asked.put(TOLERANCE, "0.2");
            }
            case FLASK -> {
                asked.put(HOLDS, "50 ml");
                asked.put(TOLERANCE, "0.1 ml");
            }
            case THERMOMETER -> {
                asked.put(MARKS, "1");
                asked.put(TOLERANCE, "1");
            }
        }
        return asked;
    }

    /** Returns the key without which nothing can be made of it, or empty. */
    public Optional<String> needed() {
        return switch (this) {
            case HYDROMETER -> Optional.of(SCALE);
            case REFRACTOMETER -> Optional.of(COMPENSATED);
            case FLASK -> Optional.of(HOLDS);
            case THERMOMETER -> Optional.empty();
        };
    }

    /** Returns everything that is wrong with what was written about it. */
    List<SheetProblem> problems(Map<String, String> fields, OunceMeaning ounce) {
        List<SheetProblem> problems = new ArrayList<>();
        needed().filter(key -> !fields.containsKey(key))
                .ifPresent(
                        key -> problems.add(problem(key, "It is missing.", "Write such as " + asked().get(key) + ".")));
        fields.forEach((key, text) -> {
            if (!asked().containsKey(key)) {
                problems.add(problem(key, "Nothing of the kind is kept of it.", "Leave it out."));
            } else if (!isUnderstood(key, text, new QuantityText(ounce))) {
                problems.add(
                        problem(key, "“" + text + "” is not understood.", "Write such as " + asked().get(key) + "."));
            }
        });
        return problems;
    }

    private boolean isUnderstood(String key, String text, QuantityText quantities) {
        return switch (key) {
            case SCALE -> HydrometerScale.of(text, VolumeBasis.AT_20C).isPresent();
            case COMPENSATED -> isYes(text) || NO.contains(text.toLowerCase(Locale.ROOT));
            case REFERENCE -> quantities.temperature(text) instanceof Understanding.Understood<?>;
            case HOLDS -> quantities.volume(text) instanceof Understanding.Understood<?>;
            default ->
                this == FLASK ? quantities.volume(text) instanceof Understanding.Understood<?> : text.matches(BARE);
        };
    }

    /** Returns whether a text says yes. */
    public static boolean isYes(String text) {
        return YES.contains(text.strip().toLowerCase(Locale.ROOT));
    }

    private static SheetProblem problem(String key, String message, String remedy) {
        return new SheetProblem(
                key, Finding.of("instrument-field", Severity.STOP, key, "not understood", message, remedy));
    }
}

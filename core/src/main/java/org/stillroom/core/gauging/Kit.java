package org.stillroom.core.gauging;

import java.util.List;

/** What a kitchen has to measure with, as ready choices of {@link Method}s. */
public enum Kit {
    HYDROMETER_AND_REFRACTOMETER("hydrometer and refractometer"),
    SCALE_AND_FLASK("scale and flask");

    private final String label;

    Kit(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Returns what can be done with nothing else. */
    public List<Method> methods() {
        return switch (this) {
            case HYDROMETER_AND_REFRACTOMETER -> List.of(Method.HYDROMETER, Method.REFRACTOMETER);
            case SCALE_AND_FLASK -> List.of(Method.FLASK, Method.RESIDUE, Method.WHOLE_BATCH);
        };
    }
}

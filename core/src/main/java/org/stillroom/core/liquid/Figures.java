package org.stillroom.core.liquid;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;

/** What is told of one liquid; a figure that does not exist for it (the strength of nothing) is absent. */
public final class Figures {
    private final Contents contents;
    private final Temperature temperature;
    private final Map<Figure, Estimate> estimates;
    private final List<Finding> findings;

    Figures(Contents contents, Temperature temperature, Map<Figure, Estimate> estimates, List<Finding> findings) {
        this.contents = contents;
        this.temperature = temperature;
        this.estimates = Collections.unmodifiableMap(estimates);
        this.findings = List.copyOf(findings);
    }

    public Contents contents() {
        return contents;
    }

    /** Returns the temperature that was asked. */
    public Temperature temperature() {
        return temperature;
    }

    /** Returns every figure that exists, in the order of {@link Figure}. */
    public Map<Figure, Estimate> all() {
        return estimates;
    }

    public boolean has(Figure figure) {
        return estimates.containsKey(figure);
    }

    /**
     * Returns the value of a figure that exists.
     *
     * @throws IllegalArgumentException when it does not
     */
    public double value(Figure figure) {
        return present(figure).value();
    }

    /** Returns the half-width of the central 90 % of a figure that exists. */
    public double doubt(Figure figure) {
        return present(figure).doubt();
    }

    private Estimate present(Figure figure) {
        @Nullable Estimate estimate = estimates.get(figure);
        if (estimate == null) {
            throw new IllegalArgumentException("this liquid has no " + figure.label());
        }
        return estimate;
    }

    /** Returns what should be known about these figures. */
    public List<Finding> findings() {
        return findings;
    }
}

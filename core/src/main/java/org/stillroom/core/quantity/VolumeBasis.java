package org.stillroom.core.quantity;

/** The temperature at which both volumes of a strength by volume are taken. */
public enum VolumeBasis {
    /** 20 °C: OIML, the European Union and most of the world. */
    AT_20C(20.0, "20 °C"),
    /** 15 °C: the older Gay-Lussac tables. */
    AT_15C(15.0, "15 °C"),
    /** 60 °F (15.5556 °C): the United States. */
    AT_60F((60.0 - 32.0) * 5 / 9, "60 °F");

    private final double celsius;
    private final String label;

    VolumeBasis(double celsius, String label) {
        this.celsius = celsius;
        this.label = label;
    }

    public Temperature temperature() {
        return new Temperature(celsius);
    }

    /** Returns the basis as it is written beside a figure, such as "20 °C". */
    public String label() {
        return label;
    }
}

package org.stillroom.core.quantity;

/** A temperature on the Celsius scale, from absolute zero to 1000 °C. */
public record Temperature(double celsius) {
    /** The temperature at which Stillroom states strength, sugar and volume unless it says otherwise. */
    public static final Temperature TWENTY_CELSIUS = new Temperature(20.0);

    public Temperature {
        if (!(celsius >= -273.15 && celsius <= 1000)) {
            throw new IllegalArgumentException(
                    "a temperature lies from −273.15 to 1000 °C, not " + QuantityWords.plain(celsius) + " °C");
        }
    }

    public static Temperature fahrenheit(double degrees) {
        return new Temperature((degrees - 32.0) * 5 / 9);
    }

    public double fahrenheit() {
        return celsius * 9 / 5 + 32.0;
    }

    public double kelvin() {
        return celsius + 273.15;
    }
}

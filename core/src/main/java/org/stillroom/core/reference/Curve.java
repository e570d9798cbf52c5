package org.stillroom.core.reference;

import java.util.List;

/** A tabulated relation between two columns, straight between neighbouring rows; nothing is said outside them. */
public final class Curve {
    private final double[] x;
    private final double[] y;

    private Curve(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * Takes a curve from rows whose first column rises.
     *
     * @param across column of the argument
     * @param up column of the value
     */
    public static Curve of(List<Table.Row> rows, String across, String up) {
        double[] x = new double[rows.size()];
        double[] y = new double[rows.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = rows.get(i).number(across);
            y[i] = rows.get(i).number(up);
            if (i > 0 && !(x[i] > x[i - 1])) {
                throw rows.get(i).fault(across, "does not rise");
            }
        }
        return new Curve(x, y);
    }

    public double first() {
        return x[0];
    }

    public double last() {
        return x[x.length - 1];
    }

    /**
     * Returns the value at an argument.
     *
     * @throws IllegalArgumentException outside the rows
     */
    public double at(double argument) {
        if (!(argument >= first() && argument <= last())) {
            throw new IllegalArgumentException(
                    "the table runs from " + first() + " to " + last() + ", not to " + argument);
        }
        int i = 1;
        while (x[i] < argument) {
            i++;
        }
        double part = (argument - x[i - 1]) / (x[i] - x[i - 1]);
        return y[i - 1] + part * (y[i] - y[i - 1]);
    }
}

package org.stillroom.core.extraction;

/** Student's t for the central 90 %, for means and fits of a few values. Source: any table of the distribution. */
final class Student {
    /** By degrees of freedom from 1; the last serves for more, and doubts a little too much then. */
    private static final double[] CENTRAL_90 = {
        6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753
    };

    private Student() {}

    /** Returns how many standard deviations hold nine cases of ten. */
    static double central90(int degreesOfFreedom) {
        return CENTRAL_90[Math.min(degreesOfFreedom, CENTRAL_90.length) - 1];
    }
}

package org.stillroom.studio.usecase;

/** How far a strength may lie from what its label or its maker says where nothing else is said: half-widths, % vol. */
public final class LabelTolerance {
    /** Of bought spirits, wines and liqueurs: Regulation (EU) No 1169/2011, Annex XII. */
    public static final double OF_LABEL = 0.3;
    /** Of a brandy or distillate, bought or one's own; our own estimate. */
    public static final double OF_DISTILLATE = 1.0;
    /** Of what was steeped at home and not measured since; our own estimate. */
    public static final double OF_OWN = 3.0;

    private LabelTolerance() {}
}

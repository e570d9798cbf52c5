package org.stillroom.core.sugar;

/** The sugars that are told apart; invert sugar is half glucose and half fructose by mass. */
public enum Sugar {
    SUCROSE("sucrose"),
    GLUCOSE("glucose"),
    FRUCTOSE("fructose"),
    MALTOSE("maltose"),
    LACTOSE("lactose");

    private final String label;

    Sugar(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}

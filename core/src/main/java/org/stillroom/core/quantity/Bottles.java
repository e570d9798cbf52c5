package org.stillroom.core.quantity;

/** A number of bottles of one size, such as 3 x 350 ml. */
public record Bottles(int count, Volume each) {
    public Bottles {
        if (!(count >= 1 && count <= 100_000)) {
            throw new IllegalArgumentException("a number of bottles lies from 1 to 100 000, not " + count);
        }
        if (!(each.millilitres() > 0)) {
            throw new IllegalArgumentException("a bottle holds more than 0 mL");
        }
    }

    public Volume together() {
        return new Volume(count * each.millilitres());
    }
}

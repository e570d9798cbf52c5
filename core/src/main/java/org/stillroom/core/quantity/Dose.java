package org.stillroom.core.quantity;

/** An amount per litre of the finished liquid at 20 °C, such as 24 drops/L or 0.4 g/L. */
public record Dose(Amount perLitre) {
    /** Returns what a volume of finished liquid takes. */
    public Amount in(Volume finished) {
        double litres = finished.litres();
        if (perLitre instanceof Mass mass) {
            return new Mass(litres * mass.grams());
        }
        return perLitre instanceof Volume volume
                ? new Volume(litres * volume.millilitres())
                : new Drops(litres * ((Drops) perLitre).count());
    }
}

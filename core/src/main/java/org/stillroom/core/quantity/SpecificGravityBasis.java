package org.stillroom.core.quantity;

/**
 * The pair of temperatures of a specific gravity: the liquid's, and that of the water it is compared with; in vacuum.
 *
 * <p>Source of the water densities: the density formula of OIML R 22 (1975) at a mass fraction of ethanol of zero; its
 * first coefficient at 20 °C, the whole polynomial at 60 °F.
 */
enum SpecificGravityBasis {
    TWENTY_CELSIUS("20/20", " °C", 998.20123),
    SIXTY_FAHRENHEIT("60/60", " °F", 999.01021);

    private final String pair;
    private final String scale;
    private final double waterKilogramsPerCubicMetre;

    SpecificGravityBasis(String pair, String scale, double waterKilogramsPerCubicMetre) {
        this.pair = pair;
        this.scale = scale;
        this.waterKilogramsPerCubicMetre = waterKilogramsPerCubicMetre;
    }

    String pair() {
        return pair;
    }

    String label() {
        return pair + scale;
    }

    Density density(double specificGravity) {
        return new Density(specificGravity * waterKilogramsPerCubicMetre);
    }
}

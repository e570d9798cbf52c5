package org.stillroom.core.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.drops.DropBasis;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

class DoseUnitsTest {
    /** 0.255 g/L of an oil of 0.85 g/mL is 0.3 mL, 300 µL; by a dropper of 25.5 mg ten drops. */
    @Test
    @Tag("property")
    void aDoseIsTheSameInEveryUnit() {
        DoseUnits dose = Objects.requireNonNull(DoseUnits.of(oil(new Mass(0.0255)), 0.255));

        assertThat(dose.drops()).isCloseTo(10.0, within(1e-9));
        assertThat(dose.millilitres().getAsDouble()).isCloseTo(0.3, within(1e-9));
        assertThat(dose.microlitres().getAsDouble()).isCloseTo(300.0, within(1e-6));
        assertThat(dose.milligrams()).isCloseTo(255.0, within(1e-9));
    }

    @Test
    @Tag("property")
    void aDropByVolumeWeighsWhatTheDensitySaysAndOneThatNobodyKnowsIsTheOfficialOne() {
        assertThat(oil(new Volume(0.03)).gramsPerDrop()).isCloseTo(0.0255, within(1e-9));
        assertThat(oil(null).gramsPerDrop())
                .isEqualTo(DropLiquid.oil("lemon oil").gramsPerDrop());
        assertThat(oil(null).dropBasis()).isEqualTo(DropBasis.OFFICIAL);
        assertThat(oil(null).dropDoubt()).isEqualTo(0.3);
    }

    /** What was weighed with the liquid itself counts before what was weighed with water, and both before the official dropper. */
    @Test
    @Tag("property")
    void aDropperOfTheMakersOwnScalesTheOfficialDrop() {
        OwnDropper pipette = new OwnDropper("pipette", new Mass(0.040), 0.05);

        Resolved ruled = oil(null).from(pipette);
        assertThat(ruled.gramsPerDrop()).isCloseTo(0.8 * oil(null).gramsPerDrop(), within(1e-15));
        assertThat(ruled.dropBasis()).isEqualTo(DropBasis.OWN_DROPPER);
        assertThat(ruled.dropDoubt()).isCloseTo(Math.sqrt(0.1 * 0.1 + 0.1 * 0.1 + 0.05 * 0.05), within(1e-12));
        Resolved weighed = oil(new Mass(0.0255)).from(pipette);
        assertThat(weighed.gramsPerDrop()).isEqualTo(0.0255);
        assertThat(weighed.dropBasis()).isEqualTo(DropBasis.WEIGHED);
        assertThat(weighed.dropDoubt()).isEqualTo(0.1);
        assertThatThrownBy(() -> new OwnDropper("pipette", new Mass(0.0), 0.0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new OwnDropper("pipette", new Mass(0.04), 1.0)).hasMessageContaining("in doubt");
    }

    @Test
    void whatIsPouredOrWeighedAsASolidIsNoDose() {
        assertThat(DoseUnits.of(oil(null), 250.0)).isNull();
        assertThat(DoseUnits.of(oil(null), 0.0)).isNull();
        Resolved sugar = Objects.requireNonNull(
                Resolution.of(Ingredient.named("white sugar", Kind.SUGAR)).resolved());
        assertThat(DoseUnits.of(sugar, 5.0)).isNull();
    }

    private static Resolved oil(@Nullable Amount drop) {
        Ingredient bare = Ingredient.named("lemon oil", Kind.ESSENTIAL_OIL)
                .ofDensity(new Typed<>("0.85 g/ml", new Density(850.0)));
        Ingredient ingredient = drop == null ? bare : bare.ofDrop(new Typed<>("drop", drop));
        return Objects.requireNonNull(Resolution.of(ingredient).resolved());
    }
}

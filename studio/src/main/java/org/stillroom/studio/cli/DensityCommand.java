package org.stillroom.studio.cli;

import static org.stillroom.core.liquid.Figure.DENSITY;
import static org.stillroom.core.liquid.Figure.SPECIFIC_GRAVITY_20_20;
import static org.stillroom.core.liquid.Figure.SPECIFIC_GRAVITY_60F_60F;

import java.util.Optional;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.TellDensity;
import picocli.CommandLine.Option;

/** Tells the density of a spirit or liqueur of known strength and sugar. */
final class DensityCommand extends DeskCommand {
    @Option(names = "--strength", required = true, description = "such as 40%%, 80proof or \"33.3 %% mass\"")
    private String strength = "";

    @Option(names = "--sugar", defaultValue = "0g/L", description = "sucrose per litre (default: ${DEFAULT-VALUE})")
    private String sugar = "";

    @Option(
            names = "--temperature",
            defaultValue = "20C",
            description = "of the density, −20 to 40 °C (default: ${DEFAULT-VALUE})")
    private String temperature = "";

    @Override
    protected Told tell(Workings workings) {
        Optional<Strength> of = strength("--strength", strength, VolumeBasis.AT_20C);
        Optional<MassConcentration> sweetened = sugar(sugar);
        Optional<Temperature> at = temperature(temperature);
        refuseIfAnyWrong();
        Figures figures = TellDensity.answer(
                new TellDensity.Asked(of.orElseThrow(), sweetened.orElseThrow(), at.orElseThrow()), workings);
        String sweet = sweetened.orElseThrow().gramsPerLitre() == 0.0 ? "" : " with sugar " + sugar;
        return new Told("Density of " + strength + sweet)
                .put(DENSITY, figures)
                .put(SPECIFIC_GRAVITY_20_20, figures)
                .put(SPECIFIC_GRAVITY_60F_60F, figures)
                .findings(figures.findings());
    }
}

package org.stillroom.studio.cli;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.LiquidAnswer;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.TellLiquid;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells every figure of a liquid from what is in it. */
final class LiquidCommand extends DeskCommand {
    @Mixin
    private final SubstanceOptions substances = new SubstanceOptions();

    @Option(
            names = "--temperature",
            defaultValue = "20C",
            description = "of density and volume, −20 to 40 °C (default: ${DEFAULT-VALUE})")
    private String temperature = "";

    @Override
    protected Told tell(Workings workings) {
        Map<Substance, Amount> amounts = new EnumMap<>(Substance.class);
        substances
                .typed()
                .forEach((substance, typed) ->
                        amount(substance, typed).ifPresent(amount -> amounts.put(substance, amount)));
        Optional<Mass> invert = read("--invert", substances.invert, TEXT::mass);
        Map<String, Mass> oils = oils();
        Optional<Temperature> at = temperature(temperature);
        refuseIfAnyWrong();
        TellLiquid.Found found = TellLiquid.answer(
                new TellLiquid.Asked(amounts, invert.orElse(new Mass(0)), oils, at.orElseThrow()), workings);
        return LiquidAnswer.of(found);
    }

    private Optional<? extends Amount> amount(Substance substance, SubstanceOptions.Amount typed) {
        boolean poured = substance == Substance.ETHANOL || substance == Substance.WATER;
        return poured
                ? read(typed.option(), typed.text(), LiquidCommand::weighedOrPoured)
                : read(typed.option(), typed.text(), TEXT::mass);
    }

    private static Understanding<Amount> weighedOrPoured(String text) {
        Understanding<Amount> understanding = TEXT.amount(text);
        boolean drops = understanding instanceof Understanding.Understood<Amount> understood
                && understood.typed().value() instanceof org.stillroom.core.quantity.Drops;
        return drops
                ? new Understanding.Refused<>(
                        text, "an amount in g or mL is wanted, not drops; write for instance 300 g")
                : understanding;
    }

    private Map<String, Mass> oils() {
        Map<String, Mass> oils = new LinkedHashMap<>();
        for (String oil : substances.oils) {
            int sign = oil.indexOf('=');
            String name = sign < 0 ? "" : oil.substring(0, sign).strip();
            if (name.isEmpty()) {
                object("--oil", "\"" + oil + "\" does not say which oil.", "Write it as limonene=0.4g.");
            } else if (oils.containsKey(name)) {
                object("--oil", name + " is given twice.", "Give it once, with the whole amount.");
            } else {
                read("--oil", oil.substring(sign + 1), TEXT::mass).ifPresent(mass -> oils.put(name, mass));
            }
        }
        return oils;
    }
}

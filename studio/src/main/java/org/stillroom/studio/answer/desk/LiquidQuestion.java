package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.LiquidAnswer;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.TellLiquid;

/** Tells every figure of a liquid from what is in it. */
final class LiquidQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "liquid";
    }

    @Override
    public String summary() {
        return "Every figure of a liquid from what is in it: volume, density, strength, sugar, and more.";
    }

    @Override
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (Substance substance : Substance.values()) {
            if (substance != Substance.OIL) { // given by constituent
                parts.add(Part.text(part(substance), description(substance)));
            }
        }
        parts.add(Part.text("invert", "invert sugar: half glucose, half fructose"));
        parts.add(new Part(
                "oil",
                "aroma oil by the name of its constituent, such as limonene=0.4g; may be repeated",
                null,
                Part.Form.NAMED_TEXTS));
        parts.add(Part.usual("temperature", "20C", "of density and volume, −20 to 40 °C"));
        return parts;
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("ethanol", "300g"),
                new Manner.Given("water", "600g"),
                new Manner.Given("sucrose", "200g"));
    }

    @Override
    public List<String> figures() {
        return Stream.concat(Arrays.stream(Figure.values()).map(Figure::key), Stream.of("contraction_ml", "warming_c"))
                .toList();
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Map<Substance, Amount> amounts = new EnumMap<>(Substance.class);
        for (Substance substance : Substance.values()) {
            amount(substance, asked).ifPresent(amount -> amounts.put(substance, amount));
        }
        Optional<Mass> invert = asked.read("invert", TEXT::mass);
        Map<String, Mass> oils = oils(asked);
        Optional<Temperature> at = asked.temperature();
        asked.refuseIfAnyWrong();
        TellLiquid.Found found = TellLiquid.answer(
                new TellLiquid.Asked(amounts, invert.orElse(new Mass(0)), oils, at.orElseThrow()), workings);
        return LiquidAnswer.of(found);
    }

    private static String part(Substance substance) {
        return substance == Substance.OTHER_SOLIDS ? "solids" : substance.label();
    }

    private static String description(Substance substance) {
        return switch (substance) {
            case ETHANOL -> "pure ethanol, such as 300g; or by volume at 20 °C";
            case WATER -> "water, such as 600g; or by volume at 20 °C";
            case SUCROSE -> "white sugar; this and all that follow by mass";
            case GLUCOSE -> "glucose, anhydrous";
            case FRUCTOSE -> "fructose";
            case MALTOSE -> "maltose";
            case LACTOSE -> "lactose";
            case GLYCEROL -> "glycerol";
            case CITRIC -> "citric acid, anhydrous; as are all the acids";
            case MALIC -> "malic acid";
            case TARTARIC -> "tartaric acid";
            case LACTIC -> "lactic acid";
            case ACETIC -> "acetic acid";
            case PHOSPHORIC -> "phosphoric acid";
            case ASCORBIC -> "ascorbic acid";
            case SALT -> "table salt";
            case OTHER_SOLIDS -> "other dissolved solids";
            case FAT -> "fat";
            case PROTEIN -> "protein";
            case OIL -> "aroma oil";
        };
    }

    private static Optional<? extends Amount> amount(Substance substance, AskedTexts asked) {
        return switch (substance) {
            case ETHANOL, WATER -> asked.read(part(substance), LiquidQuestion::weighedOrPoured);
            case OIL -> Optional.empty(); // given by constituent
            default -> asked.read(part(substance), TEXT::mass);
        };
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

    private static Map<String, Mass> oils(AskedTexts asked) {
        Map<String, Mass> oils = new LinkedHashMap<>();
        for (String oil : asked.texts("oil")) {
            int sign = oil.indexOf('=');
            String name = sign < 0 ? "" : oil.substring(0, sign).strip();
            if (name.isEmpty()) {
                asked.object("oil", "\"" + oil + "\" does not say which oil.", "Write it as limonene=0.4g.");
            } else if (oils.containsKey(name)) {
                asked.object("oil", name + " is given twice.", "Give it once, with the whole amount.");
            } else {
                asked.read("oil", oil.substring(sign + 1), TEXT::mass).ifPresent(mass -> oils.put(name, mass));
            }
        }
        return oils;
    }
}

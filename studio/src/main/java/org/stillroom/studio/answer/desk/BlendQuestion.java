package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.BlendSpirits;
import org.stillroom.studio.usecase.BlendSpirits.Poured;
import org.stillroom.studio.usecase.BlendSpirits.Reach;

/** Tells what comes of several spirits together, or brings them to a strength with water or one more spirit. */
final class BlendQuestion extends DeskQuestion {
    static final Part REFERENCE =
            Part.usual("reference", "20C", "temperature of strengths and volumes: 20C, 15C or 60F");

    @Override
    public String name() {
        return "blend";
    }

    @Override
    public String summary() {
        return "What comes of several spirits together, or what brings them to one strength.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                new Part(
                        "add",
                        "a spirit, such as 500ml@40%, or water, such as 100ml@0%; may be repeated",
                        null,
                        Part.Form.REQUIRED_TEXTS),
                Part.text("to", "strength to reach, such as 40%"),
                Part.text("with", "strength of what is added until it is reached (default: 0%, which is water)"),
                REFERENCE);
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("add", "500ml@40%"),
                new Manner.Given("add", "200ml@96%"),
                new Manner.Given("to", "45%"));
    }

    @Override
    public List<String> figures() {
        return Blended.FIGURES;
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        VolumeBasis basis = asked.basis();
        List<Poured> poured = new ArrayList<>();
        for (String each : asked.texts("add")) {
            poured(asked, each, basis).ifPresent(poured::add);
        }
        Optional<Strength> target = asked.strength("to", basis);
        Optional<Strength> more = asked.strength("with", asked.has("with") ? asked.text("with") : "0%", basis);
        if (asked.has("with") && !asked.has("to")) {
            asked.object(
                    "with", "it is not said how far.", "Give the strength to reach with " + asked.name("to") + ".");
        }
        asked.refuseIfAnyWrong();
        Optional<Reach> reach = target.map(strength -> new Reach(strength, more.orElseThrow()));
        return Blended.told(
                "Blend at " + basis.label(),
                basis,
                BlendSpirits.answer(new BlendSpirits.Asked(poured, reach, basis), workings));
    }

    private static Optional<Poured> poured(AskedTexts asked, String text, VolumeBasis basis) {
        int at = text.indexOf('@');
        if (at < 0) {
            asked.object("add", "\"" + text + "\" does not say how strong it is.", "Write it as 500ml@40%.");
            return Optional.empty();
        }
        Optional<Amount> amount = asked.read("add", text.substring(0, at), TEXT::amount);
        Optional<Strength> strength = asked.strength("add", text.substring(at + 1), basis);
        return amount.flatMap(a -> strength.map(s -> new Poured(a, s)));
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

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

/** Tells how much of a second spirit brings a first one to a strength. */
final class FortifyQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "fortify";
    }

    @Override
    public String summary() {
        return "How much of a second spirit brings a first one to a strength.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("volume", "what there is, such as 1L; or by mass"),
                Part.required("from", "its strength, such as 30%"),
                Part.required("to", "strength wanted, such as 40%"),
                Part.required("with", "strength of the second spirit, such as 96%"),
                BlendQuestion.REFERENCE);
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("volume", "1L"),
                new Manner.Given("from", "30%"),
                new Manner.Given("with", "96%"),
                new Manner.Given("to", "40%"));
    }

    @Override
    public List<String> figures() {
        return Blended.FIGURES;
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        VolumeBasis basis = asked.basis();
        Optional<Amount> there = asked.read("volume", TEXT::amount);
        Optional<Strength> strong = asked.strength("from", basis);
        Optional<Strength> target = asked.strength("to", basis);
        Optional<Strength> second = asked.strength("with", basis);
        asked.refuseIfAnyWrong();
        Poured poured = new Poured(there.orElseThrow(), strong.orElseThrow());
        Reach reach = new Reach(target.orElseThrow(), second.orElseThrow());
        return Blended.told(
                "Bringing " + asked.text("volume") + " from " + asked.text("from") + " to " + asked.text("to")
                        + " with " + asked.text("with") + ", at " + basis.label(),
                basis,
                BlendSpirits.answer(new BlendSpirits.Asked(List.of(poured), Optional.of(reach), basis), workings));
    }
}

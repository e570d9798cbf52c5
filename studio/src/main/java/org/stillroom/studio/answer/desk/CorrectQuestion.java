package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.core.plan.Correction.Batch;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.CorrectBatch;
import org.stillroom.studio.usecase.CorrectBatch.Asking;
import org.stillroom.studio.usecase.CorrectBatch.Found;
import org.stillroom.studio.usecase.left.ShelfAdditions;

/** Tells what to add to a batch so that it comes to its target. */
public final class CorrectQuestion extends DeskQuestion {
    private static final Set<String> WISHES =
            Set.of("to-strength", "to-sugar", "to-acidity", "with", "restore", "vessel");

    private final @Nullable ShelfAdditions shelf;

    /** @param shelf whose bottles alone are one of the ways, or null */
    public CorrectQuestion(@Nullable ShelfAdditions shelf) {
        this.shelf = shelf;
    }

    @Override
    public String name() {
        return "correct";
    }

    @Override
    public String summary() {
        return "What to add to a batch so that it comes to its target, several ways side by side.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("volume", "of the batch at 20 °C, such as 1.9L"),
                Part.required("strength", "of the batch, such as 27.1%"),
                Part.usual("sugar", "0g/L", "of the batch, such as 165g/L"),
                Part.usual("acidity", "0g/L", "of the batch, as citric acid"),
                Part.text("strength-within", "how far the strength may be off, such as 0.4%, as gauge tells it"),
                Part.text("sugar-within", "how far the sugar may be off, such as 5g/L"),
                Part.text("to-strength", "strength wanted, such as 28%"),
                Part.text("to-sugar", "sugar wanted, such as 180g/L"),
                Part.text("to-acidity", "acidity wanted, such as 5g/L"),
                new Part(
                        "with",
                        "what may be added beside sugar and water: 96%, 65Bx, \"simple syrup\", sugar, honey, water or \"citric acid\"; with what there is"
                                + " of it, such as 96%=200ml; may be repeated",
                        null,
                        Part.Form.TEXTS_AS_TYPED),
                new Part(
                        "restore",
                        "an extract whose flavour is to be kept, with how much went in and its strength, such as \"bay"
                                + " tincture=40ml@60%\"; one of the shelf needs no strength; may be repeated",
                        null,
                        Part.Form.TEXTS_AS_TYPED),
                Part.text("vessel", "the most that there is room for, such as 2L"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("volume", "1.9L"),
                new Manner.Given("strength", "27.1%"),
                new Manner.Given("to-strength", "28%"),
                new Manner.Given("with", "96%"));
    }

    @Override
    public List<String> figures() {
        return List.of();
    }

    @Override
    public List<Shape.Key> further() {
        return CorrectionTold.FURTHER;
    }

    /**
     * Returns the ways to correct a batch that was gauged.
     *
     * @param flavours extracts whose flavour is to be kept, with how much of each went in
     * @param typed texts by the names of the parts that say what is wanted and what there is for it
     * @throws WrongInput when something of it is not understood
     */
    public Found found(Batch batch, List<Added> flavours, Map<String, List<String>> typed, Manner manner) {
        List<Part> wishes =
                parts().stream().filter(part -> WISHES.contains(part.name())).toList();
        AskedTexts asked = new AskedTexts(wishes, typed, manner, new Objections());
        Wish wish = wish(asked);
        asked.refuseIfAnyWrong();
        List<Added> all = new ArrayList<>(wish.flavours());
        all.addAll(flavours);
        return ask(asked, () -> CorrectBatch.answer(asking(batch, wish, all), Workings.NONE));
    }

    /** What is wanted, and what there is for it. */
    private record Wish(
            Map<Asked, Double> target,
            List<Addition> with,
            List<Added> flavours,
            @Nullable Volume vessel) {}

    private Asking asking(Batch batch, Wish wish, List<Added> flavours) {
        List<Addition> plain = shelf == null ? null : shelf.plain();
        return new Asking(batch, wish.target(), wish.with(), plain, flavours, wish.vessel());
    }

    private Wish wish(AskedTexts asked) {
        Map<Asked, Double> target = figures(asked, "to-");
        List<Addition> with = new ArrayList<>();
        for (String text : asked.texts("with")) {
            new AdditionText(asked, text).read().ifPresent(with::add);
        }
        List<Added> flavours = new ArrayList<>();
        for (String text : asked.texts("restore")) {
            new FlavourText(asked, shelf, text).read().ifPresent(flavours::add);
        }
        Optional<Volume> vessel = asked.read("vessel", TEXT::volume);
        if (target.isEmpty()) {
            asked.object("", "nothing is wanted.", "Give a target, such as " + asked.write("to-strength", "28%") + ".");
        }
        if (vessel.isPresent() && !(vessel.get().millilitres() > 0.0)) {
            asked.object("vessel", "it holds nothing.", "Give what it holds.");
        }
        return new Wish(target, with, flavours, vessel.orElse(null));
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Volume> volume = asked.read("volume", TEXT::volume);
        Map<Asked, Double> now = figures(asked, "");
        Map<Asked, Double> doubt = new EnumMap<>(Asked.class);
        asked.read("strength-within", TEXT::percent).ifPresent(half -> doubt.put(Asked.STRENGTH, half));
        perLitre(asked, "sugar-within").ifPresent(half -> doubt.put(Asked.SUGAR, half));
        Wish wish = wish(asked);
        if (volume.isPresent() && !(volume.get().millilitres() > 0.0)) {
            asked.object("volume", "there is nothing in the vessel.", "Give how much there is.");
        }
        asked.refuseIfAnyWrong();
        Batch batch = CorrectBatch.batch(volume.orElseThrow(), now, doubt);
        return CorrectionTold.told(
                "Correcting " + asked.text("volume") + " at " + asked.text("strength") + " and " + asked.text("sugar"),
                CorrectBatch.answer(asking(batch, wish, wish.flavours()), workings));
    }

    private static Map<Asked, Double> figures(AskedTexts asked, String prefix) {
        Map<Asked, Double> figures = new EnumMap<>(Asked.class);
        asked.read(prefix + "strength", TEXT::percent).ifPresent(percent -> figures.put(Asked.STRENGTH, percent));
        perLitre(asked, prefix + "sugar").ifPresent(grams -> figures.put(Asked.SUGAR, grams));
        perLitre(asked, prefix + "acidity").ifPresent(grams -> figures.put(Asked.ACIDITY, grams));
        return figures;
    }

    private static Optional<Double> perLitre(AskedTexts asked, String part) {
        Optional<Share> share = asked.read(part, TEXT::share);
        if (share.isPresent() && !(share.get() instanceof MassConcentration)) {
            asked.object(part, asked.text(part) + " is not per litre.", "Write g/L, such as 165 g/L.");
        }
        return share.filter(MassConcentration.class::isInstance)
                .map(concentration -> ((MassConcentration) concentration).gramsPerLitre());
    }
}

package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.MatchOils;
import org.stillroom.studio.usecase.MatchOils.Bottle;
import org.stillroom.studio.usecase.MatchOils.Found;

/** Tells which oils of a shelf come nearest to one that is not there. */
final class MatchQuestion extends DeskQuestion {
    private final List<Bottle> shelf;
    private final Grounds grounds;

    /**
     * Makes the question.
     *
     * @param shelf oils that there are besides those that are named
     * @param grounds what they are judged on
     */
    MatchQuestion(List<Bottle> shelf, Grounds grounds) {
        this.shelf = List.copyOf(shelf);
        this.grounds = grounds;
    }

    /** Less of a constituent is not shown, mg. */
    private static final double SHOWN = 0.01;

    @Override
    public String name() {
        return "match";
    }

    @Override
    public String summary() {
        return "Which oils of a shelf come nearest to one that is not there, and in what amounts.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                new Part(
                        "want",
                        "an oil of the essence and how much, as OIL=MASS, such as bergamot=100mg",
                        null,
                        Part.Form.NAMED_TEXTS),
                new Part("have", "an oil that there is, such as lemon", null, Part.Form.TEXTS),
                Part.usual("by", "mass", "what counts: mass or smell"),
                Part.usual("for", "1L", "how much drink the essence goes into"),
                Part.usual("strength", "30%", "of that drink"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("want", "lime=90mg"),
                new Manner.Given("want", "neroli=9mg"),
                new Manner.Given("have", "lemon"),
                new Manner.Given("have", "petitgrain"));
    }

    @Override
    public List<String> figures() {
        return List.of("off_percent");
    }

    @Override
    public List<String> tables() {
        return List.of("take", "constituents", "limits");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Map<EssentialOil, Double> wanted = new LinkedHashMap<>();
        for (String text : asked.texts("want")) {
            want(asked, text, wanted);
        }
        List<Bottle> there = new ArrayList<>(shelf);
        for (String text : asked.texts("have")) {
            oil(asked, "have", text)
                    .map(Bottle::of)
                    .filter(each -> !there.contains(each))
                    .ifPresent(there::add);
        }
        if (!asked.has("want")) {
            asked.object(
                    "want",
                    "no oil is named that is to be matched.",
                    "Write it with how much, such as " + asked.write("want", "bergamot=100mg", "have", "lemon") + ".");
        }
        if (there.isEmpty() && !asked.has("have")) {
            asked.object(
                    "have",
                    "no oil is named that there is, and no shelf brings one.",
                    "Name each that you have, such as " + asked.write("have", "lemon", "have", "petitgrain")
                            + ", or a shelf with essential oils on it.");
        }
        Optional<MatchOils.By> by = asked.choice(
                "by", List.of(MatchOils.By.values()), each -> each.name().toLowerCase(Locale.ROOT));
        Optional<Volume> litres = asked.read("for", TEXT::volume);
        litres.filter(each -> each.millilitres() == 0.0)
                .ifPresent(none -> asked.object("for", "there is no drink in 0 L.", "Give how much it is."));
        Optional<AlcoholByVolume> strength =
                asked.strength("strength", VolumeBasis.AT_20C).map(MatchQuestion::at20);
        asked.refuseIfAnyWrong();
        Found found = MatchOils.answer(
                new MatchOils.Asked(
                        wanted,
                        there,
                        by.orElseThrow(),
                        litres.orElseThrow().millilitres() / 1000.0,
                        strength.orElseThrow(),
                        grounds),
                workings);
        Told told = switch (by.orElseThrow()) {
            case MASS ->
                new Told("Nearest from the shelf, by the mass of each constituent")
                        .put(new Name("off_percent", "the profile is off by", "%", 0), found.missed());
            case SMELL ->
                new Told("Nearest from the shelf, by smell: each constituent over its odour threshold")
                        .put(new Name("off_percent", "the profile of smell is off by", "%", 0), found.missed());
        };
        if (found.notNear() != null) {
            told.before(found.notNear().at(asked.name("have")));
        }
        return told.table(new Told.Series(
                        "take",
                        "Take",
                        List.of(new Name("mg", "amount", "mg", 1)),
                        found.taken().stream()
                                .map(each -> new Told.Series.Line(each.oil(), List.of(each.milligrams())))
                                .toList()))
                .table(new Told.Series(
                        "constituents",
                        "Constituents",
                        List.of(new Name("wanted_mg", "wanted", "mg", 2), new Name("comes_mg", "comes", "mg", 2)),
                        found.compared().stream()
                                .filter(each -> each.wanted() >= SHOWN || each.comes() >= SHOWN)
                                .map(each -> new Told.Series.Line(each.name(), List.of(each.wanted(), each.comes())))
                                .toList()))
                .table(new Told.Series(
                        "limits",
                        "Watched substances, at most",
                        List.of(
                                new Name("comes_mg_per_kg", "comes", "mg/kg of the drink", 2),
                                new Name("limit_mg_per_kg", "law allows", "mg/kg", 2)),
                        found.watched().stream()
                                .map(each -> new Told.Series.Line(
                                        each.substance() + ", " + each.maximum().whose(),
                                        List.of(each.comes(), each.most())))
                                .toList()))
                .findings(found.findings());
    }

    private static AlcoholByVolume at20(Strength strength) {
        return strength instanceof AlcoholByVolume byVolume && byVolume.basis() == VolumeBasis.AT_20C
                ? byVolume
                : Strengths.byVolume(Strengths.massFraction(strength), VolumeBasis.AT_20C);
    }

    private static void want(AskedTexts asked, String text, Map<EssentialOil, Double> wanted) {
        int cut = text.indexOf('=');
        if (cut < 1) {
            asked.object("want", "\"" + text + "\" has no amount.", "Write it such as bergamot=100mg.");
            return;
        }
        Optional<EssentialOil> oil = oil(asked, "want", text.substring(0, cut));
        Optional<Mass> mass = asked.read("want", text.substring(cut + 1), TEXT::mass);
        mass.filter(each -> each.grams() == 0.0)
                .ifPresent(none -> asked.object("want", "0 g of an oil are not wanted.", "Give an amount."));
        oil.ifPresent(each -> mass.ifPresent(grams -> wanted.merge(each, grams.grams(), Double::sum)));
    }

    private static Optional<EssentialOil> oil(AskedTexts asked, String part, String name) {
        EssentialOil oil = EssentialOils.find(name);
        List<EssentialOil> others = EssentialOils.otherSorts(name);
        if (oil != null && !others.isEmpty()) {
            asked.note(Finding.of(
                    "oil-sort",
                    Severity.NOTE,
                    name.strip(),
                    "taken as",
                    "It is taken as " + oil.name() + "; there is also: "
                            + String.join(
                                    ", ",
                                    others.stream().map(EssentialOil::name).toList()) + ".",
                    "Write its whole name where you mean another."));
        }
        if (oil == null) {
            List<String> near = MatchOils.near(name);
            asked.object(
                    part,
                    "\"" + name.strip() + "\" is not in the table of oils.",
                    near.isEmpty()
                            ? "Look it up with materials, where all are listed; your own oil goes by the analysis of its supplier."
                            : "Near it are: " + String.join(", ", near) + ".");
        }
        return Optional.ofNullable(oil);
    }
}

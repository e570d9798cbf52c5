package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.MatchOils;
import org.stillroom.studio.usecase.MatchOils.Found;

/** Tells which oils of a shelf come nearest to one that is not there. */
final class MatchQuestion extends DeskQuestion {
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
                Part.usual("by", "mass", "what counts: mass or smell"));
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
        return List.of("take", "constituents");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Map<EssentialOil, Double> wanted = new LinkedHashMap<>();
        for (String text : asked.texts("want")) {
            want(asked, text, wanted);
        }
        List<EssentialOil> shelf = new ArrayList<>();
        for (String text : asked.texts("have")) {
            oil(asked, "have", text).filter(each -> !shelf.contains(each)).ifPresent(shelf::add);
        }
        if (!asked.has("want") || !asked.has("have")) {
            asked.object(
                    "want",
                    "an essence and a shelf are wanted.",
                    "Write for instance " + asked.write("want", "bergamot=100mg", "have", "lemon") + ".");
        }
        Optional<MatchOils.By> by = asked.choice(
                "by", List.of(MatchOils.By.values()), each -> each.name().toLowerCase(Locale.ROOT));
        asked.refuseIfAnyWrong();
        Found found = MatchOils.answer(new MatchOils.Asked(wanted, shelf, by.orElseThrow()), workings);
        return new Told("Nearest from the shelf")
                .put(new Name("off_percent", "the profile is off by", "%", 0), found.missed())
                .table(new Told.Series(
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
                .findings(found.findings());
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
        if (oil == null) {
            asked.object(
                    part,
                    "\"" + name.strip() + "\" is not in the table of oils.",
                    "Known are: "
                            + String.join(
                                    ", ",
                                    EssentialOils.list().stream()
                                            .map(EssentialOil::name)
                                            .sorted()
                                            .toList()) + ".");
        }
        return Optional.ofNullable(oil);
    }
}

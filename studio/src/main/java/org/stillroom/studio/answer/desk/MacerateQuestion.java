package org.stillroom.studio.answer.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Steeping;
import org.stillroom.core.extraction.SteepingFit;
import org.stillroom.core.extraction.Tincture;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.Macerate;
import org.stillroom.studio.usecase.Macerate.Added;
import org.stillroom.studio.usecase.Macerate.Found;
import org.stillroom.studio.usecase.Macerate.Order;
import org.stillroom.studio.usecase.Macerate.Way;
import org.stillroom.studio.usecase.MacerateFindings;

/** Tells what comes of plants in spirit. */
final class MacerateQuestion extends DeskQuestion {
    private static final String ON_FRUIT = "Sugar on fruit";
    private static final String OF_IT = "What you make of it";
    private static final String KNOWN = "What you know of the plant";
    private static final String BY_RATIO = "By a ratio, or to order";
    private static final String OTHERWISE = "Other ways to draw it";

    private final Grounds grounds;

    /** Makes the question of plants that are judged on these grounds. */
    MacerateQuestion(Grounds grounds) {
        this.grounds = grounds;
    }

    @Override
    public String name() {
        return "macerate";
    }

    @Override
    public String summary() {
        return "What comes of plants in spirit: strength, volume, what the marc holds, what to add.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                new Part(
                        "plant",
                        "such as \"lemon peel\" or \"dried herbs\"; once per plant",
                        null,
                        Part.Form.TEXTS_AS_TYPED),
                new Part("mass", "of the plant as used, such as 500g; once per plant", null, Part.Form.TEXTS_AS_TYPED),
                Part.text("solvent", "how much spirit, such as 900ml"),
                Part.text("strength", "of the spirit, such as 95%"),
                new Part("pressed", "the marc goes through a press", null, Part.Form.FLAG),
                Part.text("sugar-on-fruit", "sugar that is to draw the juice, such as 400g")
                        .in(ON_FRUIT),
                Part.usual(
                                "order",
                                Order.TOGETHER.label(),
                                "of sugar and spirit: together, sugar-first, spirit-first (in one jar), or on-the-marc (once the spirit was poured off)")
                        .oneOf(
                                choice(Order.TOGETHER, "sugar and spirit together"),
                                choice(Order.SUGAR_FIRST, "sugar first, spirit later"),
                                choice(Order.SPIRIT_FIRST, "spirit first, sugar later in the same jar"),
                                choice(Order.MARC, "spirit first and poured off, then sugar on the fruit"))
                        .in(ON_FRUIT),
                Part.text("first-spirit", "where sugar comes first, the spirit that goes on with it, such as 100ml")
                        .in(ON_FRUIT),
                Part.text(
                                "make-up-to",
                                "volume to fill up to: with the same spirit, or with water to the strength wanted")
                        .in(OF_IT),
                Part.text("to", "strength of the liqueur, such as 28%").in(OF_IT),
                Part.text("sugar", "of the liqueur, such as 220g/L").in(OF_IT),
                Part.usual("with", "96%", "spirit to fortify the liqueur with").in(OF_IT),
                new Part(
                                "water",
                                "water in the plant, where you know it, such as 12%; of several plants \"plum=84%\"",
                                null,
                                Part.Form.NAMED_TEXTS)
                        .in(KNOWN),
                new Part(
                                "own-sugar",
                                "sugar in the plant, where you know it, such as 9%; of several plants \"plum=9%\"",
                                null,
                                Part.Form.NAMED_TEXTS)
                        .in(KNOWN),
                new Part(
                                "sort",
                                "of a plant that no table has, such as fresh-fruit, dried-fruit, fresh-peel, dried-leaf, dried-root",
                                null,
                                Part.Form.NAMED_TEXTS)
                        .in(KNOWN),
                Part.text("held", "what a gram of the plant holds back, where you know it, such as 1.2ml")
                        .in(KNOWN),
                new Part(
                                "sample",
                                "what you found on a day, as DAY=VALUE, such as 3=41; three or more",
                                null,
                                Part.Form.NAMED_TEXTS)
                        .in(KNOWN),
                Part.text("ratio", "plant to solvent in g and mL in place of the volume, such as 1:5, or 200g/L")
                        .in(BY_RATIO),
                Part.text("yield", "volume that is to come, such as 1L; with a ratio, in place of the mass")
                        .in(BY_RATIO),
                Part.text(
                                "tincture",
                                "a tincture of the pharmacopoeias in place of spirit and ratio, such as \"lemon tincture\"")
                        .in(BY_RATIO),
                new Part(
                                "again",
                                "more on the marc: of the same spirit, such as 300ml, or of another strength, such as 300ml@40%, or 300ml@0% for water; once per time",
                                null,
                                Part.Form.TEXTS_AS_TYPED)
                        .in(OTHERWISE),
                Part.text("percolate", "more of the same spirit that runs slowly through the marc, such as 500ml")
                        .in(OTHERWISE),
                Part.usual(
                                "way",
                                Way.JAR.label(),
                                "how it is drawn: jar, bath (sealed and warm) or siphon (under pressure)")
                        .oneOf(
                                new Part.Choice(Way.JAR.label(), "in a jar"),
                                new Part.Choice(Way.BATH.label(), "sealed in a warm bath"),
                                new Part.Choice(Way.SIPHON.label(), "in a siphon, under pressure"))
                        .in(OTHERWISE),
                Part.usual("temperature", "20C", "where the jar stands; 50C for a bath")
                        .in(OTHERWISE),
                Part.text("cask", "in place of plants, a small cask that holds so much, such as 5L")
                        .in(OTHERWISE));
    }

    private static Part.Choice choice(Order order, String words) {
        return new Part.Choice(order.label(), words);
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("plant", "plum"),
                new Manner.Given("mass", "1kg"),
                new Manner.Given("solvent", "1L"),
                new Manner.Given("strength", "70%"),
                new Manner.Given("sugar-on-fruit", "400g"));
    }

    @Override
    public List<String> figures() {
        return List.of(
                "strength_vol_percent",
                "volume_ml",
                "sugar_g_per_l",
                "own_sugar_g_per_l",
                "held_by_marc_ml",
                "yield_percent",
                "plant_g_per_l",
                "taste_from_day",
                "little_left_from_day",
                "samples_end",
                "reached_percent",
                "undissolved_sugar_g",
                "comes_back_ml",
                "before_ml",
                "before_vol_percent",
                "before_sugar_g_per_l",
                "before_undissolved_sugar_g",
                "before_delle_units",
                "before_water_activity",
                "taste_from_hour",
                "little_left_from_hour",
                "pressure_bar",
                "siphon_fillings",
                "gas_charges",
                "surface_cm2_per_l",
                "times_of_225_l",
                "taste_every_days",
                "as_a_year_days",
                "plant_g",
                "solvent_ml",
                "solvent_vol_percent",
                "add_solvent_ml",
                "add_spirit_ml",
                "add_sugar_g",
                "add_water_g",
                "made_ml",
                "made_vol_percent");
    }

    @Override
    public List<String> tables() {
        return List.of("draws", "other_spirits", "warmer");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        if (asked.has("cask")) {
            return CaskTold.of(asked, parts().stream().map(Part::name).toList());
        }
        Optional<Tincture> tincture = MacerateAsked.tincture(asked);
        Macerate.Asked question = MacerateAsked.read(asked, tincture, grounds);
        Macerate.Asked scaled = asked.has("yield") ? scaled(asked, question) : question;
        return told(asked, scaled, Macerate.answer(scaled, workings), tincture);
    }

    private static Told told(AskedTexts asked, Macerate.Asked question, Found found, Optional<Tincture> tincture) {
        Told told = new Told("Maceration at 20 °C")
                .putStrength(new Name("strength_vol_percent", "strength", "% vol at 20 °C", 1), found.strength())
                .put(new Name("volume_ml", "comes", "mL at 20 °C", 0), found.volume())
                .put(new Name("sugar_g_per_l", "sugar in it", "g/L at 20 °C", 0), found.sugar())
                .put(new Name("own_sugar_g_per_l", "of it the plants' own", "g/L at 20 °C", 0), found.ownSugar())
                .put(new Name("held_by_marc_ml", "held by the marc", "mL", 0), found.held())
                .put(new Name("yield_percent", "of the extract comes", "%", 1), found.yield())
                .put(new Name("plant_g_per_l", "plant in it", "g/L", 0), found.plantPerLitre())
                .putOrNone(new Name("taste_from_day", "taste from day", "", 1), found.tasteFrom())
                .putOrNone(new Name("little_left_from_day", "little left to gain from day", "", 1), found.littleLeft());
        putFit(told, found.fit());
        putSugared(told, found.sugared());
        putWay(told, found);
        if (asked.has("yield")) {
            double plants =
                    question.charges().stream().mapToDouble(Charge::grams).sum();
            told.put(new Name("plant_g", "plant to take", "g", 0), new Estimate(plants, 0.0));
        }
        if (!asked.has("solvent")) {
            double strength =
                    Essentials.of(MadeUp.spirit(question.strength()).toGrams()).strength();
            told.put(
                            new Name("solvent_ml", "spirit to pour on it", "mL at 20 °C", 0),
                            new Estimate(question.solvent(), 0.0))
                    .put(
                            new Name("solvent_vol_percent", "strength of that spirit", "% vol at 20 °C", 1),
                            new Estimate(strength, 0.0));
        }
        putAdded(told, found.end());
        if (found.draws().size() > 1) {
            told.table(draws(found.draws()));
        }
        putOthers(told, found);
        MacerateFindings.overfull(question).ifPresent(told::before);
        told.findings(found.findings().stream()
                .map(each -> tincture.isPresent() && each.rule().equals("more-comes") && !asked.has("make-up-to")
                        ? each.at(tincture.get().name())
                        : each)
                .toList());
        Added end = found.end();
        double finished =
                (end == null || !(question.end() instanceof Macerate.UpTo) ? found.strength() : end.strength()).value();
        tincture.ifPresent(each -> told.findings(TinctureFinding.of(each, question, finished)));
        return told;
    }

    private static void putWay(Told told, Found found) {
        Macerate.Bath bath = found.bath();
        if (bath != null) {
            told.putOrNone(new Name("taste_from_hour", "taste from hour", "", 0), bath.tasteFrom())
                    .putOrNone(
                            new Name("little_left_from_hour", "little left to gain from hour", "", 0),
                            bath.littleLeft())
                    .put(new Name("pressure_bar", "pressure in the jar, over the room's", "bar", 2), bath.pressure());
        }
        Macerate.Siphon siphon = found.siphon();
        if (siphon != null) {
            told.put(
                            new Name("siphon_fillings", "fillings of a siphon of half a litre", "", 0),
                            new Estimate(siphon.fillings(), 0.0))
                    .put(new Name("gas_charges", "charges of gas", "", 0), new Estimate(siphon.charges(), 0.0));
        }
    }

    private static void putFit(Told told, @Nullable SteepingFit fit) {
        if (fit == null) {
            return;
        }
        Steeping steeping = fit.steeping();
        told.putOrNone(new Name("samples_end", "your samples go to", "", Name.IN_FIGURES), fit.end());
        if (steeping != null) {
            told.put(
                    new Name("reached_percent", "of it there with the last sample", "%", 0),
                    steeping.partAfter(fit.last()).times(100.0));
        }
    }

    private static void putSugared(Told told, Macerate.@Nullable Sugared sugared) {
        if (sugared == null) {
            return;
        }
        told.put(new Name("undissolved_sugar_g", "sugar that does not dissolve", "g", 0), sugared.undissolved());
        Estimate back = sugared.comesBack();
        if (back != null) {
            told.put(new Name("comes_back_ml", "comes after the sugar", "mL at 20 °C", 0), back);
        }
        Macerate.Before before = sugared.before();
        if (before == null) {
            return;
        }
        String what = switch (sugared.order()) {
            case TOGETHER, SUGAR_FIRST -> "before the spirit: ";
            case SPIRIT_FIRST -> "before the sugar: ";
            case MARC -> "poured off before: ";
        };
        told.put(new Name("before_ml", what + "liquid", "mL at 20 °C", 0), before.volume())
                .putStrength(new Name("before_vol_percent", what + "strength", "% vol at 20 °C", 1), before.strength())
                .put(new Name("before_sugar_g_per_l", what + "sugar", "g/L at 20 °C", 0), before.sugar());
        if (sugared.order() == Macerate.Order.SUGAR_FIRST) {
            told.put(
                            new Name("before_undissolved_sugar_g", what + "sugar that does not dissolve", "g", 0),
                            before.undissolved())
                    .put(new Name("before_delle_units", what + "units of Delle", "", 0), before.delle())
                    .put(new Name("before_water_activity", what + "water activity", "", 2), before.waterActivity());
        }
    }

    private static void putAdded(Told told, @Nullable Added added) {
        if (added == null) {
            return;
        }
        told.put(new Name("add_solvent_ml", "add of the same spirit", "mL at 20 °C", 0), amount(added.solvent()))
                .put(new Name("add_spirit_ml", "add of the strong spirit", "mL at 20 °C", 0), amount(added.spirit()))
                .put(new Name("add_sugar_g", "add sugar", "g", 0), amount(added.sugar()))
                .put(new Name("add_water_g", "add water", "g", 0), amount(added.water()))
                .put(new Name("made_ml", "makes", "mL at 20 °C", 0), added.volume())
                .putStrength(new Name("made_vol_percent", "strength then", "% vol at 20 °C", 1), added.strength());
    }

    private static Told.Series draws(List<Macerate.Draw> draws) {
        List<Told.Series.Line> lines = new ArrayList<>();
        for (Macerate.Draw draw : draws) {
            lines.add(new Told.Series.Line(
                    "draw " + (lines.size() + 1), List.of(draw.poured(), draw.comes(), draw.strength())));
        }
        return new Told.Series(
                "draws",
                "Draw by draw",
                List.of(
                        new Name("poured_ml", "poured on", "mL at 20 °C", 0),
                        new Name("comes_ml", "comes", "mL at 20 °C", 0),
                        new Name("strength_vol_percent", "strength", "% vol at 20 °C", 1)),
                lines);
    }

    /** What is asked with one spirit in one place is told for others too. */
    private static void putOthers(Told told, Found found) {
        if (!found.spirits().isEmpty()) {
            told.table(new Told.Series(
                    "other_spirits",
                    "With another spirit",
                    List.of(
                            new Name("comes_ml", "comes", "mL at 20 °C", 0),
                            new Name("strength_vol_percent", "strength", "% vol at 20 °C", 1)),
                    found.spirits().stream()
                            .map(each -> new Told.Series.Line(
                                    "of " + QuantityWords.plain(each.spirit()) + " % vol",
                                    List.of(each.comes(), each.strength())))
                            .toList()));
        }
        if (!found.warmer().isEmpty()) {
            told.table(new Told.Series(
                    "warmer",
                    "In a warmer place",
                    List.of(
                            new Name("taste_from_day", "taste from day", "", 1),
                            new Name("little_left_from_day", "little left to gain from day", "", 1)),
                    found.warmer().stream()
                            .map(each -> new Told.Series.Line(
                                    "at " + QuantityWords.plain(each.celsius()) + " °C",
                                    List.of(each.tasteFrom(), each.littleLeft())))
                            .toList()));
        }
    }

    /** An amount in its doubt, which is never less than none. */
    private static Bounded amount(Estimate estimate) {
        return Bounded.within(estimate, 0.0, Double.POSITIVE_INFINITY);
    }

    /** What comes grows in proportion to plant and solvent together, so that one trial tells how much to take. */
    private static Macerate.Asked scaled(AskedTexts asked, Macerate.Asked trial) {
        double wanted = MacerateAsked.millilitres(asked, "yield").orElseThrow();
        Found found = Macerate.answer(trial, Workings.NONE);
        boolean byTheBook = trial.end() instanceof Macerate.UpTo && !asked.has("make-up-to");
        double comes = byTheBook && found.end() != null
                ? found.end().volume().value()
                : found.volume().value();
        double factor = wanted / comes;
        if (trial.charges().stream().anyMatch(each -> factor * each.grams() >= Charge.TOO_MUCH)) {
            throw new Impossible("yield", "so much is made in no vat.", "Look at the unit.");
        }
        List<Charge> charges = trial.charges().stream()
                .map(each -> new Charge(each.plant(), factor * each.grams()))
                .toList();
        OptionalDouble through = trial.through();
        Macerate.Sugaring sugaring = trial.sugaring();
        return new Macerate.Asked(
                charges,
                factor * trial.solvent(),
                trial.strength(),
                trial.held(),
                trial.pressing(),
                trial.again().stream().map(each -> each.times(factor)).toList(),
                through.isPresent() ? OptionalDouble.of(factor * through.getAsDouble()) : through,
                sugaring == null
                        ? null
                        : new Macerate.Sugaring(factor * sugaring.grams(), sugaring.order(), factor * sugaring.first()),
                trial.way(),
                trial.celsius(),
                trial.samples(),
                byTheBook && trial.end() instanceof Macerate.UpTo upTo
                        ? new Macerate.UpTo(factor * upTo.volume())
                        : trial.end(),
                trial.grounds());
    }
}

package org.stillroom.studio.web.safety;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Miss;
import org.stillroom.core.label.WayThere;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.plan.Correction;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Counted;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.web.tables.AskedField;
import org.stillroom.studio.wording.Words;

/**
 * A label before anything is bottled, as its page shows it.
 *
 * @param recipe its id
 * @param fields which bottle, what a serving is
 * @param problems what is wrong with what was typed
 * @param found or null as long as there is no plan that makes something
 * @param undrawn why it cannot be drawn so, or null
 * @param query what was asked, for the drawings of it
 */
public record LabelView(
        String recipe,
        String title,
        List<AskedField> fields,
        List<Finding> problems,
        TellLabel.@Nullable Found found,
        @Nullable Impossible undrawn,
        String query,
        Words words) {
    /** Group of the phrasebook for names and statements of law. */
    public static final String LABEL = "label";

    public LabelView {
        fields = List.copyOf(fields);
        problems = List.copyOf(problems);
    }

    /** Returns the names that no figure rules out, those that are shown best first. */
    public List<LegalClass> met(TellLabel.Found of) {
        return of.open().stream()
                .sorted(Comparator.comparing(LegalClass::standing))
                .toList();
    }

    /** Returns the names that its figures or its lines just rule out, the ones it misses by one of them alone before the others. */
    public List<LegalClass> missed(TellLabel.Found of) {
        return of.near().stream()
                .sorted(Comparator.comparing(
                        each -> each.misses().size() + each.ruledOut().size()))
                .toList();
    }

    /** Returns the names that are out of its reach, in one line. */
    public String far(TellLabel.Found of) {
        return words.say(
                "safety.far",
                of.far().stream()
                        .map(each -> market(each.market()) + " "
                                + words.told(LABEL, each.name()).text())
                        .collect(Collectors.joining("; ")));
    }

    /** Returns the countries of which the table of duty has no rate for its strength; empty where there are none. */
    public String withoutDuty(TellLabel.Found of) {
        return of.withoutDuty().isEmpty()
                ? ""
                : words.say(
                        "safety.noDuty",
                        of.withoutDuty().stream()
                                .map(country -> words.told(LABEL, country).text())
                                .collect(Collectors.joining(", ")));
    }

    /** Returns how far a name is shown, in words. */
    public String standing(LegalClass each) {
        return words.say("safety.standing." + each.standing().name());
    }

    /** Returns what to add so that a name is missed no more. */
    public String wayThere(LegalClass each) {
        WayThere way = each.wayThere();
        if (way == null) {
            return words.say("safety.noWay");
        }
        if (!way.isSensible()) {
            return words.say("safety.noSensibleWay");
        }
        String open =
                way.open().stream().map(one -> words.told(LABEL, one).text()).collect(Collectors.joining("; "));
        if (way.added().isEmpty()) {
            return words.say("safety.wayElse", open);
        }
        String added = way.added().stream().map(this::added).collect(Collectors.joining(words.say("safety.and")));
        String sweet = each.market() == Market.EU
                ? words.say("safety.wayInvert", words.number(way.then().value(Figure.SUGAR_AS_INVERT), 1))
                : words.say("safety.wayWeight", words.number(way.then().value(Figure.SUGAR_BY_MASS), 1));
        String there = words.say(
                "safety.way",
                words.amount(new Volume(way.from())),
                added,
                words.number(way.then().value(Figure.STRENGTH), 1),
                sweet,
                words.amount(new Volume(way.millilitres())));
        return open.isEmpty() ? there : there + " " + words.say("safety.wayOpen", open);
    }

    private String added(Correction.Added added) {
        String name = words.told(LABEL, added.addition().name()).text();
        return added.addition().isSolid()
                ? words.say("safety.addSolid", words.amount(new Mass(added.grams())), name)
                : words.say(
                        "safety.addLiquid",
                        words.amount(new Volume(added.millilitres())),
                        words.amount(new Mass(added.grams())),
                        name);
    }

    /** Returns the duty of a bottle by country, with the date of its rate. */
    public List<Duty> duty(TellLabel.Found of) {
        return of.duty().stream()
                .map(each -> new Duty(
                        words.told(LABEL, each.country()).text(),
                        words.number(each.perBottle(), 2) + " " + each.currency(),
                        words.say(each.recalled() ? "safety.dutyRecalled" : "safety.dutyRead", each.asOf())))
                .toList();
    }

    /** What the duty of a country on a bottle is, and by which rates. */
    public record Duty(String country, String perBottle, String rates) {}

    /** Returns by how much a figure misses a name, and what would do. */
    public String told(Miss miss) {
        return words.say(
                miss.by() == 0.0 ? "safety.missNone" : miss.isOver() ? "safety.missOver" : "safety.miss",
                words.told(LABEL, miss.what()).text(),
                words.number(miss.found(), 1),
                words.told(LABEL, miss.way()).text(),
                words.number(miss.wanted(), 1),
                words.told(LABEL, miss.unit()).text(),
                words.number(miss.by(), 1));
    }

    public String strength(TellLabel.Found of) {
        return words.say(
                "safety.stated",
                words.number(of.strength().percent(), 1),
                words.number(of.strength().low(), 1),
                words.number(of.strength().high(), 1));
    }

    /** A figure of the label. */
    public record Row(String what, String value) {}

    /** Returns sugar per 100 mL, and energy per 100 mL, of a serving and of a bottle. */
    public List<Row> energy(TellLabel.Found of) {
        return List.of(
                new Row(
                        words.say("safety.sugar100"),
                        side(of.counted().sugar(), words.number(of.figures().value(Figure.SUGAR) / 10.0, 1) + " g")),
                energy(of, "safety.per100", 100.0),
                energy(of, "safety.perServing", of.servingMillilitres()),
                energy(of, "safety.perBottle", of.bottleMillilitres()));
    }

    private Row energy(TellLabel.Found of, String key, double millilitres) {
        double times = millilitres / 100.0;
        return new Row(
                words.say(key, words.plain(millilitres)),
                side(
                        of.counted().energy(),
                        words.number(of.figures().value(Figure.ENERGY_KJ) * times, 0) + " kJ, "
                                + words.number(of.figures().value(Figure.ENERGY_KCAL) * times, 0) + " kcal"));
    }

    private String side(Counted.Side side, String counted) {
        return words.say("safety.counted." + side.name(), counted);
    }

    /** Returns how many drinks a serving and a bottle are, by country. */
    public List<Row> drinks(TellLabel.Found of) {
        return of.drinks().stream()
                .map(drink -> new Row(
                        name(drink),
                        words.say(
                                "safety.drinks",
                                words.number(drink.in(of.ethanolPerServing()), 1),
                                words.number(drink.in(of.ethanolPerBottle()), 1))))
                .toList();
    }

    private String name(Knowledge.StandardDrink drink) {
        String country = words.told("alcohol", drink.country()).text();
        return drink.name().isEmpty() ? country : country + ", " + drink.name();
    }

    /** Returns in which markets spirits are sold in such a bottle. */
    public String size(TellLabel.Found of) {
        return words.say("safety.size." + of.lawfulInEu() + "." + of.lawfulInUs(), words.plain(of.bottleMillilitres()));
    }

    /** Returns why it cannot be drawn, and what to do, as sentences. */
    public String undrawn(Impossible why) {
        String reason = words.told(LABEL, why.reason()).text();
        return Character.toUpperCase(reason.charAt(0)) + reason.substring(1) + " "
                + words.told(LABEL, why.remedy()).text();
    }

    public String market(Market market) {
        return market.name();
    }
}

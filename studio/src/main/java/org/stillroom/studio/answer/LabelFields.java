package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Miss;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.label.Statements;
import org.stillroom.core.label.WayThere;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.usecase.IngredientCost;
import org.stillroom.studio.usecase.TellLabel;

/** What a label says, as fields. */
public final class LabelFields {
    private LabelFields() {}

    /** Returns everything that is told. */
    public static Fields of(TellLabel.Found found) {
        double kilojoules = found.figures().value(Figure.ENERGY_KJ);
        double kilocalories = found.figures().value(Figure.ENERGY_KCAL);
        double served = found.servingMillilitres() / 100.0;
        Fields fields = new Fields()
                .put("title", found.title())
                .put("strength", strength(found.strength()))
                .put("sugar_as_invert_g_per_l", found.figures().value(Figure.SUGAR_AS_INVERT))
                .put("sugar_mass_percent", found.figures().value(Figure.SUGAR_BY_MASS))
                .put("sugar_g_per_100ml", found.figures().value(Figure.SUGAR) / 10.0)
                .put("sugar_is", found.counted().sugar().label())
                .put("place", found.market().name())
                .putTexts("ingredients", found.ingredients())
                .put("classes", classes(found.classes()))
                .put("called", classes(found.called()))
                .put("energy_kj_per_100ml", kilojoules)
                .put("energy_kcal_per_100ml", kilocalories)
                .put("energy_is", found.counted().energy().label())
                .put("serving_ml", found.servingMillilitres())
                .put("energy_kj_per_serving", kilojoules * served)
                .put("energy_kcal_per_serving", kilocalories * served)
                .put("bottle_ml", found.bottleMillilitres())
                .put("bottle_lawful_eu", found.lawfulInEu())
                .put("bottle_lawful_us", found.lawfulInUs())
                .put("standard_drinks", drinks(found))
                .put("statements", statements(found.statements()));
        if (found.keeping() != null) {
            fields.put("keeping", KeepingFields.of(found.keeping()));
        }
        return fields.put("duty", duty(found.duty()))
                .putTexts("no_rate_of", found.withoutDuty())
                .put("cost", cost(found))
                .put("link", found.link())
                .put("tables", RulesFields.editions(found.tables()))
                .put("findings", FindingFields.of(found.findings()))
                .put("against", FindingFields.of(found.against()))
                .put("not_for_sale", TellLabel.NOT_FOR_SALE)
                .put("standing", Safety.STANDING);
    }

    private static Fields cost(TellLabel.Found found) {
        IngredientCost cost = found.cost();
        Fields fields = new Fields()
                .put(
                        "per_bottle",
                        cost.perBottle().stream().map(PlanFields::money).toList())
                .put("cost_known", cost.isComplete())
                .putTexts("unpriced", cost.unpriced());
        Duty borne = found.borne();
        fields = borne == null ? fields.putNone("duty_of") : fields.put("duty_of", borne.country());
        return fields.put(
                "with_duty",
                borne == null
                        ? List.of()
                        : found.together().stream().map(PlanFields::money).toList());
    }

    private static Fields strength(StatedStrength strength) {
        return new Fields()
                .put("stated_vol_percent", strength.percent())
                .put("tolerance_vol_percent", strength.tolerance())
                .put("low_vol_percent", strength.low())
                .put("high_vol_percent", strength.high());
    }

    private static List<Fields> classes(List<LegalClass> classes) {
        List<Fields> all = new ArrayList<>();
        for (LegalClass each : classes) {
            all.add(new Fields()
                    .put("market", each.market().name())
                    .put("name", each.name())
                    .put("standing", each.standing().label())
                    .put("met_by_figures", each.misses().isEmpty())
                    .put("near", each.isMissedNearly())
                    .put("misses", misses(each))
                    .put("asked", asked(each))
                    .put("gets_there", waysThere(each))
                    .putTexts("not_shown", each.notShown())
                    .putTexts("met_by_rounding", each.byRounding())
                    .put("asks_besides", each.asksBesides())
                    .put("clause", each.clause())
                    .put("source", each.source().title())
                    .put("status", each.source().standing().label()));
        }
        return all;
    }

    private static List<Fields> waysThere(LegalClass each) {
        WayThere way = each.wayThere();
        return way == null || !way.isSensible()
                ? List.of()
                : List.of(new Fields()
                        .put("to_volume_ml", way.from())
                        .put(
                                "add",
                                way.added().stream()
                                        .map(added -> new Fields()
                                                .put("what", added.addition().name())
                                                .put("mass_g", added.grams())
                                                .putOrNone(
                                                        "volume_ml",
                                                        added.addition().isSolid() ? null : added.millilitres()))
                                        .toList())
                        .put("strength_vol_percent", way.then().value(Figure.STRENGTH))
                        .put("sugar_as_invert_g_per_l", way.then().value(Figure.SUGAR_AS_INVERT))
                        .put("sugar_mass_percent", way.then().value(Figure.SUGAR_BY_MASS))
                        .put("volume_20c_ml", way.millilitres())
                        .putTexts("then_open", way.open()));
    }

    private static List<Fields> asked(LegalClass each) {
        return each.asked().stream()
                .map(shown -> new Fields()
                        .put("what", shown.what())
                        .put("outcome", shown.outcome().label())
                        .put("why", shown.why())
                        .putTexts("by", shown.by()))
                .toList();
    }

    private static List<Fields> misses(LegalClass each) {
        List<Fields> misses = new ArrayList<>();
        for (Miss miss : each.misses()) {
            misses.add(new Fields()
                    .put("what", miss.what())
                    .put("found", miss.found())
                    .put("wanted", miss.wanted())
                    .put("way", miss.way())
                    .put("by", miss.by())
                    .put("unit", miss.unit()));
        }
        return misses;
    }

    private static List<Fields> drinks(TellLabel.Found found) {
        List<Fields> all = new ArrayList<>();
        for (Knowledge.StandardDrink drink : found.drinks()) {
            all.add(new Fields()
                    .put("country", drink.country())
                    .put("name", drink.name())
                    .put("ethanol_g", drink.grams())
                    .put("per_serving", drink.in(found.ethanolPerServing()))
                    .put("per_bottle", drink.in(found.ethanolPerBottle()))
                    .put("guideline", drink.guideline())
                    .put("status", drink.status().mayClear() ? "read" : "from memory"));
        }
        return all;
    }

    private static List<Fields> statements(List<Statements.Statement> statements) {
        List<Fields> all = new ArrayList<>();
        statements.forEach(each -> all.add(new Fields()
                .put("market", each.market().name())
                .put("words", each.words())
                .put("basis", each.basis())));
        return all;
    }

    private static List<Fields> duty(List<Duty> duties) {
        List<Fields> all = new ArrayList<>();
        duties.forEach(each -> all.add(new Fields()
                .put("country", each.country())
                .put("per_bottle", each.perBottle())
                .put("per_litre_of_pure_alcohol", each.perLitreOfAlcohol())
                .put("currency", each.currency())
                .put("as_of", each.asOf())
                .put("note", each.note())
                .put("status", (each.recalled() ? "from memory, " : "") + "rates as of " + each.asOf() + ", check")));
        return all;
    }
}

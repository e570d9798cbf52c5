package org.stillroom.studio.web.rest;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.Market;
import org.stillroom.core.quantity.Volume;
import org.stillroom.planner.shopping.Money;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.Words;

/**
 * Labels in the words of their reader.
 *
 * @param bottlings all bottles of the batch
 * @param chosen those whose labels are shown
 * @param lot the code of the lot that they are
 * @param label what they say, and what a bottle costs
 * @param typed how they are to look
 * @param problem why they cannot look so, or null
 */
public record LabelView(
        Batch batch,
        Words words,
        List<Bottling> bottlings,
        Bottling chosen,
        String lot,
        TellLabel.Found label,
        Typed typed,
        @Nullable Impossible problem) {
    /** What is wrong with a label goes by this name in the phrasebook. */
    static final String RULE = "label";

    public LabelView {
        bottlings = List.copyOf(bottlings);
    }

    /**
     * How labels are to look, as it was typed.
     *
     * @param query of the address, to look the same as a file
     */
    public record Typed(Language language, String size, Market place, String duty, boolean cost, String query) {}

    public List<Language> languages() {
        return List.of(Language.values());
    }

    public List<Market> places() {
        return List.of(Market.values());
    }

    public List<String> countries() {
        return Duty.countries(label.tables());
    }

    public String address(Bottling bottling) {
        return LabelPages.address(bottling);
    }

    /** Returns what bottles are called, with what one holds. */
    public String called(Bottling bottling) {
        return BatchView.bottles(words, bottling.first(), bottling.last()) + ", "
                + words.amount(new Volume(bottling.fill().millilitres()));
    }

    public String file(String kind) {
        String folder = kind.equals("pdf") ? "labels" : "label";
        return "/rest/batch/" + batch.id() + "/" + folder + "/" + address(chosen) + "." + kind + typed.query();
    }

    /** Returns what is in a bottle, and the bottle where it is counted, as money. */
    public String cost() {
        return BatchView.cost(words, chosen.each().outlay());
    }

    /** Returns the duty that a bottle bears; empty where none was asked for. */
    public String duty() {
        Duty borne = label.borne();
        return borne == null ? "" : money(new Money(borne.currency(), borne.perBottle()));
    }

    public String dutyAsOf() {
        Duty borne = label.borne();
        return borne == null
                ? ""
                : words.say(
                        borne.recalled() ? "rest.label.dutyRecalled" : "rest.label.dutyAsOf",
                        told(borne.country()),
                        borne.asOf(),
                        words.plain(borne.perLitreOfAlcohol()),
                        borne.currency());
    }

    /** Returns what a bottle costs with the duty that it bears. */
    public String together() {
        String sum = label.together().stream().map(this::money).collect(Collectors.joining(" + "));
        return label.cost().isComplete() ? sum : words.say("rest.costAtLeast", sum);
    }

    private String money(Money money) {
        return words.number(money.amount(), 2) + "\u00a0" + money.currency();
    }

    public String told(String english) {
        return words.told(RULE, english).text();
    }
}

package org.stillroom.studio.web.shelf;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.usecase.shelf.Asked;
import org.stillroom.studio.usecase.shelf.Asks;
import org.stillroom.studio.usecase.shelf.Packing;
import org.stillroom.studio.usecase.shelf.ReadLot;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/**
 * The form of a bottle or jar with what was typed and what is wrong with it.
 *
 * @param fields needed and usual ones
 * @param further those for who measured
 * @param typed all that was typed, by key
 * @param problems all that is wrong
 */
public record LotForm(
        String kind,
        String kindName,
        List<FormField> fields,
        List<FormField> further,
        Map<String, String> typed,
        List<SheetProblem> problems) {
    private static final Set<String> NEVER_ANALYSED = Stream.of(
                    Kind.SUGAR, Kind.ACID, Kind.SALT, Kind.GLYCEROL, Kind.WATER, Kind.DAIRY, Kind.EGG)
            .map(Kind::label)
            .collect(Collectors.toUnmodifiableSet());

    public LotForm {
        fields = List.copyOf(fields);
        further = List.copyOf(further);
        problems = List.copyOf(problems);
    }

    static LotForm of(Map<String, String> typed, List<SheetProblem> problems, Words words) {
        String typedKind = Shown.typed(typed, LotKeys.KIND);
        Packing packing = Packing.of(typedKind);
        String kind = packing == null ? ShelfLots.kind(typedKind).label() : packing.label();
        return new LotForm(
                kind,
                new Shown(words).kind(kind),
                FormField.of(kind, false, typed, problems, words),
                FormField.of(kind, true, typed, problems, words),
                typed,
                problems);
    }

    /** Returns what a visit has sent, every key of the kind that was shown. */
    static Map<String, String> sent(Visit visit) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String key : LotKeys.ALL) {
            if (!key.equals(LotKeys.ID)) {
                typed.put(key, visit.field(key).replace("\r\n", "\n"));
            }
        }
        return typed;
    }

    public String typed(String key) {
        return Shown.typed(typed, key);
    }

    public List<SheetProblem> at(String key) {
        return FormField.at(key, problems);
    }

    /** Returns what is wrong with no field that the form shows. */
    public List<SheetProblem> elsewhere() {
        Set<String> shown = new HashSet<>(Set.of(
                LotKeys.NAME,
                LotKeys.KIND,
                LotKeys.LABEL,
                LotKeys.LEFT,
                LotKeys.FULL,
                LotKeys.OPENED,
                LotKeys.TARE,
                LotKeys.PAID,
                LotKeys.SUPPLIER,
                LotKeys.SET_ASIDE,
                LotKeys.NOTE,
                LotKeys.ANALYSIS));
        Asks.of(kind).stream().map(Asked::key).forEach(shown::add);
        return problems.stream()
                .filter(problem -> !shown.contains(problem.key()))
                .toList();
    }

    /** Returns whether one of the further fields has something in it, so that they are shown open. */
    public boolean isFurtherOpen() {
        return further.stream()
                .anyMatch(field -> !field.typed().isEmpty() || !field.problems().isEmpty());
    }

    /** Returns whether it is counted and goes round a liqueur, not into it. */
    public boolean isPacking() {
        return Packing.of(kind) != null;
    }

    /** Returns whether analyses of such a thing are made for what is watched in it. */
    public boolean mayBeAnalysed() {
        return !isPacking() && !NEVER_ANALYSED.contains(kind);
    }

    /** Returns an amount in the unit in which the kind is usually kept, as an example. */
    public String amountExample() {
        return switch (ReadLot.usualUnit(kind)) {
            case Stock.GRAMS -> "1 kg";
            case Stock.PIECES -> isPacking() ? "12" : "6";
            default -> kind.equals(Kind.ESSENTIAL_OIL.label()) ? "10 ml" : "700 ml";
        };
    }

    /** Returns fields that a kind does not ask but that were filled in before, so that a change of the form keeps them. */
    public Map<String, String> unasked() {
        Map<String, String> kept = new LinkedHashMap<>();
        Set<String> asked = new HashSet<>();
        Asks.of(kind).forEach(each -> asked.add(each.key()));
        for (String key : LotKeys.INGREDIENT) {
            if (!asked.contains(key) && !typed(key).isEmpty()) {
                kept.put(key, typed(key));
            }
        }
        return kept;
    }
}

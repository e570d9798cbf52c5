package org.stillroom.studio.usecase.shelf;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.shelffile.OilAnalysis;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots.NewLot;

/** Reads what somebody typed about a bottle or jar, under the keys of {@link LotKeys}; every problem comes back at once. */
public final class ReadLot {
    private static final int LONGEST_NAME = 120;
    private static final DateTimeFormatter DAY_FIRST =
            DateTimeFormatter.ofPattern("d.M.uuuu", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern PIECES =
            Pattern.compile("(\\d{1,6}(?:[.,]\\d)?)\\s*(?:pieces?|pcs?|stück|st\\.?)?", Pattern.CASE_INSENSITIVE);
    private static final Set<String> YES = Set.of("yes", "ja", "true", "x", "1", "on");
    private static final Set<String> NO = Set.of("no", "nein", "false", "0", "off");

    private final SheetReader reader;
    private final Map<String, String> typed;
    private final List<SheetProblem> problems = new ArrayList<>();

    private ReadLot(Map<String, String> typed, OunceMeaning ounce) {
        this.reader = new SheetReader(ounce);
        this.typed = typed;
    }

    /**
     * Returns the lot that was typed in, or everything that is wrong with it.
     *
     * @param typed texts by their keys; blank is left out
     * @param ounce what "oz" means to the maker
     */
    public static SheetReading<NewLot> answer(Map<String, String> typed, OunceMeaning ounce) {
        return new ReadLot(typed, ounce).lot();
    }

    /** Returns a lot as it would be typed in, without its id and with blank for what is not known. */
    public static Map<String, String> typed(Lot lot) {
        LotSheet sheet = lot.sheet();
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(LotKeys.NAME, sheet.name());
        typed.put(LotKeys.KIND, sheet.kind());
        typed.put(LotKeys.LABEL, blank(sheet.label()));
        typed.put(LotKeys.LEFT, Stock.isKnown(lot) ? Stock.left(lot).text() : "");
        typed.put(LotKeys.FULL, sheet.full() > 0 ? Stock.full(lot).text() : "");
        typed.put(LotKeys.OPENED, sheet.opened() == null ? "" : sheet.opened().toString());
        typed.put(LotKeys.TARE, blank(sheet.tare()));
        typed.put(LotKeys.PAID, blank(sheet.paid()));
        typed.put(LotKeys.SUPPLIER, blank(sheet.supplier()));
        typed.put(LotKeys.SET_ASIDE, sheet.setAside() ? "yes" : "");
        typed.putAll(sheet.fields());
        typed.put(LotKeys.NOTE, blank(sheet.note()));
        typed.put(LotKeys.ANALYSIS, blank(sheet.analysis()));
        return typed;
    }

    private static String blank(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }

    private SheetReading<NewLot> lot() {
        String name = name();
        String kind = kind();
        Packing packing = Packing.of(kind);
        Map<String, String> fields = packing == null ? ingredient(name, kind) : packing(packing);
        @Nullable Stock left = stock(LotKeys.LEFT);
        @Nullable Stock full = stock(LotKeys.FULL);
        @Nullable LocalDate opened = opened();
        check(LotKeys.TARE, QuantityText::mass, "“312 g”");
        check(
                LotKeys.PAID,
                QuantityText::price,
                packing == null ? "“18.50 EUR” for all of it, or “22 EUR/L”" : "“12 EUR” for all of them");
        boolean setAside = setAside();
        String analysis = text(LotKeys.ANALYSIS);
        if (analysis != null) {
            OilAnalysis read = OilAnalysis.read(analysis);
            List<Finding> wrong = new ArrayList<>(ReadAnalysis.fractions(name, read));
            Finding unfit = packing == null
                    ? ReadAnalysis.unfit(
                            name, ShelfLots.kind(kind), usualUnit(kind).equals(Stock.GRAMS), read.whole())
                    : null;
            if (unfit != null) {
                wrong.add(unfit);
            }
            wrong.forEach(finding -> problems.add(new SheetProblem(LotKeys.ANALYSIS, finding)));
        }
        if (left != null && full != null && !left.unit().equals(full.unit())) {
            problem(
                    LotKeys.FULL,
                    "stock-units",
                    "units differ",
                    "What is left is given in " + left.unit() + ", what it holds when full in " + full.unit() + ".",
                    "Give both by volume, or both by mass.");
        }
        if (!problems.isEmpty()) {
            return new SheetReading.Refused<>(problems);
        }
        return new SheetReading.Understood<>(lot(name, kind, fields, left, full, opened, setAside), List.of());
    }

    private NewLot lot(
            String name,
            String kind,
            Map<String, String> fields,
            @Nullable Stock left,
            @Nullable Stock full,
            @Nullable LocalDate opened,
            boolean setAside) {
        Stock nothing = new Stock(0, usualUnit(kind));
        Stock held = Objects.requireNonNullElse(full, Objects.requireNonNullElse(left, nothing));
        Stock now = Objects.requireNonNullElse(left, held);
        LotSheet sheet = new LotSheet(
                name,
                kind,
                fields,
                text(LotKeys.LABEL),
                opened,
                Math.max(held.amount(), now.amount()),
                held.unit(),
                text(LotKeys.TARE),
                text(LotKeys.PAID),
                text(LotKeys.SUPPLIER),
                typed.getOrDefault(LotKeys.ANALYSIS, "").isBlank() ? null : typed.get(LotKeys.ANALYSIS),
                text(LotKeys.NOTE),
                null,
                setAside,
                null);
        return new NewLot(sheet, now.amount());
    }

    private @Nullable String text(String key) {
        String text = typed.getOrDefault(key, "").strip();
        return text.isEmpty() ? null : text;
    }

    private void problem(String key, String rule, String verdict, String message, String remedy) {
        problems.add(new SheetProblem(key, Finding.of(rule, Severity.STOP, key, verdict, message, remedy)));
    }

    private String name() {
        String name = text(LotKeys.NAME);
        if (name == null) {
            problem(
                    LotKeys.NAME,
                    "field-missing",
                    "missing",
                    "It has no name.",
                    "Write what you call it, such as “plum brandy”.");
            return "this";
        }
        if (name.length() > LONGEST_NAME) {
            problem(
                    LotKeys.NAME,
                    "field-too-long",
                    "too long",
                    "The name has " + name.length() + " characters; at most " + LONGEST_NAME + " are kept.",
                    "Shorten it, and put the rest in the note.");
        }
        return name;
    }

    private String kind() {
        String text = text(LotKeys.KIND);
        List<String> labels = ShelfLots.kinds();
        for (String label : labels) {
            if (label.equalsIgnoreCase(text)) {
                return label;
            }
        }
        problem(
                LotKeys.KIND,
                "field-choice",
                text == null ? "missing" : "not known",
                text == null ? "What kind of thing it is, is not said." : "“" + text + "” is no kind that is known.",
                "Known kinds are " + String.join(", ", labels) + ".");
        return Kind.OTHER.label();
    }

    /** Returns what is known of empty bottles and their like. */
    private Map<String, String> packing(Packing packing) {
        Map<String, String> fields = new LinkedHashMap<>();
        if (packing != Packing.BOTTLES) {
            return fields;
        }
        Typed<Volume> holds = check(LotKeys.HOLDS, QuantityText::volume, "“350 ml”");
        Typed<Volume> brim = check(LotKeys.BRIM, QuantityText::volume, "“365 ml”");
        if (text(LotKeys.HOLDS) == null) {
            problem(
                    LotKeys.HOLDS,
                    "field-missing",
                    "missing",
                    "It is not said what one holds.",
                    "Write such as 350 ml.");
        }
        if (holds != null
                && brim != null
                && brim.value().millilitres() < holds.value().millilitres()) {
            problem(
                    LotKeys.BRIM,
                    "brim-below-size",
                    "cannot be used",
                    "To the brim it would hold less than its size.",
                    "Weigh it empty and full of water.");
        }
        for (String key : List.of(LotKeys.HOLDS, LotKeys.BRIM)) {
            String text = text(key);
            if (text != null) {
                fields.put(key, text);
            }
        }
        return fields;
    }

    private Map<String, String> ingredient(String name, String kind) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String key : LotKeys.INGREDIENT) {
            String text = text(key);
            if (text != null) {
                fields.put(key, text);
            }
        }
        boolean kindKnown = problems.stream().noneMatch(problem -> problem.key().equals(LotKeys.KIND));
        SheetReading<?> reading = reader.ingredient(name, kind, fields);
        if (kindKnown && reading instanceof SheetReading.Refused<?> refused) {
            problems.addAll(refused.problems());
        }
        return fields;
    }

    private @Nullable Stock stock(String key) {
        String text = text(key);
        if (text == null) {
            return null;
        }
        Matcher pieces = PIECES.matcher(text);
        if (pieces.matches() && (isOfPieces() || Character.isLetter(text.charAt(text.length() - 1)))) {
            return new Stock(Double.parseDouble(pieces.group(1).replace(',', '.')), Stock.PIECES);
        }
        if (Packing.of(typed.getOrDefault(LotKeys.KIND, "")) != null) {
            problem(
                    key,
                    "stock-pieces",
                    "cannot be used",
                    "“" + text + "” is no number of pieces.",
                    "Write such as 12.");
            return null;
        }
        Typed<Amount> amount = check(key, QuantityText::amount, "“700 ml” or “250 g”");
        Stock stock = amount == null ? null : Stock.of(amount.value());
        if (amount != null && stock == null) {
            problem(
                    key,
                    "stock-drops",
                    "cannot be used",
                    "What stands on the shelf is not counted in drops.",
                    "Give it in ml or g.");
        }
        return stock;
    }

    private boolean isOfPieces() {
        return usualUnit(typed.getOrDefault(LotKeys.KIND, "")).equals(Stock.PIECES);
    }

    private <Q> @Nullable Typed<Q> check(
            String key, BiFunction<QuantityText, String, Understanding<Q>> how, String example) {
        String text = text(key);
        if (text == null) {
            return null;
        }
        SheetReading<Typed<Q>> reading = reader.quantity(key, text, how, example);
        if (reading instanceof SheetReading.Understood<Typed<Q>> understood) {
            return understood.value();
        }
        problems.addAll(((SheetReading.Refused<Typed<Q>>) reading).problems());
        return null;
    }

    private @Nullable LocalDate opened() {
        String text = text(LotKeys.OPENED);
        if (text == null) {
            return null;
        }
        try {
            return text.indexOf('.') < 0 ? LocalDate.parse(text) : LocalDate.parse(text, DAY_FIRST);
        } catch (DateTimeException notADay) {
            problem(
                    LotKeys.OPENED,
                    "day",
                    "cannot be used",
                    "“" + text + "” is no day of the calendar.",
                    "Write it such as 2026-10-02 or 2.10.2026.");
            return null;
        }
    }

    private boolean setAside() {
        String text = typed.getOrDefault(LotKeys.SET_ASIDE, "").strip().toLowerCase(Locale.ROOT);
        if (!text.isEmpty() && !YES.contains(text) && !NO.contains(text)) {
            problem(
                    LotKeys.SET_ASIDE,
                    "field-choice",
                    "cannot be used",
                    "“" + text + "” says neither yes nor no.",
                    "Write yes, or leave it blank.");
        }
        return YES.contains(text);
    }

    /** Returns the unit in which a kind of lot is usually kept. */
    public static String usualUnit(String kind) {
        return Packing.of(kind) == null ? usualUnit(ShelfLots.kind(kind)) : Stock.PIECES;
    }

    private static String usualUnit(Kind kind) {
        return switch (kind) {
            case SUGAR, HONEY, ACID, SALT, FRESH_PLANT, DRIED_PLANT -> Stock.GRAMS;
            case EGG -> Stock.PIECES;
            case SPIRIT, WINE, LIQUEUR, ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL ->
                Stock.MILLILITRES;
            case SYRUP, JUICE, GLYCEROL, DAIRY, WATER, OTHER -> Stock.MILLILITRES;
        };
    }
}

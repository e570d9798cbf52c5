package org.stillroom.studio.shelffile;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.studio.recipefile.SheetReader;

/** The keys under which a bottle or jar is typed in, in a form as in a table. */
public final class LotKeys {
    public static final String ID = "id";
    public static final String NAME = "name";
    public static final String KIND = "kind";
    public static final String LABEL = "label";
    public static final String LEFT = "left";
    public static final String FULL = "full";
    public static final String OPENED = "opened";
    public static final String TARE = "tare";
    public static final String PAID = "paid";
    public static final String SUPPLIER = "supplier";
    public static final String SET_ASIDE = "set aside";
    public static final String NOTE = "note";
    public static final String ANALYSIS = "analysis";

    /** What one empty bottle holds, and what it holds up to its brim. */
    public static final String HOLDS = "holds";

    public static final String BRIM = "brim";

    /** What an ingredient is known by; what a lot knows better itself (how much there is, its note) is not among them. */
    public static final List<String> INGREDIENT = ingredient();

    /** All of them, in the order in which a table has them. */
    public static final List<String> ALL = all();

    private LotKeys() {}

    private static List<String> ingredient() {
        List<String> keys = new ArrayList<>(SheetReader.INGREDIENT_FIELDS);
        keys.removeAll(List.of("at hand", "note"));
        return List.copyOf(keys);
    }

    private static List<String> all() {
        List<String> keys =
                new ArrayList<>(List.of(ID, NAME, KIND, LABEL, LEFT, FULL, OPENED, TARE, PAID, SUPPLIER, SET_ASIDE));
        keys.addAll(INGREDIENT);
        keys.addAll(List.of(HOLDS, BRIM));
        keys.add(NOTE);
        keys.add(ANALYSIS);
        return List.copyOf(keys);
    }
}

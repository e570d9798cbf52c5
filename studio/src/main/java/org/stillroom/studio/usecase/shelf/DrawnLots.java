package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.safety.Drawn;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.Lot;

/** Gathers the lots that lines are drawn from, by the name of the line, so that a drink is judged by these bottles and by no others. */
public final class DrawnLots {
    private final ShelfLots shelf;
    private final Map<String, Map<Ingredient, Resolved>> bottles = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final MakersGrounds.Analyses analyses = new MakersGrounds.Analyses();
    private final Set<String> met = new HashSet<>();

    public DrawnLots(OunceMeaning ounce) {
        this.shelf = new ShelfLots(ounce);
    }

    /**
     * Adds a lot that a line is drawn from.
     *
     * @param asked what the recipe says of it, which stands where the lot says nothing
     * @return what it is
     */
    public Resolved add(String line, Resolved asked, Lot lot) {
        Ingredient is = shelf.of(lot).usedAs(line, asked.ingredient());
        Resolved known = Resolution.of(is).resolved();
        Resolved resolved = known == null ? asked.described(is) : known;
        bottle(line, resolved);
        if (met.add(line + "\n" + lot.id())) {
            analyses.add(line, lot);
        }
        return resolved;
    }

    /** Adds that a line may also be what its recipe says. */
    public void addAsked(String line, Resolved asked) {
        bottle(line, asked);
    }

    /** Adds that part of a line came from nobody knows where. */
    public void addUnknown(String line, Resolved asked) {
        bottle(line, asked);
        analyses.addUnknown(line);
    }

    private void bottle(String line, Resolved is) {
        bottles.computeIfAbsent(line, some -> new LinkedHashMap<>()).putIfAbsent(is.ingredient(), is);
    }

    /** Returns what a drink is judged on that is poured from these; of other lines the grounds speak as they are. */
    public Grounds on(Grounds grounds) {
        Map<String, List<Resolved>> all = new LinkedHashMap<>();
        bottles.forEach((line, each) -> all.put(line, new ArrayList<>(each.values())));
        return grounds.with(grounds.analyses().and(analyses.together())).with(new Drawn(all));
    }
}

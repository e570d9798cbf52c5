package org.stillroom.studio.usecase.make;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/** Works out what is printed on the day sheet of a revision or of a make. */
public final class PrintSheet {
    private final Store store;

    public PrintSheet(Store store) {
        this.store = store;
    }

    /**
     * Returns a revision worked out.
     *
     * @param millilitres to make, or null for the size of the recipe
     */
    public PlanRecipe.Outcome ofRevision(Revision revision, @Nullable Double millilitres, Workings workings) {
        boolean bar = MakersOunce.of(store.settings()) == OunceMeaning.THIRTY_MILLILITRES;
        MakeStart start = new MakeStart(millilitres, List.of(), Map.of(), Map.of(), bar, Map.of());
        return of(revision, start, MakersGrounds.of(store), workings);
    }

    /** Returns a make worked out as it was begun. */
    public PlanRecipe.Outcome ofMake(MakeState state, Workings workings) {
        return of(state.revision(), state.start(), new MakeLots(store).grounds(state), workings);
    }

    private PlanRecipe.Outcome of(Revision revision, MakeStart start, Grounds grounds, Workings workings) {
        ShowMake.Ready ready = ShowMake.ready(store, revision, start);
        return ready.making() == null
                ? new PlanRecipe.Outcome.Refused(ready.problems())
                : PlanRecipe.answer(ready.making(), null, grounds, workings);
    }
}

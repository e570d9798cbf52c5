package org.stillroom.studio.web.compose;

import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.wording.Words;

/** Recipes: the list, where to start, one recipe as it is typed, its versions. */
public final class ComposeRoom implements Room {
    static final String KEY = "compose";

    private final Store store;

    public ComposeRoom(Store store) {
        this.store = store;
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String path() {
        return "/compose";
    }

    @Override
    public String state(Words words) {
        return words.say("compose.state", "" + store.recipes().heads(false).size());
    }

    @Override
    public void routes(Doors doors) {
        new BeginningPages(store, this).routes(doors);
        new RecipePages(store, this).routes(doors);
        new TryingPages(store, this).routes(doors);
        new VersionPages(store, this).routes(doors);
        new NotesPages(this).routes(doors);
    }

    WorkOnRecipe work() {
        return new WorkOnRecipe(store.recipes(), MakersOunce.of(store.settings()));
    }

    ComposeRecipe composer() {
        OunceMeaning ounce = MakersOunce.of(store.settings());
        return new ComposeRecipe(new StageShelf(store.recipes(), ounce), ounce, MakersGrounds.of(store));
    }
}

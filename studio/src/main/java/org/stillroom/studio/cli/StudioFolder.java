package org.stillroom.studio.cli;

import java.util.function.Function;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.store.StoreTrouble;

/** Asks a studio that is kept in a folder, open in the browser or not. */
final class StudioFolder {
    private StudioFolder() {}

    /**
     * Returns what is asked of the studio.
     *
     * @throws Refusal when there is none, or it cannot be read
     */
    static <A> A ask(DataFolder folder, Function<Store, A> question) {
        if (!folder.holdsAStudio()) {
            throw Refusal.notFound(
                    "--data",
                    "there is no studio in " + folder.path() + ".",
                    "Name its folder with --data, or open one first: stillroom open.");
        }
        try (Store store = Store.beside(folder)) {
            return question.apply(store);
        } catch (StoreTrouble trouble) {
            throw Refusal.wrongInput("--data", trouble.message(), trouble.remedy());
        }
    }
}

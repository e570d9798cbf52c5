package org.stillroom.studio.web;

import java.util.List;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.api.ApiRoom;
import org.stillroom.studio.web.clarity.ClarityRoom;
import org.stillroom.studio.web.compose.ComposeRoom;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.make.MakeRoom;
import org.stillroom.studio.web.rest.RestRoom;
import org.stillroom.studio.web.safety.SafetyRoom;
import org.stillroom.studio.web.settings.SettingsRoom;
import org.stillroom.studio.web.shelf.ShelfRoom;
import org.stillroom.studio.web.tables.TablesRoom;

/** The rooms that are open, in the order of the navigation. */
public final class Rooms {
    private Rooms() {}

    public static List<Room> of(Store store, DataFolder folder) {
        return List.of(
                new ShelfRoom(store),
                new ComposeRoom(store),
                new MakeRoom(store),
                new RestRoom(store),
                new TablesRoom(store),
                new SettingsRoom(store, folder),
                new ClarityRoom(store),
                new SafetyRoom(store),
                new ApiRoom(store));
    }
}

package org.stillroom.studio.web;

import java.util.List;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.make.MakeRoom;
import org.stillroom.studio.web.settings.SettingsRoom;

/** The rooms that are open, in the order of the navigation. */
public final class Rooms {
    private Rooms() {}

    public static List<Room> of(Store store, DataFolder folder) {
        return List.of(new MakeRoom(store), new SettingsRoom(store, folder));
    }
}

package org.stillroom.studio.web.shelf;

import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.wording.Words;

/** Every bottle and jar, the maker's instruments, tables in and out. */
public final class ShelfRoom implements Room {
    static final String KEY = "shelf";

    private final Desk desk;

    public ShelfRoom(Store store) {
        this.desk = Desk.of(store);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String path() {
        return "/shelf";
    }

    @Override
    public String state(Words words) {
        int lots = desk.store().lots().all().size();
        return lots == 0 ? "" : words.say(lots == 1 ? "shelf.stateOne" : "shelf.stateMany", String.valueOf(lots));
    }

    @Override
    public void routes(Doors doors) {
        new ListPage(desk).routes(doors);
        new PutPages(desk).routes(doors);
        new LotPages(desk).routes(doors);
        new PhotoPages(desk).routes(doors);
        new InstrumentPages(desk).routes(doors);
        new TablePages(desk).routes(doors);
        new LeftPages(desk).routes(doors);
        new MatchPages(desk).routes(doors);
        new EssencePages(desk).routes(doors);
    }
}

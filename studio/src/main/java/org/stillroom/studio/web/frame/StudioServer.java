package org.stillroom.studio.web.frame;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.store.StoreTrouble;

/** Serves the studio's pages to browsers of this machine, or of the house's network. */
public final class StudioServer implements AutoCloseable {
    private static final long MOST_BYTES = 9L * 1024 * 1024;

    private final Javalin server;
    private final Store store;
    private final Doorstep doorstep;
    private final List<Room> rooms;

    private StudioServer(Javalin server, Store store, Doorstep doorstep, List<Room> rooms) {
        this.server = server;
        this.store = store;
        this.doorstep = doorstep;
        this.rooms = List.copyOf(rooms);
    }

    /**
     * How to serve.
     *
     * @param port 0 takes any that is free
     * @param address to listen at; 127.0.0.1 keeps everybody out who is not on this machine
     */
    public record Settings(int port, String address) {
        /** Returns whether only this machine can reach it. */
        public boolean isLoopback() {
            return address.equals("127.0.0.1") || address.equals("localhost") || address.equals("::1");
        }
    }

    /**
     * Begins to serve; the store is closed with the server.
     *
     * @throws StoreTrouble when it cannot listen there, or a network may knock and no passphrase is set
     */
    public static StudioServer start(Settings settings, Store store, List<Room> rooms, FaultLog log) {
        if (!settings.isLoopback() && store.settings().value("passphrase").isEmpty()) {
            throw new StoreTrouble(
                    "Others of the network " + settings.address() + " can reach this studio only with a passphrase.",
                    "Set one first: stillroom open --set-passphrase.",
                    null);
        }
        Entrance entrance = new Entrance(store, !settings.isLoopback());
        Frame frame = new Frame(store, entrance, rooms);
        Javalin server = Javalin.create(config -> configure(config, settings, store, rooms, entrance, frame, log));
        StudioServer open = new StudioServer(server, store, new Doorstep(settings), rooms);
        open.doorstep.startThere(server);
        store.noteAddress(open.url());
        return open;
    }

    private static void configure(
            JavalinConfig config,
            Settings settings,
            Store store,
            List<Room> rooms,
            Entrance entrance,
            Frame frame,
            FaultLog log) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = MOST_BYTES;
        config.http.prefer405over404 = true;
        config.jetty.threadPool = new QueuedThreadPool(24, 4);
        Guard guard = new Guard(settings.isLoopback());
        config.routes.before(guard::look);
        config.routes.before(entrance::look);
        Assets assets = new Assets();
        config.routes.get("/assets/<name>", assets::answer);
        config.routes.get("/health", context -> health(context, store));
        Doors doors = new Doors(config.routes, frame);
        entrance.routes(doors);
        rooms.forEach(room -> room.routes(doors));
        config.routes.get("/", context -> context.redirect(rooms.get(0).path(), HttpStatus.SEE_OTHER));
        new Troubles(frame, log).routes(config.routes);
    }

    /** Tells programs that watch over others whether the studio works. */
    private static void health(Context context, Store store) {
        boolean well = store.answers();
        context.status(well ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE)
                .contentType("application/json")
                .result("{\"store\": \"" + (well ? "answers" : "does not answer") + "\"}");
    }

    /** Returns the address of the first page for a browser of this machine. */
    public String url() {
        return doorstep.url(server.port());
    }

    /** Returns the addresses under which others of the network reach it; none when it keeps to this machine. */
    public List<String> urlsForOthers() {
        return doorstep.urlsForOthers(server.port());
    }

    /** Returns the paths of the first page of each room. */
    public List<String> paths() {
        return rooms.stream().map(Room::path).toList();
    }

    @Override
    public void close() {
        server.stop();
        store.close();
    }
}

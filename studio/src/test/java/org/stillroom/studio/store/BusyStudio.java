package org.stillroom.studio.store;

import java.io.PrintStream;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jdbi.v3.core.Jdbi;

/**
 * A process that saves, pours, makes and writes of a batch until it is killed, and says of each change when it was acknowledged.
 *
 * <p>Arguments: folder, seed, and "store" or "late". "late" is the canary: it runs the same store on a connection that says
 * that it has committed and never does. (Were it to commit now and then, a kill during that commit could find nothing lost.)
 */
final class BusyStudio {
    private final Recipes recipes;
    private final Lots lots;
    private final Makes makes;
    private final Batches batches;
    private final PrintStream said = new PrintStream(System.out, true, StandardCharsets.UTF_8);

    private BusyStudio(Recipes recipes, Lots lots, Makes makes, Batches batches) {
        this.recipes = recipes;
        this.lots = lots;
        this.makes = makes;
        this.batches = batches;
    }

    public static void main(String[] arguments) throws Exception {
        DataFolder folder = new DataFolder(Path.of(arguments[0]));
        long seed = Long.parseLong(arguments[1]);
        Store store = Store.open(folder);
        if (arguments[2].equals("late")) {
            store.close();
            Connection late = late(DriverManager.getConnection("jdbc:sqlite:" + folder.database()));
            Jdbi jdbi = Jdbi.create(() -> late);
            new BusyStudio(new Recipes(jdbi), new Lots(jdbi), new Makes(jdbi), new Batches(jdbi))
                    .work(new Random(seed));
        }
        new BusyStudio(store.recipes(), store.lots(), store.makes(), store.batches()).work(new Random(seed));
    }

    private static Connection late(Connection real) throws SQLException {
        real.setAutoCommit(false);
        InvocationHandler handler = (proxy, method, arguments) -> switch (method.getName()) {
            case "close", "setAutoCommit", "commit" -> null;
            case "getAutoCommit" -> true;
            default -> asked(real, method, arguments);
        };
        return (Connection)
                Proxy.newProxyInstance(BusyStudio.class.getClassLoader(), new Class<?>[] {Connection.class}, handler);
    }

    private static Object asked(Connection real, java.lang.reflect.Method method, Object[] arguments) throws Throwable {
        try {
            return method.invoke(real, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private void work(Random random) {
        String recipe = recipes.create("Medlar", request());
        Lot lot = lots.add(List.of(new Lots.NewLot(StoreContract.named("Juniper tincture"), 1e6)), request())
                .get(0);
        Make make = makes.begin(recipe, 1, "{}", request());
        Make finished = makes.begin(recipe, 1, "{}", request());
        Batch batch = makes.finish(finished.id(), "{}", List.of(), List.of(), request());
        said.println("make " + make.id());
        int revision = 0;
        while (true) {
            switch (random.nextInt(4)) {
                case 0 -> {
                    recipes.save(recipe, revision, "Medlar", text(revision + 1), null, request());
                    revision++;
                    said.println("revision " + recipe + " " + revision);
                }
                case 1 -> {
                    HistoryEntry entry = lots.move(new LotMove(lot.id(), -1, "poured"), request());
                    said.println("move " + lot.id() + " " + entry.id());
                }
                case 2 -> {
                    LotMove added = new LotMove(lot.id(), -1, "batch 1");
                    Batches.Writing writing =
                            new Batches.Writing(batch.id(), "batch.added", "{}", null, List.of(added));
                    HistoryEntry entry = batches.append(writing, (all, log) -> {}, request());
                    said.println("batch " + batch.id() + " " + entry.id());
                }
                default -> {
                    HistoryEntry entry = makes.append(make.id(), "step.poured", "{}", null, request());
                    said.println("entry " + make.id() + " " + entry.id());
                }
            }
        }
    }

    /** Returns the text of a revision. */
    static String text(int revision) {
        return "stillroom: 1\ntitle: Medlar " + revision + "\n" + "# ".repeat(revision % 2000) + "\n";
    }

    private static String request() {
        return UUID.randomUUID().toString();
    }
}

package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.DrawnLots;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/**
 * The lots that a make draws: those that were named for it, as they are; of a finished make those that were drawn, as they were when it was
 * finished, whatever became of them since.
 */
public final class MakeLots {
    /** Less is rounding, g. */
    private static final double ROUNDING = 1e-6;

    private final Store store;

    public MakeLots(Store store) {
        this.store = store;
    }

    /** Returns what the drink of a make is judged on. */
    Grounds grounds(Make make, MakeStart start, List<PlannedLine> lines) {
        DrawnLots drawn = new DrawnLots(MakersOunce.of(store.settings()));
        add(make, start, lines, drawn);
        boolean finished = store.makes().batchOf(make.id()).isPresent();
        return drawn.on(finished ? MakersGrounds.of(store, List.of()) : MakersGrounds.of(store));
    }

    /** Returns the same of a make as it stands. */
    Grounds grounds(MakeState state) {
        return grounds(state.make(), state.start(), lines(state.parts()));
    }

    /** Returns what a drink is judged on that is to be made of lots that were named, by the name of the line. */
    Grounds named(Map<String, List<String>> lots, Plan plan) {
        DrawnLots drawn = new DrawnLots(MakersOunce.of(store.settings()));
        for (PlannedLine line : lines(plan)) {
            add(line, lots.getOrDefault(line.name(), List.of()), Long.MAX_VALUE, drawn);
        }
        return drawn.on(MakersGrounds.of(store));
    }

    /** Returns the same where nobody named any yet: each line may come from any of its lots, or be what its recipe says. */
    Grounds open(Map<String, List<LotOnShelf>> choices, Plan plan) {
        DrawnLots drawn = new DrawnLots(MakersOunce.of(store.settings()));
        for (PlannedLine line : lines(plan)) {
            List<LotOnShelf> lots = choices.getOrDefault(line.name(), List.of());
            if (!lots.isEmpty()) {
                drawn.addAsked(line.name(), line.ingredient());
            }
            lots.forEach(lot -> drawn.add(line.name(), line.ingredient(), lot.lot()));
        }
        return drawn.on(MakersGrounds.of(store));
    }

    /** Adds what a make draws. */
    public void add(MakeState state, DrawnLots drawn) {
        add(state.make(), state.start(), lines(state.parts()), drawn);
    }

    private void add(Make make, MakeStart start, List<PlannedLine> lines, DrawnLots drawn) {
        Batch batch = store.makes().batchOf(make.id()).orElse(null);
        BatchSheet sheet = batch == null ? null : FinishMake.sheet(batch);
        long entry = finished(make);
        for (PlannedLine line : lines) {
            List<String> named = start.lots().getOrDefault(line.name(), List.of());
            if (sheet == null) {
                add(line, named, entry, drawn);
            } else {
                Set<String> ids = taken(line.name(), sheet);
                boolean wanting = isWanting(line.name(), sheet);
                if (wanting) {
                    ids.addAll(named);
                }
                if (wanting || ids.isEmpty()) {
                    drawn.addUnknown(line.name(), line.ingredient());
                }
                add(line, new ArrayList<>(ids), entry, drawn);
            }
        }
    }

    /** A lot that nobody knows any more can have been anything. */
    private void add(PlannedLine line, List<String> ids, long entry, DrawnLots drawn) {
        for (String id : ids) {
            Lot lot = store.lots().asOf(id, entry).orElse(null);
            if (lot == null) {
                drawn.addUnknown(line.name(), line.ingredient());
            } else {
                drawn.add(line.name(), line.ingredient(), lot);
            }
        }
    }

    private static Set<String> taken(String line, BatchSheet sheet) {
        Set<String> ids = new LinkedHashSet<>();
        sheet.lines().stream()
                .filter(each -> each.name().equals(line))
                .flatMap(each -> each.taken().stream())
                .filter(each -> each.amount() > 0.0)
                .forEach(each -> ids.add(each.lot()));
        return ids;
    }

    /** Returns whether the lots held less than went in, by what the shelf knew. */
    private static boolean isWanting(String line, BatchSheet sheet) {
        return sheet.lines().stream().anyMatch(each -> each.name().equals(line) && each.wanting() > ROUNDING);
    }

    private long finished(Make make) {
        return store.makes().entries(make.id()).stream()
                .filter(entry -> entry.kind().equals("make.finished"))
                .mapToLong(HistoryEntry::id)
                .findFirst()
                .orElse(Long.MAX_VALUE);
    }

    static List<PlannedLine> lines(List<MakePart> parts) {
        return parts.stream().flatMap(part -> part.planned().lines().stream()).toList();
    }

    private static List<PlannedLine> lines(Plan plan) {
        List<PlannedLine> lines = new ArrayList<>(plan.lines());
        plan.stages().forEach(stage -> lines.addAll(lines(stage.plan())));
        return lines;
    }
}

package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Replanning;
import org.stillroom.core.plan.Way;

/**
 * What the log of one part says went in, line by line.
 *
 * <p>A tick says that a step is done; ticked twice it is done once. An amount says what somebody poured; said by two people who did
 * not know of each other, both count.
 */
final class Tally {
    private static final double SAME = 1e-6;

    private final String prefix;
    private final Map<Integer, InLine> lines = new TreeMap<>();
    private final Map<String, List<LogEntry>> bySteps = new LinkedHashMap<>();
    private @Nullable Double goal;
    private boolean deviates;
    private boolean settled;

    /** What went in of one line. */
    static final class InLine {
        private double grams;
        private boolean done;
        private final List<String> steps = new ArrayList<>();

        double grams() {
            return grams;
        }

        /** Returns the steps in which it went in, in their order. */
        List<String> steps() {
            return steps;
        }
    }

    /** @param part number of the part */
    Tally(int part, List<LogEntry> log) {
        this.prefix = part + "/";
        for (LogEntry entry : log) {
            if (entry.counts() && entry.said().step().startsWith(prefix)) {
                add(entry);
            }
        }
    }

    private void add(LogEntry entry) {
        String step = entry.said().step();
        if (entry.kind().equals(Logged.WAY)) {
            choose(entry);
            return;
        }
        List<LogEntry> earlier = bySteps.computeIfAbsent(step, none -> new ArrayList<>());
        boolean tickedTwice = entry.kind().equals(Logged.DONE)
                && earlier.stream().anyMatch(each -> each.kind().equals(Logged.DONE));
        if (tickedTwice) {
            return;
        }
        earlier.add(entry);
        Integer line = line(step);
        if (line != null && entry.isPour()) {
            pour(line, entry);
        }
    }

    private void pour(int line, LogEntry entry) {
        InLine in = lines.computeIfAbsent(line, none -> new InLine());
        in.grams += entry.said().grams();
        in.done = true;
        if (!in.steps.contains(entry.said().step())) {
            in.steps.add(entry.said().step());
        }
        double off = Math.abs(entry.said().grams() - entry.said().asked());
        if (off > SAME || bySteps.getOrDefault(entry.said().step(), List.of()).size() > 1) {
            deviates = true;
            settled = false;
        }
    }

    private void choose(LogEntry entry) {
        settled = true;
        if (!Way.Kind.KEEP_VOLUME.name().equals(entry.said().second())) {
            goal = entry.said().number();
            deviates = true;
            boolean more =
                    Way.Kind.MORE_OF_EVERYTHING.name().equals(entry.said().second());
            lines.values().forEach(in -> in.done = in.done && !more);
        }
    }

    /** Returns the recipe's line that a step pours, or null when it pours none. */
    private @Nullable Integer line(String step) {
        String rest = step.substring(prefix.length());
        if (!rest.startsWith("line-")) {
            return null;
        }
        String number = rest.substring("line-".length()).split("-", -1)[0];
        return Integer.valueOf(number) - 1;
    }

    /** Returns the id under which a line is poured for the first time, or once more. */
    String stepOf(int line) {
        InLine in = lines.get(line);
        String first = prefix + "line-" + (line + 1);
        int times = in == null ? 0 : in.steps.size();
        String id = first;
        for (int n = Math.max(2, times + 1); in != null && in.steps.contains(id); n++) {
            id = first + "-" + n;
        }
        return id;
    }

    @Nullable
    InLine in(int line) {
        return lines.get(line);
    }

    List<LogEntry> entries(String step) {
        return bySteps.getOrDefault(step, List.of());
    }

    Map<Integer, Replanning.Poured> poured() {
        Map<Integer, Replanning.Poured> poured = new TreeMap<>();
        lines.forEach((line, in) -> poured.put(line, new Replanning.Poured(Math.max(0.0, in.grams), in.done)));
        return poured;
    }

    /** Returns the volume that the maker has chosen since, mL, or null. */
    @Nullable
    Double goal() {
        return goal;
    }

    /** Returns whether anything went in otherwise than asked, or another volume was chosen. */
    boolean deviates() {
        return deviates;
    }

    /** Returns whether a way was chosen after the last slip. */
    boolean isSettled() {
        return settled;
    }
}

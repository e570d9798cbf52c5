package org.stillroom.studio.cli;

import java.util.List;

/** Types commands one after the other, in a process of its own, and says of each whether it was answered. */
final class BusyCommands {
    private BusyCommands() {}

    /** Takes the lines to type; where a line holds {@code #}, it is typed so many times as the first word says, numbered. */
    public static void main(String[] args) {
        int times = Integer.parseInt(args[0]);
        for (int i = 0; i < times; i++) {
            for (String line : List.of(args).subList(1, args.length)) {
                String typed = line.replace("#", "" + i);
                Desk.Run run = Desk.type(typed);
                System.out.println((run.exit() == 0 ? "done " : "refused ") + typed);
                System.out.flush();
                if (run.exit() != 0) {
                    System.err.println(run.err());
                }
            }
        }
    }
}

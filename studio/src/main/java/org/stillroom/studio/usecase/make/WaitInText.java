package org.stillroom.studio.usecase.make;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds how long a step waits in what the maker wrote, such as "Steep for 20 minutes". */
final class WaitInText {
    private static final Pattern WAIT =
            Pattern.compile("(\\d{1,4})\\s*(seconds?|secs?|s|minutes?|mins?|min|hours?|hrs?|h)\\b");
    private static final long LONGEST = 12L * 3600;

    private WaitInText() {}

    /** Returns the first wait named, s, up to 12 hours; 0 where there is none: longer waits are days and no timer's. */
    static long seconds(String text) {
        Matcher found = WAIT.matcher(text.toLowerCase(Locale.ROOT));
        if (!found.find()) {
            return 0;
        }
        long number = Long.parseLong(found.group(1));
        long seconds = switch (found.group(2).charAt(0)) {
            case 's' -> number;
            case 'm' -> number * 60;
            default -> number * 3600;
        };
        return seconds <= LONGEST ? seconds : 0;
    }
}

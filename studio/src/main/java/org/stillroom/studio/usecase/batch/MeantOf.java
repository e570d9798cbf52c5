package org.stillroom.studio.usecase.batch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.BottleNumbers;
import org.stillroom.core.batch.Event;

/**
 * What an entry is about, as it is typed: the name of a vessel, "bottles" for all that are filled, or "bottles 1-6".
 *
 * @param vessel name of it; empty where it is about bottles
 * @param bottles numbers of the bottles, or null for all of them; null too of a vessel
 */
record MeantOf(String vessel, @Nullable BottleNumbers bottles) {
    /** How all bottles are written. */
    static final String ALL = "bottles";

    private static final Pattern NUMBERS =
            Pattern.compile("bottles? +(\\d{1,6})(?: *(?:-|–|to) *(\\d{1,6}))?", Pattern.CASE_INSENSITIVE);

    /** Returns what a text means. */
    static MeantOf of(String typed) {
        String text = typed.strip();
        if (text.equalsIgnoreCase(ALL)) {
            return new MeantOf("", null);
        }
        Matcher numbers = NUMBERS.matcher(text);
        if (!numbers.matches()) {
            return new MeantOf(text, null);
        }
        int first = Integer.parseInt(numbers.group(1));
        int last = numbers.group(2) == null ? first : Integer.parseInt(numbers.group(2));
        return first >= 1 && last >= first ? new MeantOf("", new BottleNumbers(first, last)) : new MeantOf(text, null);
    }

    /** Returns of what something was found out then. */
    Event.Of what() {
        return isOfVessel() ? Event.Of.VESSEL : Event.Of.BOTTLES;
    }

    boolean isOfVessel() {
        return !vessel.isEmpty();
    }

    EventBodies.@Nullable NumbersBody numbers() {
        return bottles == null ? null : new EventBodies.NumbersBody(bottles.first(), bottles.last());
    }
}

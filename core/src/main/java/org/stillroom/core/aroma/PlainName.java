package org.stillroom.core.aroma;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The name of an oil or plant as tables are searched for it: without capitals, and without the words for its form. */
final class PlainName {
    /** Words by which people say in what form they have an oil, not which oil it is. */
    private static final Pattern FORM =
            Pattern.compile("\\b(essential|oils?|of|essence|tincture|extract|pure|organic|macerate|distillate)\\b");

    private PlainName() {}

    /** Returns the forms in which to look for a name: with common names in place of botanical ones, else the one of the name itself. */
    static List<String> readings(String name) {
        return CommonNames.readings(name).stream().map(PlainName::of).toList();
    }

    static String of(String name) {
        String bare =
                FORM.matcher(name.toLowerCase(Locale.ROOT)).replaceAll(" ").replace(',', ' ');
        return String.join(" ", bare.strip().split("\\s+"));
    }
}

package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of print.
 *
 * @param height of the print, mm
 */
record Print(String text, double height, Letters letters) {
    /** What stands in bold before the rest of a line. Source: 27 CFR 16.22, from memory. */
    private static final String BOLD_BEGINNING = "GOVERNMENT WARNING:";

    /** Writes it with its foot at a height. */
    void at(Markup page, double x, double y) {
        page.open(
                "text",
                "x",
                LabelSheet.number(x),
                "y",
                LabelSheet.number(y),
                "font-size",
                LabelSheet.number(height),
                "font-weight",
                letters.weight(),
                "fill",
                "#111");
        if (text.startsWith(BOLD_BEGINNING)) {
            page.open("tspan", "font-weight", Letters.BOLD.weight())
                    .typed(BOLD_BEGINNING)
                    .close();
            page.typed(text.substring(BOLD_BEGINNING.length()));
        } else {
            page.typed(text);
        }
        page.close();
    }

    /** Returns how high texts can be so that the widest of them fits, and no higher than the most. */
    static double height(List<String> texts, Letters letters, double most, double room) {
        double widest = texts.stream().mapToDouble(letters::width).max().orElse(0.0);
        return widest == 0.0 ? most : Math.min(most, Math.max(0.0, room) / widest);
    }

    /** Returns a text in one line, or in two where it would be lower than wanted in one and is not in two. */
    static List<String> atLeast(String text, Letters letters, double wanted, double most, double room) {
        List<String> one = List.of(text);
        double alone = height(one, letters, most, room);
        if (alone >= wanted) {
            return one;
        }
        List<String> best = one;
        for (int at = text.indexOf(' '); at > 0; at = text.indexOf(' ', at + 1)) {
            List<String> two = List.of(text.substring(0, at), text.substring(at + 1));
            best = height(two, letters, most, room) > height(best, letters, most, room) ? two : best;
        }
        return best;
    }

    /**
     * Returns a text in lines that fit, broken at blanks.
     *
     * @param what what to say of a word that is wider than all the room
     * @throws org.stillroom.studio.usecase.Impossible when a word is
     */
    static List<String> wrapped(String text, Letters letters, double height, double room, String what) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (letters.width(word) * height > room) {
                throw LabelSheet.tooNarrow(what, room);
            }
            String longer = line.isEmpty() ? word : line + " " + word;
            if (letters.width(longer) * height > room) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}

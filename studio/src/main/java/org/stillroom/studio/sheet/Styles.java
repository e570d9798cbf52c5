package org.stillroom.studio.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The sheet's own look, kept in the sheet itself. */
final class Styles {
    private Styles() {}

    /** Returns the rules for paper and screen alike, the page's size and foot among them. */
    static String everywhere(SheetOptions options, String title) {
        Saying saying = options.saying();
        return "@page { size: " + options.paper().label() + "; margin: 10mm 13mm 13mm; "
                + "@bottom-left { content: " + string(title) + "; font: 7.5pt \"DejaVu Sans\"; color: #333; } "
                + "@bottom-right { content: " + string(saying.said(Saying.SHEET, "page ")) + " counter(page) "
                + string(saying.said(Saying.SHEET, " of ")) + " counter(pages); font: 7.5pt \"DejaVu Sans\";"
                + " color: #333; } }\n"
                + read("sheet.css");
    }

    static String onScreen() {
        return read("screen.css");
    }

    /** Returns a text that a person typed as a string of a style sheet, each character by its number. */
    private static String string(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c < 0x80 && Character.isLetterOrDigit(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(String.format(Locale.ROOT, "\\%06X", c < 0x20 ? ' ' : c));
            }
        });
        return out.append('"').toString();
    }

    private static String read(String name) {
        try (InputStream in = Styles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the style sheet " + name + " is not packaged");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

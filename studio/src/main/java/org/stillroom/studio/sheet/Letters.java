package org.stillroom.studio.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How wide texts are in the letters that labels are printed with. */
enum Letters {
    PLAIN("DejaVuSans.ttf", "400"),
    BOLD("DejaVuSans-Bold.ttf", "700");

    private final String file;
    private final String weight;

    Letters(String file, String weight) {
        this.file = file;
        this.weight = weight;
    }

    /** Returns the weight as style sheets have it. */
    String weight() {
        return weight;
    }

    /** Returns the width of a text, by the height of the print. */
    double width(String text) {
        Widths font = this == PLAIN ? Held.PLAIN : Held.BOLD;
        return text.codePoints().mapToDouble(font::of).sum();
    }

    /** Fonts are read when the first label is drawn. */
    private static final class Held {
        static final Widths PLAIN = Widths.of(Letters.PLAIN.file);
        static final Widths BOLD = Widths.of(Letters.BOLD.file);
    }

    private record Widths(TrueTypeFont font, CmapLookup letters) {
        static Widths of(String file) {
            try (InputStream in = Printing.font(file)) {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
                return new Widths(font, font.getUnicodeCmapLookup());
            } catch (IOException e) {
                throw new UncheckedIOException("the font " + file + " cannot be read", e);
            }
        }

        /** Many labels are drawn at once, and a font reads its tables as they are asked for. */
        double of(int letter) {
            synchronized (font) {
                try {
                    return font.getAdvanceWidth(letters.getGlyphId(letter)) / (double) font.getUnitsPerEm();
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
    }
}

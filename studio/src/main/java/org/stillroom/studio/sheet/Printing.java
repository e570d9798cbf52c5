package org.stillroom.studio.sheet;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Turns a sheet into PDF with its own fonts, so that it prints the same everywhere. */
final class Printing {
    private static final String FAMILY = "DejaVu Sans";

    /** Kept, since loggers that nobody holds forget their level. PDFBox warns of fonts that no sheet uses. */
    private static final Logger PDFBOX = Logger.getLogger("org.apache.pdfbox");

    static {
        PDFBOX.setLevel(Level.SEVERE);
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.SEVERE));
    }

    private Printing() {}

    static byte[] pdf(String html) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.usePdfUaAccessibility(true);
            builder.useUnicodeLineBreaker(new AtSpaces());
            builder.useSVGDrawer(drawer);
            builder.useFont(() -> font("DejaVuSans.ttf"), FAMILY, 400, FontStyle.NORMAL, true);
            builder.useFont(() -> font("DejaVuSans-Bold.ttf"), FAMILY, 700, FontStyle.NORMAL, true);
            builder.withHtmlContent(html, null);
            builder.toStream(out);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Breaks lines after spaces and hyphens alone; the usual rule would tear "°C" apart. */
    private static final class AtSpaces implements FSTextBreaker {
        private final BreakIterator places = BreakIterator.getLineInstance(Locale.ROOT);
        private String text = "";

        @Override
        public void setText(String newText) {
            text = newText;
            places.setText(newText);
        }

        @Override
        public int next() {
            int place = places.next();
            while (place != BreakIterator.DONE && place < text.length() && !mayBreakAfter(text.charAt(place - 1))) {
                place = places.next();
            }
            return place;
        }

        private static boolean mayBreakAfter(char last) {
            return last == ' ' || last == '-' || last == '\n';
        }
    }

    static InputStream font(String name) {
        return Objects.requireNonNull(
                Printing.class.getResourceAsStream("fonts/" + name), () -> "the font " + name + " is not packaged");
    }
}

package org.stillroom.studio.sheet;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;
import org.stillroom.core.quantity.QuantityWords;

/**
 * A link as a square code for cameras (ISO/IEC 18004), drawn with lines that stay sharp in any size.
 *
 * @param modules rows of dark and light squares
 */
record QrCode(ByteMatrix modules) {
    /** Light squares around it that readers need. Source: ISO/IEC 18004, from memory. */
    static final int QUIET = 4;

    /** Side of a square that a common printer and phone manage, mm. Common practice, no source. */
    private static final double SQUARE = 0.5;

    /** Returns the code of a link; a seventh of it may be damaged. */
    static QrCode of(String link) {
        try {
            return new QrCode(
                    Encoder.encode(link, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                            .getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("a link of " + link.length() + " characters fits no code", tooLong);
        }
    }

    /** Returns the side without the light border, mm. */
    double side() {
        return SQUARE * modules.getWidth();
    }

    /** Returns the width of the light border, mm. */
    static double border() {
        return SQUARE * QUIET;
    }

    /** Returns the dark squares as the path of a drawing whose unit is a mm, each run of them one rectangle. */
    String path(double left, double top) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int run = run(x, y);
                if (run > 0) {
                    String from = number(left + SQUARE * x);
                    path.append('M').append(from).append(' ').append(number(top + SQUARE * y));
                    path.append('H').append(number(left + SQUARE * (x + run)));
                    path.append('V')
                            .append(number(top + SQUARE * (y + 1)))
                            .append('H')
                            .append(from)
                            .append('z');
                }
                x += Math.max(1, run);
            }
        }
        return path.toString();
    }

    private int run(int from, int y) {
        int x = from;
        while (x < modules.getWidth() && modules.get(x, y) == 1) {
            x++;
        }
        return x - from;
    }

    private static String number(double value) {
        return QuantityWords.plain(Math.rint(value * 1000.0) / 1000.0);
    }
}

package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.batch.LabelBottles;

/**
 * A plain label for bottles of one's own: one as SVG, or a sheet of A4 full of them as PDF.
 *
 * <p>Name, lawful name, strength, volume, ingredients, allergens and statements, energy and sugar, standard drinks, batch and date,
 * "not for sale", in the USA its warning, and a link as a code for cameras where there is one. What does not fit is refused.
 */
public final class LabelSheet {
    private static final double A4_WIDTH = 210.0;
    private static final double A4_HEIGHT = 297.0;
    private static final double MARGIN = 10.0;
    private static final double INSET = 3.0;
    /** The name is at most so high, mm, and stands in two lines before it is lower than the other. */
    private static final double LARGEST = 7.0;

    private static final double NAME = 4.0;
    private static final double IN_TWO = 5.0;
    private static final double LAWFUL = 3.2;

    /** Height of the small print, mm; its small letters are 1.3 high, the law wants 1.2 (from memory: 1169/2011, article 13). */
    private static final double SMALL = 2.4;

    /** Height of a capital by the height of the print. */
    private static final double CAPITAL = 0.729;

    /** From line to line, by the height of the print. */
    private static final double LINE = 1.35;

    /** The size that fits most bottles of half a litre and more. */
    public static final Size USUAL = new Size(90.0, 60.0);

    /** Where nothing is known of the bottle yet, to be filled in by hand. */
    private static final String BY_HAND = "Batch ________ Filled ________";

    private static final Pattern SIDES =
            Pattern.compile("(\\d{1,3}(?:[.,]\\d+)?)\\s*[x×]\\s*(\\d{1,3}(?:[.,]\\d+)?)(?:\\s*mm)?");

    /** What a full row or column may come out longer than its labels, mm, so that the last is not pushed to the next sheet. */
    private static final double ROUNDED = 0.2;

    private LabelSheet() {}

    /**
     * How large a label is.
     *
     * @param width mm, 40 to 190
     * @param height mm, 30 to 277
     */
    public record Size(double width, double height) {
        public Size {
            if (!(width >= 40.0
                    && width <= A4_WIDTH - 2 * MARGIN
                    && height >= 30.0
                    && height <= A4_HEIGHT - 2 * MARGIN)) {
                throw new IllegalArgumentException("a label is 40 to 190 mm wide and 30 to 277 mm high");
            }
        }

        /**
         * Returns the size that a text means, such as "90x60".
         *
         * @throws Impossible when it means none
         */
        public static Size of(String typed) {
            Matcher sides = SIDES.matcher(typed.strip());
            try {
                if (sides.matches()) {
                    return new Size(number(sides.group(1)), number(sides.group(2)));
                }
            } catch (IllegalArgumentException outOfRange) {
                throw new Impossible("size", outOfRange.getMessage() + ".", "Write for instance 90x60.");
            }
            throw new Impossible("size", "\"" + typed + "\" is no size of a label.", "Write for instance 90x60.");
        }

        private static double number(String text) {
            return Double.parseDouble(text.replace(',', '.'));
        }

        /** Returns it as it is typed. */
        public String text() {
            return QuantityWords.plain(width) + "x" + QuantityWords.plain(height);
        }

        int across() {
            return (int) Math.floor((A4_WIDTH - 2 * MARGIN) / width);
        }

        int down() {
            return (int) Math.floor((A4_HEIGHT - 2 * MARGIN) / height);
        }

        /** Returns what is left above and below a full sheet, mm. */
        private double above() {
            return (A4_HEIGHT - down() * height) / 2.0;
        }

        /** Returns what is left on either side of a full sheet, mm. */
        private double beside() {
            return (A4_WIDTH - across() * width) / 2.0;
        }
    }

    /** Whether a label says what its bottle costs; it does only where that was asked for. */
    public enum Cost {
        LEFT_OUT,
        PRINTED
    }

    /**
     * How labels are to look.
     *
     * @param saying their language
     */
    public record Look(Size size, Saying saying, Cost cost) {
        /** English, in the usual size, without the cost. */
        public static final Look USUAL = new Look(LabelSheet.USUAL, Saying.ENGLISH, Cost.LEFT_OUT);

        private String said(String english) {
            return saying.said(LabelText.LABEL, english);
        }
    }

    /**
     * Returns one label.
     *
     * @throws Impossible when nobody is to drink it, or what has to stand on it does not fit
     */
    public static String svg(TellLabel.Found found, Look look) {
        return write(found, look, look.said(BY_HAND));
    }

    /**
     * Returns one label that says which bottle it is on.
     *
     * @param marking batch, number, lot and day
     * @throws Impossible when nobody is to drink it, or what has to stand on it does not fit
     */
    public static String svg(TellLabel.Found found, Look look, LabelBottles.Marking marking) {
        return write(found, look, marked(look, marking));
    }

    private static String write(TellLabel.Found found, Look look, String marking) {
        Markup page = new Markup();
        write(page, found, look, marking);
        return page + "\n";
    }

    /** Returns what tells a bottle from others. */
    private static String marked(Look look, LabelBottles.Marking marking) {
        List<String> parts = new ArrayList<>();
        parts.add(look.said("Batch " + marking.batch() + ", bottle " + marking.bottle()));
        parts.add(look.said("lot " + marking.lot()));
        parts.add(look.said("filled " + marking.filled()));
        if (marking.bestBefore() != null) {
            parts.add(look.said("best before " + marking.bestBefore()));
        }
        return String.join(", ", parts);
    }

    /**
     * Returns a sheet of A4 full of the same label.
     *
     * @throws Impossible when nobody is to drink it, or what has to stand on it does not fit
     */
    public static byte[] pdf(TellLabel.Found found, Look look) {
        int many = look.size().across() * look.size().down();
        return sheets(found, look, Collections.nCopies(many, look.said(BY_HAND)));
    }

    /**
     * Returns sheets of A4 with a label for each bottle.
     *
     * @param markings what each says of its bottle
     * @throws Impossible when nobody is to drink it, or what has to stand on it does not fit
     */
    public static byte[] pdf(TellLabel.Found found, Look look, List<LabelBottles.Marking> markings) {
        return sheets(
                found, look, markings.stream().map(each -> marked(look, each)).toList());
    }

    private static byte[] sheets(TellLabel.Found found, Look look, List<String> markings) {
        Size size = look.size();
        Markup page = new Markup();
        page.open("html", "lang", look.saying().tag())
                .open("head")
                .element("title", found.title() + ", " + look.said("labels"));
        page.style("@page { size: 210mm 297mm; margin: " + number(size.above() - ROUNDED) + "mm "
                + number(size.beside() - ROUNDED) + "mm } body { margin: 0; font-family: 'DejaVu Sans' }"
                + " table { border-collapse: collapse } td { padding: 0 } svg { display: block }"
                + " tr { page-break-inside: avoid }");
        page.close().open("body").open("table", "role", "presentation").open("tbody");
        for (int at = 0; at < markings.size(); at += size.across()) {
            page.open("tr");
            for (String marking : markings.subList(at, Math.min(markings.size(), at + size.across()))) {
                page.open("td");
                write(page, found, look, marking);
                page.close();
            }
            page.close();
        }
        page.close().close().close().close();
        return Printing.pdf("<!DOCTYPE html>\n" + page + "\n");
    }

    /** A label would tell the next who finds the bottle that it is a drink. */
    private static void refusePoison(TellLabel.Found found) {
        if (!found.notForDrinking().isEmpty()) {
            Finding stop = found.notForDrinking().get(0);
            throw new Impossible(
                    "recipe", "it is not for drinking, so no label is drawn for it: " + stop.message(), stop.remedy());
        }
    }

    private static void write(Markup page, TellLabel.Found found, Look look, String marking) {
        refusePoison(found);
        Size size = look.size();
        String width = number(size.width());
        String height = number(size.height());
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "width",
                width + "mm",
                "height",
                height + "mm",
                "viewBox",
                "0 0 " + width + " " + height,
                "font-family",
                "DejaVu Sans, sans-serif");
        page.element("title", found.title() + ", " + look.said("label"));
        page.empty(
                "rect",
                "x",
                "0.5",
                "y",
                "0.5",
                "width",
                number(size.width() - 1.0),
                "height",
                number(size.height() - 1.0),
                "fill",
                "#fff",
                "stroke",
                "#222",
                "stroke-width",
                "0.3");
        double room = size.width() - 2 * INSET;
        double code = code(page, found, size);
        LabelText text = new LabelText(found, look);
        double top = head(page, found, text, code == 0.0 ? room : room - code - QrCode.border());
        double below = code == 0.0 ? 0.0 : INSET + code + QrCode.border();
        foot(page, small(found, text, room, marking), Math.max(top, below), size);
        page.close();
    }

    /** Draws the code of the link at the upper right, and returns its side, mm; 0 where there is none. */
    private static double code(Markup page, TellLabel.Found found, Size size) {
        if (found.link() == null) {
            return 0.0;
        }
        QrCode code = QrCode.of(found.link());
        page.open("path", "d", code.path(size.width() - INSET - code.side(), INSET), "fill", "#000");
        page.element("title", found.link());
        page.close();
        return code.side();
    }

    /** Writes name, lawful name and strength, and returns how far down they come. */
    private static double head(Markup page, TellLabel.Found found, LabelText text, double room) {
        List<String> name = Print.atLeast(found.title(), Letters.BOLD, NAME, LARGEST, room);
        double large = Print.height(name, Letters.BOLD, name.size() == 1 ? LARGEST : IN_TWO, room);
        if (large < SMALL) {
            throw tooNarrow("the name takes", room);
        }
        double y = INSET + 1.0;
        for (String part : name) {
            y += large * (y > INSET + 1.0 ? 1.15 : 1.0);
            new Print(part, large, Letters.BOLD).at(page, INSET, y);
        }
        y += 0.5;
        for (String part : Print.wrapped(text.lawfulName(), Letters.PLAIN, LAWFUL, room, "the lawful name takes")) {
            y += LAWFUL * LINE;
            new Print(part, LAWFUL, Letters.PLAIN).at(page, INSET, y);
        }
        double height = Print.height(List.of(text.strength()), Letters.BOLD, 4.0, room);
        if (height < SMALL) {
            throw tooNarrow("strength and volume take", room);
        }
        y += 5.6;
        new Print(text.strength(), height, Letters.BOLD).at(page, INSET, y);
        return y;
    }

    static Impossible tooNarrow(String what, double room) {
        return new Impossible(
                "size",
                what + " more than the " + number(Math.max(0.0, room)) + " mm of width that are left for "
                        + (what.endsWith("take") ? "them." : "it."),
                "Take a wider label, or leave the link out.");
    }

    private static List<Print> small(TellLabel.Found found, LabelText text, double room, String marking) {
        List<Print> lines = new ArrayList<>();
        for (String each : text.small(marking)) {
            Print.wrapped(each, Letters.PLAIN, SMALL, room, "a word takes")
                    .forEach(line -> lines.add(new Print(line, SMALL, Letters.PLAIN)));
        }
        String warning = text.warning();
        if (!warning.isEmpty()) {
            double height = warningHeight(found.bottleMillilitres());
            Print.wrapped(warning, Letters.BOLD, height, room, "a word takes")
                    .forEach(line -> lines.add(new Print(line, height, Letters.PLAIN)));
        }
        return lines;
    }

    private static double warningHeight(double bottleMillilitres) {
        if (bottleMillilitres <= 237.0) {
            return Math.max(SMALL, 1.0 / CAPITAL);
        }
        return (bottleMillilitres <= 3000.0 ? 2.0 : 3.0) / CAPITAL;
    }

    /** Writes the rest from the bottom up, so that what is empty stays for a drawing or a word by hand. */
    private static void foot(Markup page, List<Print> lines, double top, Size size) {
        double tall = lines.stream().mapToDouble(line -> line.height() * LINE).sum();
        double first = size.height() - INSET - tall;
        if (first < top) {
            throw new Impossible(
                    "size",
                    "what has to stand on it takes " + number(Math.ceil(size.height() + top - first))
                            + " mm of height at this width.",
                    "Take a larger label.");
        }
        double y = first;
        for (Print line : lines) {
            y += line.height() * LINE;
            line.at(page, INSET, y);
        }
    }

    static String number(double value) {
        return QuantityWords.plain(Math.rint(value * 100.0) / 100.0);
    }
}

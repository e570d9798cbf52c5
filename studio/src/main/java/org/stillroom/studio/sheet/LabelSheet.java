package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.LegalClasses;
import org.stillroom.core.label.Market;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.batch.LabelBottles;

/**
 * A plain label for bottles of one's own: one as SVG, or a sheet of A4 full of them as PDF.
 *
 * <p>Name, lawful name by the figures, strength, volume, allergens and statements, energy, batch and date, "not for sale", and a
 * link as a code for cameras where there is one.
 */
public final class LabelSheet {
    private static final double A4_WIDTH = 210.0;
    private static final double A4_HEIGHT = 297.0;
    private static final double MARGIN = 10.0;
    private static final double INSET = 3.0;
    /** Width of a letter of the typeface by its height, on the wide side. */
    private static final double LETTER = 0.62;

    /** Height of the small print, mm; its small letters are 1.3 high, the law wants 1.2 (from memory: 1169/2011, article 13). */
    private static final double SMALL = 2.4;

    /** From line to line, by the height of the print. */
    private static final double LINE = 1.35;

    /** The size that fits most bottles of half a litre and more. */
    public static final Size USUAL = new Size(90.0, 60.0);

    /** What a label says goes by this name in the phrasebook. */
    private static final String LABEL = "label";

    /** Where nothing is known of the bottle yet, to be filled in by hand. */
    private static final String BY_HAND = "Batch ________ Filled ________";

    private static final Pattern SIDES =
            Pattern.compile("(\\d{1,3}(?:[.,]\\d+)?)\\s*[x×]\\s*(\\d{1,3}(?:[.,]\\d+)?)(?:\\s*mm)?");

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
            return saying.said(LABEL, english);
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
        page.style("@page { size: 210mm 297mm; margin: 10mm } body { margin: 0; font-family: 'DejaVu Sans' }"
                + " table { border-collapse: collapse } td { padding: 0 } tr { page-break-inside: avoid }");
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
        double top = head(page, found, look, code == 0.0 ? room : room - code - QrCode.border());
        double below = code == 0.0 ? 0.0 : INSET + code + QrCode.border();
        foot(page, small(found, look, room, marking), Math.max(top, below), size);
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
    private static double head(Markup page, TellLabel.Found found, Look look, double room) {
        double large = Math.min(
                7.0, Math.max(0.0, room) / (LETTER * Math.max(1, found.title().length())));
        double y = INSET + large + 1.0;
        line(page, found.title(), y, large, "700");
        y += 5.0;
        line(page, look.said(lawfulName(found)), y, 3.2, "400");
        y += 5.6;
        String strength = look.said(strength(found));
        double height = Math.min(4.0, room / (LETTER * strength.length()));
        if (height < SMALL) {
            throw new Impossible(
                    "size",
                    "strength and volume take more than the " + number(room) + " mm of width that are left for them.",
                    "Take a wider label, or leave the link out.");
        }
        line(page, strength, y, height, "700");
        return y;
    }

    /** Writes the rest from the bottom up, so that what is empty stays for a drawing or a word by hand. */
    private static void foot(Markup page, List<String> lines, double top, Size size) {
        double first = size.height() - INSET - (lines.size() - 1) * SMALL * LINE;
        if (first - SMALL < top) {
            throw new Impossible(
                    "size",
                    "what has to stand on it takes " + number(Math.ceil(size.height() + top - first + SMALL))
                            + " mm of height.",
                    "Take a larger label.");
        }
        for (int i = 0; i < lines.size(); i++) {
            line(page, lines.get(i), first + i * SMALL * LINE, SMALL, "400");
        }
    }

    private static void line(Markup page, String text, double y, double height, String weight) {
        page.open(
                        "text",
                        "x",
                        number(INSET),
                        "y",
                        number(y),
                        "font-size",
                        number(height),
                        "font-weight",
                        weight,
                        "fill",
                        "#111")
                .typed(text)
                .close();
    }

    /** Returns the name that was asked for, else the plainest that no figure rules out. */
    private static String lawfulName(TellLabel.Found found) {
        LegalClass called = found.called().stream()
                .filter(each -> each.market() == found.market())
                .findFirst()
                .orElse(null);
        if (called != null) {
            if (called.isMissed()) {
                throw new Impossible(
                        "called",
                        "its figures miss what " + called.name() + " asks.",
                        "Ask for another name, or see what gets there.");
            }
            return called.name();
        }
        boolean us = found.market() == Market.US;
        if (allows(found, us ? LegalClasses.CORDIAL : LegalClasses.LIQUEUR)) {
            return "Liqueur";
        }
        return allows(found, LegalClasses.SPIRIT_DRINK) ? "Spirit drink" : "Drink with alcohol";
    }

    private static boolean allows(TellLabel.Found found, String name) {
        return found.classes().stream().anyMatch(each -> each.name().equals(name) && !each.isMissed());
    }

    private static String strength(TellLabel.Found found) {
        return QuantityWords.fixed(found.strength().percent(), 1) + " % vol · "
                + QuantityWords.plain(found.bottleMillilitres()) + " mL";
    }

    private static List<String> small(TellLabel.Found found, Look look, double room, String marking) {
        return said(found, look, marking).stream()
                .flatMap(text -> wrapped(text, (int) (room / (LETTER * SMALL))).stream())
                .toList();
    }

    private static List<String> said(TellLabel.Found found, Look look, String marking) {
        List<String> small = new ArrayList<>();
        String allergens = String.join(
                ", ",
                found.findings().stream()
                        .filter(finding -> finding.verdict().startsWith("contains "))
                        .map(finding -> afterFirstWord(look.saying().said(finding.rule(), finding.verdict())))
                        .distinct()
                        .toList());
        if (!allergens.isEmpty()) {
            small.add(look.said("Contains " + allergens + "."));
        }
        found.findings().stream()
                .filter(finding -> finding.verdict().contains("not known") && isOfAllergens(finding))
                .map(finding -> look.saying().said(finding.rule(), finding.verdict()))
                .distinct()
                .forEach(text -> small.add(text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + "."));
        String written = "Write on the label: ";
        found.findings().stream()
                .map(Finding::remedy)
                .filter(remedy -> remedy.startsWith(written))
                .forEach(remedy -> small.add(look.said(remedy.substring(written.length()))));
        small.add(look.said("Energy " + QuantityWords.fixed(found.figures().value(Figure.ENERGY_KJ), 0) + " kJ, "
                + QuantityWords.fixed(found.figures().value(Figure.ENERGY_KCAL), 0) + " kcal per 100 mL"));
        if (found.keeping() != null && !found.keeping().label().isEmpty()) {
            small.add(look.said(found.keeping().label()));
        }
        if (look.cost() == Cost.PRINTED) {
            small.add(look.said(cost(found)));
        }
        small.add(marking);
        small.add(look.said(TellLabel.NOT_FOR_SALE));
        return small;
    }

    private static boolean isOfAllergens(Finding finding) {
        return finding.rule().startsWith("allergen") || finding.rule().equals("sulphites");
    }

    private static String afterFirstWord(String text) {
        return text.substring(text.indexOf(' ') + 1);
    }

    private static String cost(TellLabel.Found found) {
        if (found.together().isEmpty()) {
            throw new Impossible(
                    "print-cost", "no price of what is in the bottle is known.", "Leave it out, or write the prices.");
        }
        String sum = String.join(
                " + ",
                found.together().stream()
                        .map(money -> QuantityWords.fixed(money.amount(), 2) + " " + money.currency())
                        .toList());
        return (found.borne() == null ? "Cost " : "Cost with duty ")
                + (found.cost().isComplete() ? "" : "more than ")
                + sum;
    }

    private static List<String> wrapped(String text, int letters) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (rest.length() > letters) {
            int cut = rest.lastIndexOf(' ', letters);
            cut = cut <= 0 ? letters : cut;
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut).strip();
        }
        lines.add(rest);
        return lines;
    }

    private static String number(double value) {
        return QuantityWords.plain(Math.rint(value * 100.0) / 100.0);
    }
}

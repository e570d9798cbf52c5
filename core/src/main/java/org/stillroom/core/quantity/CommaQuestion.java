package org.stillroom.core.quantity;

import java.util.List;

/** Finds numbers such as "1,500" whose comma may be the decimal sign or may group thousands, and writes both readings. */
final class CommaQuestion {
    private CommaQuestion() {}

    /** Returns the text alone where it holds no such number, else the text with decimal signs and the text without. */
    static List<String> readings(String text) {
        String decimal = rewritten(text, ".");
        return decimal.equals(text) ? List.of(text) : List.of(decimal, rewritten(text, ""));
    }

    private static String rewritten(String text, String sign) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            boolean endOfRangeSign = at > 0 && text.charAt(at) == '.' && text.charAt(at - 1) == '.';
            if (endOfRangeSign || !NumberScan.startsNumber(text, at)) {
                out.append(text.charAt(at++));
                continue;
            }
            NumberScan scan = new NumberScan(text, at);
            int end = Math.max(scan.end(), at + 1);
            String number = text.substring(at, end);
            out.append(scan.commaIsUnclear() ? withSign(number, sign) : number);
            at = end;
        }
        return out.toString();
    }

    /** Writes the decimal reading as 1.5, not 1.500, which a person may take for a thousand again. */
    private static String withSign(String number, String sign) {
        if (sign.isEmpty()) {
            return number.replace(",", "");
        }
        int end = number.length();
        while (number.charAt(end - 1) == '0') {
            end--;
        }
        String trimmed = number.substring(0, end);
        return trimmed.endsWith(",") ? trimmed.substring(0, end - 1) : trimmed.replace(",", sign);
    }
}

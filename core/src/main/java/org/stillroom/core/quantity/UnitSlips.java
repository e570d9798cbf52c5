package org.stillroom.core.quantity;

import java.util.Locale;
import java.util.Set;

/** What to say of words that are no unit, or that people use for two. */
final class UnitSlips {
    /** What people count, and what each weighs is not known; "vanilla pods" are pods. */
    private static final Set<String> COUNTED = Set.of(
            "piece", "pieces", "pc", "pcs", "stück", "stk", "pod", "pods", "bean", "beans", "leaf", "leaves", "berry",
            "berries", "fruit", "fruits", "blatt", "blätter", "beere", "beeren");

    /** The same of what sets hydrogen cyanide free. */
    private static final Set<String> KERNELS = Set.of(
            "kernel", "kernels", "stone", "stones", "pit", "pits", "pip", "pips", "seed", "seeds", "stein", "steine");

    private UnitSlips() {}

    /** Returns whether these words would be found in the table only because case is disregarded there. */
    static boolean isOne(String words) {
        return words.equals("Mg") || words.equals("Gr") || words.equals("GR");
    }

    /** Returns the question or refusal for these words, which stand between the two other parts of the text. */
    static NotUnderstood about(String words, String before, String after, String example) {
        if (words.isEmpty()) {
            return NotUnderstood.because("the unit is missing; write for instance " + example);
        }
        String lower = words.toLowerCase(Locale.ROOT).replace(".", "");
        if (lower.equals("gr")) {
            return NotUnderstood.asking(
                    Spelling.quoted(words) + " is written for the gram and for the grain (0.0648 g); which is meant?",
                    before.strip() + " g" + after,
                    before.strip() + " grain" + after);
        }
        return NotUnderstood.because(sentence(words, lower, example));
    }

    /** Returns the question or refusal for a unit of another kind than is wanted. */
    static NotUnderstood otherKind(String words, Unit unit, Unit.Kind wanted, String before) {
        String key = Units.key(words);
        if (wanted == Unit.Kind.MASS && (key.equals("oz") || key.startsWith("ounce"))) {
            return NotUnderstood.asking(
                    Spelling.quoted(words)
                            + " is read as a fluid ounce, which is a volume; are ounces by weight meant?",
                    before + " oz av");
        }
        return NotUnderstood.because(Spelling.quoted(words) + " is "
                + unit.kind().label() + "; " + wanted.label() + " is wanted, such as " + wanted.example());
    }

    private static String sentence(String words, String lower, String example) {
        String quoted = Spelling.quoted(words);
        if (words.equals("Mg")) {
            return "\"Mg\" is a tonne as the standard writes it; write mg, g or kg";
        }
        if (words.equals("T") || words.equals("t")) {
            return quoted + " is read by some as a spoon; write tbsp or tsp";
        }
        return switch (lower) {
            case "dr" -> quoted + " can be a dram or a drop; write drops, or the volume in ml";
            case "dash", "dashes" ->
                quoted + " has no fixed size (about 0.8 mL, common practice, no source); count drops or write ml";
            case "pinch",
                    "pinches",
                    "splash",
                    "shot",
                    "shots",
                    "jigger",
                    "jiggers",
                    "barspoon",
                    "barspoons",
                    "part",
                    "parts",
                    "glass",
                    "glasses",
                    "handful",
                    "spoon",
                    "spoons" -> quoted + " has no fixed size; measure it once and write ml or g";
            default -> unknown(words, quoted, example);
        };
    }

    /** German joins them to their fruit: Kirschkerne. */
    private static boolean isKernel(String word) {
        return KERNELS.contains(word) || word.endsWith("kern") || word.endsWith("kerne") || word.endsWith("kernen");
    }

    private static String counted(String quoted) {
        return quoted
                + " is a count, and what one weighs is not known here; weigh them and write g, or the count with the"
                + " weight of one, such as 20 x 0.6 g";
    }

    private static String unknown(String words, String quoted, String example) {
        boolean several = words.chars().anyMatch(c -> c >= '0' && c <= '9');
        String last = words.substring(words.lastIndexOf(' ') + 1).toLowerCase(Locale.ROOT);
        if (!several && isKernel(last)) {
            return counted(quoted) + "; how much hydrogen cyanide kernels bring at worst follows their weight";
        }
        if (!several && COUNTED.contains(last)) {
            return counted(quoted);
        }
        return several
                ? quoted + " is not a unit; write one number with one unit, for instance " + example
                : quoted + " is not a unit that is read here; write for instance " + example;
    }
}

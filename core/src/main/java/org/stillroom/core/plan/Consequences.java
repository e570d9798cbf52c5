package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Says in the maker's words what a pour did to the plan, what can no longer be reached, and how to go on. */
final class Consequences {
    /** A volume that differs by less than this part is the same to anyone who measures. */
    private static final double SAME_VOLUME = 1e-3;

    private final Replanned replanned;

    Consequences(Replanned replanned) {
        this.replanned = replanned;
    }

    List<Finding> findings() {
        Way keeping = replanned.keeping();
        List<Finding> findings = new ArrayList<>();
        if (keeping.reached()) {
            findings.add(Finding.of(
                    "still-on-target", Severity.NOTE, "target", "still on target", stays(keeping.figures()), ""));
        }
        for (Way.Figure figure : keeping.figures()) {
            if (figure.missed()) {
                findings.add(noLongerReached(figure));
            }
        }
        for (Way.Share share : keeping.shares()) {
            findings.add(differs(share));
        }
        if (!keeping.isOnTarget() && !replanned.wanting().isEmpty()) {
            findings.add(wanting());
        }
        findings.addAll(keeping.plan().findings());
        return findings;
    }

    private String stays(List<Way.Figure> figures) {
        List<String> words = new ArrayList<>();
        for (Way.Figure figure : figures) {
            if (figure.wanted()) {
                words.add(label(figure.asked()) + " at " + value(figure.asked(), figure.now()));
            }
        }
        if (words.isEmpty()) {
            return "Nothing is asked of the whole that could be missed.";
        }
        String joined = Shortfall.joined(words, "and");
        return Character.toUpperCase(joined.charAt(0)) + joined.substring(1).replaceFirst(" at ", " stays at ") + ".";
    }

    private Finding noLongerReached(Way.Figure figure) {
        String name = label(figure.asked());
        return Finding.of(
                figure.asked().label() + "-no-longer-reached",
                Severity.CAUTION,
                "target, " + figure.asked().label(),
                "no longer reached",
                Character.toUpperCase(name.charAt(0)) + name.substring(1) + " comes to "
                        + value(figure.asked(), figure.now()) + "; " + value(figure.asked(), figure.planned())
                        + " was planned.",
                remedy());
    }

    private Finding differs(Way.Share share) {
        PlannedLine line = replanned.keeping().plan().lines().get(share.line());
        double percent = 100.0 * share.excess();
        return Finding.of(
                "dose-differs",
                Severity.CAUTION,
                "line " + (share.line() + 1) + ", " + line.name(),
                percent > 0.0 ? "more than planned" : "less than planned",
                "A litre then holds " + Words.grams(share.now()) + " of " + line.name() + " in place of "
                        + Words.grams(share.planned()) + ": " + Words.number(Math.abs(percent), 0) + " % "
                        + (percent > 0.0 ? "more." : "less."),
                remedy());
    }

    /** Returns what can be done besides going on. */
    private String remedy() {
        List<String> ways = new ArrayList<>(List.of("Go on"));
        addIfThere(ways, replanned.more());
        addIfThere(ways, replanned.less());
        return Shortfall.joined(ways, "or") + ".";
    }

    private void addIfThere(List<String> ways, @Nullable Way way) {
        if (way != null) {
            ways.add(words(way));
        }
    }

    /** Returns a way in words, such as "make 62 mL more of everything". */
    private String words(Way way) {
        double goal = way.figures().get(Asked.VOLUME.ordinal()).planned();
        double change = way.plan().millilitres() - goal;
        if (way.kind() == Way.Kind.LESS_OF_EVERYTHING) {
            return "make " + Words.number(-change, 0) + " mL less, with everything else as planned";
        }
        return change > SAME_VOLUME * goal
                ? "make " + Words.number(change, 0) + " mL more of everything"
                : "add what is wanting: " + further(way);
    }

    private static String further(Way way) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < way.parts().size(); i++) {
            Way.Part part = way.parts().get(i);
            if (!part.isIn() && i != part.line()) {
                PlannedLine line = way.plan().lines().get(i);
                words.add(Words.grams(line.grams()) + " of " + line.name());
            }
        }
        return Shortfall.joined(words, "and");
    }

    private Finding wanting() {
        List<String> words = new ArrayList<>();
        for (Replanned.Wanting each : replanned.wanting()) {
            words.add(Words.grams(each.grams()) + " of "
                    + replanned.keeping().plan().lines().get(each.line()).name() + ", and " + Words.grams(each.atHand())
                    + " are at hand");
        }
        return Finding.of(
                "more-takes-more-than-there-is",
                Severity.NOTE,
                "at hand",
                "not enough",
                "More of everything would take " + Shortfall.joined(words, "and") + ".",
                "");
    }

    private static String label(Asked asked) {
        return asked == Asked.SUGAR || asked == Asked.ACIDITY ? asked.label() : "the " + asked.label();
    }

    private static String value(Asked asked, double value) {
        int decimals = switch (asked) {
            case VOLUME, SUGAR -> 0;
            case STRENGTH, ACIDITY -> 1;
        };
        return Words.number(value, decimals) + " " + asked.unit();
    }
}

package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;
import org.stillroom.core.safety.Rules;

/** Who decides what is said on a sheet, and where it stands: a number beside each, the sources once at the foot. */
final class Footnotes {
    private final List<Source> sources = new ArrayList<>();

    /** Writes behind what is said whose law it is, or that it is guidance, and the number of its source. */
    void mark(Markup page, Finding finding) {
        String who = Rules.whoDecides(finding);
        Source source = finding.source();
        if (who.isEmpty() && source == null) {
            return;
        }
        page.typed(" ").open("small");
        if (!who.isEmpty()) {
            page.text(who).typed(source == null ? "" : " ");
        }
        if (source != null) {
            page.typed("[" + number(source) + "]");
        }
        page.close();
    }

    private int number(Source source) {
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return sources.indexOf(source) + 1;
    }

    /** Writes what the numbers stand for. */
    void write(Markup page) {
        if (sources.isEmpty()) {
            return;
        }
        page.open("p", "class", "end").text("Sources:");
        for (Source source : sources) {
            page.typed(" [" + number(source) + "] ")
                    .open("span", "lang", "en")
                    .typed(source.title())
                    .close()
                    .typed(" (")
                    .text(source.standing().label())
                    .typed(").");
        }
        page.close();
    }
}

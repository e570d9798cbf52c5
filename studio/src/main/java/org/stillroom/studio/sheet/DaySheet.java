package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.usecase.Minding;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * The sheet that a maker works from: amounts in the order of mixing, steps, what it will be, what to mind.
 *
 * <p>The HTML stands alone: no script, nothing from elsewhere. It is laid out in tables, which paper and screen both have,
 * and is also what the PDF is made of. It names no day: a ruled gap stands for it.
 */
public final class DaySheet {
    private DaySheet() {}

    /** Returns the sheet as a whole HTML document that is well-formed XML too. */
    public static String html(WorkedPlan worked, SheetOptions options) {
        String title = worked.plan().recipe().title();
        Markup page = new Markup(options.saying());
        page.open("html", "lang", options.saying().tag()).open("head");
        page.empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.open("title").text("Day sheet:").typed(" " + title).close();
        page.style(Styles.everywhere(options, title));
        page.style(Styles.onScreen(), "media", "screen").close();
        page.open("body").open("main", "class", "leaf");
        top(page, worked);
        Footnotes footnotes = new Footnotes();
        parts(page, worked, options, footnotes);
        footnotes.write(page);
        page.element("p", Caution.STANDING, "class", "end");
        page.close().close().close();
        return "<!DOCTYPE html>\n" + page + "\n";
    }

    /** Returns the sheet as a PDF with its fonts embedded. */
    public static byte[] pdf(WorkedPlan worked, SheetOptions options) {
        return Printing.pdf(html(worked, options));
    }

    private static void top(Markup page, WorkedPlan worked) {
        page.open("div", "class", "top");
        page.open("h1").typed(worked.plan().recipe().title()).close();
        page.open("p").text("Day sheet. Made by ");
        page.element("span", "", "class", "gap wide").text(" on ").element("span", "", "class", "gap wide");
        page.text(" batch ").element("span", "", "class", "gap");
        page.close().close();
    }

    /** Writes the stages, earliest first, and the recipe itself last; what forbids the drink stands above all of them. */
    private static void parts(Markup page, WorkedPlan worked, SheetOptions options, Footnotes footnotes) {
        Minding minding = new Minding(worked.findings());
        List<WorkedPlan.WorkedStage> stages = new ArrayList<>();
        collect(worked, stages);
        int count = stages.size() + 1;
        List<Finding> said = new ArrayList<>();
        if (count > 1) {
            said.addAll(minding.findings().stream()
                    .filter(finding -> finding.severity() == Severity.STOP)
                    .toList());
            Part.stops(page, "h2", worked.plan(), List.copyOf(said), footnotes);
        }
        int number = 1;
        for (WorkedPlan.WorkedStage stage : stages) {
            Part part = Part.ofStage(stage, number++, count, minding);
            part.write(page, options, footnotes);
            said.addAll(part.own());
        }
        Part.ofWhole(worked, count, minding, said).write(page, options, footnotes);
    }

    private static void collect(WorkedPlan worked, List<WorkedPlan.WorkedStage> stages) {
        for (WorkedPlan.WorkedStage stage : worked.stages()) {
            collect(stage.worked(), stages);
            stages.add(stage);
        }
    }
}

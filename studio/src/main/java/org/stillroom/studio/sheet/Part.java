package org.stillroom.studio.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * One making on the sheet: a stage that comes first, or the recipe itself.
 *
 * @param worked what is made
 * @param stage what it leaves for the recipe that uses it, or null for the recipe itself
 * @param number its place among the parts, from 1
 * @param of how many parts there are
 */
record Part(WorkedPlan worked, Plan.@Nullable StagePlan stage, int number, int of) {
    /** What was taken for granted, or must be known with the vessel in hand; other notes are for the desk. */
    private static final Set<String> SAID_ON_SHEETS = Set.of(
            "not-known",
            "keeping",
            "volume-assumed",
            "scale-assumed",
            "made-up-to-the-mark",
            "mark-at-room-temperature",
            "not-on-the-marks");

    static Part ofStage(WorkedPlan.WorkedStage stage, int number, int of) {
        return new Part(stage.worked(), stage.stage(), number, of);
    }

    static Part ofWhole(WorkedPlan worked, int of) {
        return new Part(worked, null, of, of);
    }

    void write(Markup page, SheetOptions options) {
        page.open("section", "class", number == 1 ? "part" : "part next");
        if (of > 1) {
            page.open("h2")
                    .text("Part " + number + " of " + of + ":")
                    .typed(" " + recipe().title())
                    .close();
        }
        if (stage != null) {
            leaves(page, stage);
        }
        stops(page);
        new AskedFor(worked, options).write(page);
        new Amounts(worked, options).write(page, heading());
        page.element("p", byWeight(), "class", "rule");
        columns(page, options);
        blanks(page);
        page.close();
    }

    private Recipe recipe() {
        return worked.plan().recipe();
    }

    /** Returns the element for headings inside this part: one below the part's own where it has one. */
    private String heading() {
        return of > 1 ? "h3" : "h2";
    }

    private void leaves(Markup page, Plan.StagePlan stage) {
        Recipe recipe = recipe();
        page.open("p", "class", "lead").text("Comes first: it is used as " + stage.ingredient() + ".");
        if (recipe.rest() != null) {
            page.text(" Wait " + recipe.rest().text() + ".");
        }
        page.text(
                recipe.loss() == null
                        ? " No loss is reckoned with."
                        : " Loss reckoned with: " + recipe.loss().text() + ".");
        page.text(" It leaves " + Told.grams(stage.yieldGrams()) + ", " + Told.millilitres(stage.yieldMillilitres())
                        + " at 20 °C.")
                .close();
    }

    private void stops(Markup page) {
        if (of(Severity.STOP).isEmpty()) {
            return;
        }
        page.open("div", "class", "stop");
        page.open(heading());
        Mark.OVER.draw(page);
        page.text(worked.plan().reached() ? " Stop" : " Stop: cannot be reached. These amounts are the nearest.");
        page.close();
        List<Finding> stops = of(Severity.STOP);
        stops.forEach(stop -> page.open("p")
                .open("strong")
                .told(stop.rule(), stop.message())
                .close()
                .close());
        Set<String> said = new HashSet<>();
        for (Finding stop : stops) {
            if (!stop.remedy().isEmpty() && said.add(stop.remedy())) {
                page.open("p");
                remedy(page, stop);
                page.close();
            }
        }
        page.close();
    }

    private void columns(Markup page, SheetOptions options) {
        page.open("table", "class", "columns", "role", "presentation")
                .open("tbody")
                .open("tr");
        page.open("td", "class", "left");
        new Steps(worked).write(page, heading());
        cautions(page);
        page.close().open("td", "class", "right");
        new WhatItWillBe(worked, options).write(page, heading());
        page.close();
        page.close().close().close();
    }

    private void cautions(Markup page) {
        List<Finding> cautions = of(Severity.CAUTION);
        List<Caution> usual = Caution.of(worked.plan());
        List<Finding> known = of(Severity.NOTE).stream()
                .filter(note -> SAID_ON_SHEETS.contains(note.rule()))
                .toList();
        if (cautions.isEmpty() && usual.isEmpty() && known.isEmpty()) {
            return;
        }
        page.element(heading(), "To mind").open("ul", "class", "mind");
        for (Finding caution : cautions) {
            near(page);
            page.told(caution.rule(), caution.message()).typed(" ");
            remedy(page, caution);
            page.close();
        }
        for (Caution caution : usual) {
            near(page);
            page.text(caution.text()).close();
        }
        for (Finding note : known) {
            page.open("li").told(note.rule(), note.message());
            if (!note.remedy().isEmpty()) {
                page.typed(" ").told(note.rule(), note.remedy());
            }
            page.close();
        }
        page.close();
    }

    private static void near(Markup page) {
        page.open("li");
        Mark.NEAR.draw(page);
        page.element("strong", " " + Mark.NEAR.word() + ". ");
    }

    private static void remedy(Markup page, Finding finding) {
        if (!finding.remedy().isEmpty()) {
            page.text("What to do:").typed(" ").told(finding.rule(), finding.remedy());
        }
    }

    private List<Finding> of(Severity severity) {
        return worked.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .toList();
    }

    private void blanks(Markup page) {
        page.element(heading(), "Seen, smelt, changed");
        String notes = recipe().notes();
        if (notes != null) {
            page.open("p", "class", "typed").typed(notes).close();
        }
        page.element("p", "", "class", "blank").element("p", "", "class", "blank");
    }

    private String byWeight() {
        Typed<Temperature> room = recipe().room();
        String degrees = room == null ? "20 °C" : room.text() + ", the room’s";
        return "Amounts by weight are the ones to follow; volumes to take hold at " + degrees + ".";
    }
}

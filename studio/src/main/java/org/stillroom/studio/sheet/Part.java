package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Rules;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.usecase.Minding;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * One making on the sheet: a stage that comes first, or the recipe itself.
 *
 * @param worked what is made
 * @param stage what it leaves for the recipe that uses it, or null for the recipe itself
 * @param number its place among the parts, from 1
 * @param of how many parts there are
 * @param minding what rules say of the whole drink
 * @param own stops and cautions to be told in this part
 */
record Part(WorkedPlan worked, Plan.@Nullable StagePlan stage, int number, int of, Minding minding, List<Finding> own) {
    /** What was taken for granted, or must be known with the vessel in hand; other notes are for the desk. */
    private static final Set<String> SAID_ON_SHEETS = Set.of(
            "not-known",
            "keeping",
            "volume-assumed",
            "scale-assumed",
            "made-up-to-the-mark",
            "mark-at-room-temperature",
            "not-on-the-marks");

    static Part ofStage(WorkedPlan.WorkedStage stage, int number, int of, Minding minding) {
        List<Finding> own = new ArrayList<>(weighty(stage.worked().findings()));
        own.addAll(inStage(stage, minding));
        return new Part(stage.worked(), stage.stage(), number, of, minding, own);
    }

    /** @param said what was said of the drink before it */
    static Part ofWhole(WorkedPlan worked, int of, Minding minding, List<Finding> said) {
        List<Finding> own = new ArrayList<>(weighty(worked.findings()));
        own.removeAll(said);
        return new Part(worked, null, of, of, minding, own);
    }

    private static List<Finding> weighty(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
    }

    /** Returns the cautions about what goes in or is done in a stage; stops stand above all parts. */
    private static List<Finding> inStage(WorkedPlan.WorkedStage stage, Minding minding) {
        Plan plan = stage.worked().plan();
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < plan.lines().size(); i++) {
            found.addAll(minding.ofLine(
                    stage.stage().ingredient(), i, plan.lines().get(i).name()));
        }
        for (int i = 1; i <= plan.recipe().steps().size(); i++) {
            found.addAll(minding.ofOwnStep(stage.stage().ingredient(), i));
        }
        return found.stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .distinct()
                .toList();
    }

    void write(Markup page, SheetOptions options, Footnotes footnotes) {
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
        stops(page, heading(), worked.plan(), of(Severity.STOP), footnotes);
        new AskedFor(worked, options).write(page);
        new Amounts(worked, options).write(page, heading());
        page.element("p", byWeight(), "class", "rule");
        columns(page, options, footnotes);
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

    /** Writes a frame with what stops it; nothing where nothing does. */
    static void stops(Markup page, String heading, Plan plan, List<Finding> stops, Footnotes footnotes) {
        if (stops.isEmpty()) {
            return;
        }
        page.open("div", "class", "stop");
        page.open(heading);
        Mark.OVER.draw(page);
        page.text(plan.reached() ? " Stop" : " Stop: cannot be reached. These amounts are the nearest.");
        page.close();
        new Remarks(stops, footnotes, Remarks.names(plan)).write(page, "p");
        page.close();
    }

    private void columns(Markup page, SheetOptions options, Footnotes footnotes) {
        page.open("table", "class", "columns", "role", "presentation")
                .open("tbody")
                .open("tr");
        page.open("td", "class", "left");
        new Steps(worked, minding, stage == null ? null : stage.ingredient()).write(page, heading());
        cautions(page, footnotes);
        page.close().open("td", "class", "right");
        new WhatItWillBe(worked, options).write(page, heading());
        page.close();
        page.close().close().close();
    }

    private void cautions(Markup page, Footnotes footnotes) {
        List<Finding> cautions = of(Severity.CAUTION);
        List<Caution> usual = Caution.of(worked.plan());
        List<Finding> known = new ArrayList<>(worked.findings().stream()
                .filter(note -> note.severity() == Severity.NOTE
                        && (SAID_ON_SHEETS.contains(note.rule()) || Rules.isOfAllergens(note)))
                .toList());
        if (stage == null) {
            known.addAll(ofDrinkers());
        }
        if (cautions.isEmpty() && usual.isEmpty() && known.isEmpty()) {
            return;
        }
        Set<String> names = Remarks.names(worked.plan());
        page.element(heading(), "To mind").open("ul", "class", "mind");
        new Remarks(cautions, footnotes, names).write(page, "li");
        for (Caution caution : usual) {
            page.open("li");
            Mark.NEAR.draw(page);
            page.element("strong", " " + Mark.NEAR.word() + ". ").text(caution.text());
            page.close();
        }
        new Remarks(known, footnotes, names).write(page, "li");
        page.close();
    }

    /** Returns who should not drink it, and what its label has to say. */
    private List<Finding> ofDrinkers() {
        return Safety.ofPublished(worked.plan(), worked.grounds()).stream()
                .filter(note -> note.severity() == Severity.NOTE && Safety.isOfDrinkers(note))
                .toList();
    }

    private List<Finding> of(Severity severity) {
        return own.stream().filter(finding -> finding.severity() == severity).toList();
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

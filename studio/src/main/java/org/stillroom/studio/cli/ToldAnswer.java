package org.stillroom.studio.cli;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.Told;

/** The figures of a desk command, the same for a person and for a script. */
record ToldAnswer(Told told) implements Answer {
    private static final int MOST_PLACES = 12;

    private static final String DOUBT =
            "Doubt is that of the formulas, in nine cases of ten; what was typed is taken as exact.";

    private static final String DOUBT_OF_ALL =
            "Doubt is that of readings, labels and formulas together, in nine cases of ten.";

    @Override
    public Fields fields() {
        return told.fields();
    }

    @Override
    public Exit exit() {
        boolean reached = told.findings().stream().noneMatch(finding -> finding.severity() == Severity.STOP);
        return reached ? Exit.DONE : Exit.OUT_OF_REACH;
    }

    @Override
    public void print(Page page) {
        page.heading(told.heading());
        for (Finding finding : told.before()) {
            page.blank();
            page.finding(finding);
        }
        if (!told.before().isEmpty()) {
            page.blank();
        }
        Table table = new Table().text("").figure("").text("").text("doubt").figure("");
        boolean doubted = false;
        for (Told.Row row : told.rows()) {
            @Nullable Estimate estimate = row.estimate();
            if (estimate != null) {
                Told.Name name = row.name();
                String value = Figure.decimals(estimate.value(), name.decimalsOf(estimate.value()));
                table.row(name.label(), value, name.unit(), row.word().label(), doubt(row, estimate));
                doubted |= estimate.doubt() > 0.0 && estimate.tellsDoubt();
            }
        }
        if (!told.rows().isEmpty()) {
            page.table(table);
        }
        if (doubted) {
            page.paragraph(told.doubtsReadings() ? DOUBT_OF_ALL : DOUBT);
        }
        for (Told.Section section : told.sections()) {
            page.blank();
            page.heading(section.heading());
            section.sentences().forEach(page::paragraph);
        }
        for (Told.Series series : told.series()) {
            if (!series.rows().isEmpty()) {
                page.blank();
                page.heading(series.heading());
                page.table(table(series));
            }
        }
        for (Told.Next next : told.next()) {
            page.blank();
            page.heading(next.heading());
            Table choices = new Table().text("").text("");
            next.each().forEach(pick -> choices.row(pick.text(), pick.words()));
            page.table(choices);
        }
        for (Finding finding : told.after()) {
            page.blank();
            page.finding(finding);
        }
    }

    private static Table table(Told.Series series) {
        Table table = new Table().text("");
        series.columns().forEach(column -> table.figure(column.label() + " " + column.unit()));
        for (Told.Series.Line row : series.rows()) {
            String[] cells = new String[row.numbers().size() + 1];
            cells[0] = row.name();
            for (int i = 1; i < cells.length; i++) {
                double number = row.numbers().get(i - 1);
                cells[i] = Figure.decimals(number, series.columns().get(i - 1).decimalsOf(number));
            }
            table.row(cells);
        }
        return table;
    }

    /** Shows how far a figure may be off: its half-width, or its ends where it is not alike to both sides. */
    private static String doubt(Told.Row row, Estimate estimate) {
        Told.Ends uneven = row.uneven();
        if (uneven == null) {
            return halfWidth(estimate, row.name());
        }
        int decimals = row.name().decimalsOf(estimate.value());
        String low = Figure.decimals(uneven.low(), decimals);
        return uneven.isOpen() ? low + " or more" : low + " to " + Figure.decimals(uneven.high(), decimals);
    }

    /** Shows a half-width in the decimals of its figure, or in as many as show one digit of it. */
    private static String halfWidth(Estimate estimate, Told.Name name) {
        double doubt = estimate.doubt();
        if (doubt == 0.0 || !estimate.tellsDoubt()) {
            return "";
        }
        int decimals = name.decimalsOf(estimate.value());
        boolean vanishes = doubt < 0.5 * Math.pow(10, -decimals);
        int first = (int) Math.ceil(-Math.log10(doubt));
        return "± "
                + Figure.decimals(doubt, vanishes ? Math.min(Math.max(decimals + 1, first), MOST_PLACES) : decimals);
    }
}

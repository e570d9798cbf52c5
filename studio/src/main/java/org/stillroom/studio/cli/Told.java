package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;

/** The figures of a desk command with their doubt and findings, the same for a person and for a script. */
final class Told implements Answer {
    private static final String DOUBT =
            "Doubt is that of the formulas, in nine cases of ten; what was typed is taken as exact.";

    private final String heading;
    private final List<Row> rows = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** What a figure is called, and how it is shown. */
    record Name(String key, String label, String unit, int decimals) {
        /** Returns how a figure of a liquid is told, with the temperature that was asked in its unit. */
        static Name of(org.stillroom.core.liquid.Figure figure, Temperature asked) {
            String degrees = QuantityWords.plain(asked.celsius()) + " °C";
            String unit = figure.unit().replace("the temperature asked", degrees);
            return new Name(figure.key(), figure.label(), unit, figure.decimals());
        }
    }

    private record Row(Name name, @Nullable Estimate estimate, DoubtWord word) {}

    /** Starts an answer; the heading says what was asked. */
    Told(String heading) {
        this.heading = heading;
    }

    /** Adds an amount or a content. */
    Told put(Name name, Estimate estimate) {
        return put(name, estimate, DoubtWord.ofPart(estimate));
    }

    /** Adds a figure whose doubt has a word of its own. */
    Told put(Name name, Estimate estimate, DoubtWord word) {
        rows.add(new Row(name, estimate, word));
        return this;
    }

    /** Adds a small difference of volumes: its doubt is judged by the volume that it belongs to. */
    Told putDifference(Name name, Estimate estimate, Estimate volume) {
        return put(name, estimate, DoubtWord.ofPart(new Estimate(volume.value(), estimate.doubt())));
    }

    /** Adds a strength that has a basis of its own. */
    Told putStrength(Name name, Estimate estimate) {
        return put(name, estimate, DoubtWord.of(org.stillroom.core.liquid.Figure.STRENGTH, estimate));
    }

    /** Adds a figure of a liquid that is stated at 20 °C, under its own name. */
    Told put(org.stillroom.core.liquid.Figure figure, Estimate estimate) {
        return put(Name.of(figure, Temperature.TWENTY_CELSIUS), estimate, DoubtWord.of(figure, estimate));
    }

    /** Adds a figure of a liquid; where the liquid has none such, a script sees null. */
    Told put(org.stillroom.core.liquid.Figure figure, Figures figures) {
        Name name = Name.of(figure, figures.temperature());
        if (!figures.has(figure)) {
            rows.add(new Row(name, null, DoubtWord.NONE));
            return this;
        }
        Estimate estimate = new Estimate(figures.value(figure), figures.doubt(figure));
        return put(name, estimate, DoubtWord.of(figure, estimate));
    }

    Told finding(Finding finding) {
        findings.add(finding);
        return this;
    }

    Told findings(List<Finding> more) {
        findings.addAll(more);
        return this;
    }

    @Override
    public Fields fields() {
        Fields fields = new Fields();
        Fields doubt = new Fields();
        for (Row row : rows) {
            @Nullable Estimate estimate = row.estimate();
            if (estimate == null) {
                fields.putNone(row.name().key());
                doubt.putNone(row.name().key());
            } else {
                fields.put(row.name().key(), estimate.value());
                doubt.put(row.name().key(), estimate.doubt());
            }
        }
        return fields.put("doubt", doubt).put("findings", Subcommand.findings(findings));
    }

    @Override
    public void print(Page page) {
        page.heading(heading);
        Table table = new Table().text("").figure("").text("").text("doubt").figure("");
        boolean doubted = false;
        for (Row row : rows) {
            @Nullable Estimate estimate = row.estimate();
            if (estimate != null) {
                Name name = row.name();
                String value = Figure.decimals(estimate.value(), name.decimals());
                table.row(name.label(), value, name.unit(), row.word().label(), halfWidth(estimate, name));
                doubted |= estimate.doubt() > 0.0;
            }
        }
        page.table(table);
        if (doubted) {
            page.paragraph(DOUBT);
        }
        for (Finding finding : findings) {
            page.blank();
            page.finding(finding);
        }
    }

    /** Shows a half-width in the decimals of its figure, or in one more where it would vanish. */
    private static String halfWidth(Estimate estimate, Name name) {
        double doubt = estimate.doubt();
        if (doubt == 0.0) {
            return "";
        }
        int decimals = name.decimals();
        boolean vanishes = doubt < 0.5 * Math.pow(10, -decimals);
        return "± " + Figure.decimals(doubt, vanishes ? decimals + 1 : decimals);
    }
}

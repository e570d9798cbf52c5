package org.stillroom.planner.marks;

import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** How far graduated cylinders of class B may be wrong. Source: ASTM E1272-02, table 1. */
final class GlassTolerances {
    private static final List<Table.Row> ROWS =
            Tables.open("measures/astm_e1272_class_b.csv").rows();

    private GlassTolerances() {}

    /**
     * Returns the tolerance in mL, linear between the sizes of the table; empty outside of them.
     *
     * @param nominalMillilitres what the cylinder holds
     */
    static OptionalDouble millilitres(double nominalMillilitres) {
        for (int i = 1; i < ROWS.size(); i++) {
            double low = ROWS.get(i - 1).number("nominal_ml");
            double high = ROWS.get(i).number("nominal_ml");
            if (nominalMillilitres >= low && nominalMillilitres <= high) {
                double from = ROWS.get(i - 1).number("tolerance_ml");
                double to = ROWS.get(i).number("tolerance_ml");
                return OptionalDouble.of(from + (to - from) * (nominalMillilitres - low) / (high - low));
            }
        }
        return OptionalDouble.empty();
    }
}

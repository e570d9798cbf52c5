package org.stillroom.core.safety;

import org.stillroom.core.reference.Source;

/** Which source a row rests on, by its status. */
final class Sources {
    private Sources() {}

    static Source usLists(RowStatus status) {
        return status.mayClear() ? Source.CFR_21_LISTS : Source.CFR_21_LISTS_RECALLED;
    }

    static Source intake(RowStatus status) {
        return status.mayClear() ? Source.INTAKE_GUIDANCE : Source.INTAKE_RECALLED;
    }

    static Source blocked(RowStatus status) {
        return status.mayClear() ? Source.NOT_FOR_DRINKING : Source.NOT_FOR_DRINKING_RECALLED;
    }

    static Source drinks() {
        return Source.STANDARD_DRINKS;
    }
}

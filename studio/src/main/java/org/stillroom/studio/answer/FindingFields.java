package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.core.reference.Finding;

/** Findings as fields, in the one form that they have everywhere. */
public final class FindingFields {
    private FindingFields() {}

    /** Returns findings for an answer, in the one form that they have everywhere. */
    public static List<Fields> of(List<Finding> findings) {
        List<Fields> all = new ArrayList<>();
        for (Finding finding : findings) {
            all.add(new Fields()
                    .put("rule", finding.rule())
                    .put("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                    .put("where", finding.where())
                    .put("jurisdiction", finding.jurisdiction())
                    .put("verdict", finding.verdict())
                    .put("message", finding.message())
                    .put("how_sure", finding.howSure())
                    .put("remedy", finding.remedy())
                    .put("limit", finding.limit())
                    .put(
                            "source",
                            finding.source() == null ? null : finding.source().title())
                    .put("status", finding.status()));
        }
        return all;
    }
}

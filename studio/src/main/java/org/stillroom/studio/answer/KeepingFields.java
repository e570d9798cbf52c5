package org.stillroom.studio.answer;

import org.stillroom.core.safety.Keeping;

/** Where a drink keeps until when, as fields; what is not known is null. */
final class KeepingFields {
    private KeepingFields() {}

    static Fields of(Keeping keeping) {
        Double ph = keeping.sourness().ph();
        Fields fields = new Fields().put("where", keeping.where().label());
        fields = keeping.days() == 0 ? fields.putNone("days") : fields.putCount("days", keeping.days());
        fields.put("water_activity", keeping.waterActivity());
        fields = ph == null ? fields.putNone("ph") : fields.put("ph", ph);
        return fields.put("ph_told", keeping.sourness().told())
                .put("delle_units", keeping.delle())
                .put("reason", keeping.reason())
                .put("label", keeping.label());
    }
}

package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.usecase.make.LogEntry;
import org.stillroom.studio.usecase.make.MakePart;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;

/** How a make stands, as fields. */
final class MakeFields {
    private MakeFields() {}

    static Fields of(MakeState state) {
        @Nullable MakeStep here = state.here();
        return new Fields()
                .put("id", state.make().id())
                .put("recipe", state.make().recipe())
                .putCount("revision", state.make().revision())
                .put("title", state.revision().title())
                .put("begun", state.make().begun().toString())
                .put(
                        "finished",
                        state.make().finished() == null
                                ? null
                                : state.make().finished().toString())
                .put("here", here == null ? null : here.id())
                .putCount("seen", state.seen())
                .put("parts", state.parts().stream().map(MakeFields::part).toList())
                .put("timers", state.timers().stream().map(MakeFields::timer).toList())
                .put("log", state.log().stream().map(MakeFields::entry).toList())
                .put("findings", FindingFields.of(findings(state)));
    }

    /** Returns why it cannot go on, and what rules say of it as it is poured. */
    private static List<Finding> findings(MakeState state) {
        List<Finding> findings = new ArrayList<>(state.problems());
        findings.addAll(state.minding().findings());
        return findings;
    }

    private static Fields part(MakePart part) {
        return new Fields()
                .putCount("number", part.number())
                .put("title", part.title())
                .put("ingredient", part.ingredient())
                .put(
                        "result",
                        new Fields()
                                .put("volume_20c_ml", part.measured().result().millilitres())
                                .put(
                                        "strength_vol_percent",
                                        part.measured().result().strength())
                                .put("sugar_g_per_l", part.measured().result().sugar()))
                .put("steps", part.steps().stream().map(MakeFields::step).toList())
                .put("findings", FindingFields.of(part.findings()));
    }

    private static Fields step(MakeStep step) {
        Fields fields = new Fields()
                .put("id", step.id())
                .put("kind", word(step.kind()))
                .put("what", step.what())
                .put("why", step.why())
                .put("state", word(step.state()))
                .putCount("wait_s", step.waitSeconds());
        MakeStep.Pour pour = step.pour();
        return pour == null ? fields.putNone("pour") : fields.put("pour", pour(pour));
    }

    private static Fields pour(MakeStep.Pour pour) {
        return new Fields()
                .put("name", pour.name())
                .put("amount", pour.asked().reading().value())
                .put("unit", pour.asked().reading().unit())
                .put("instrument", pour.asked().reading().instrument())
                .put("words", pour.asked().reading().words())
                .put("mass_g", pour.grams())
                .put("scale_before_g", pour.before())
                .put("scale_after_g", pour.after());
    }

    private static Fields timer(MakeState.Timer timer) {
        return new Fields()
                .put("step", timer.step().id())
                .put("begun", timer.begun().toString())
                .put("ends", timer.ends().toString());
    }

    private static Fields entry(LogEntry entry) {
        return new Fields()
                .putCount("id", entry.id())
                .put("at", entry.at().toString())
                .put("kind", entry.kind())
                .put("step", entry.said().step())
                .put("typed", entry.said().typed())
                .put("undone", entry.undone());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** Returns the words of an enumeration, as they stand in the answer. */
    static List<String> words(Enum<?>[] values) {
        return java.util.Arrays.stream(values).map(MakeFields::word).toList();
    }
}

package org.stillroom.studio.web.api;

import java.util.List;
import java.util.Map;
import org.stillroom.studio.usecase.make.MakeStep;

/** The schemas of a make and of what is recorded in it. */
final class MakeComponents {
    /** The keys of what is recorded. */
    static final List<String> RECORDED =
            List.of("step", "did", "amount", "scale_reading", "zeroed", "temperature", "note", "entry", "seen");

    private MakeComponents() {}

    /** Returns what a make begins with. */
    static Map<String, Object> wish() {
        return Schemas.group()
                .with("recipe", Schemas.text("id of the recipe"))
                .maybe("revision", Schemas.count("the latest when it is left out"))
                .maybe("size", Schemas.typed("such as 3 L or 4 x 350 ml; the recipe's own when it is left out"))
                .maybe("own_instruments", Schemas.flag("measure with the instruments of the shelf"))
                .maybe(
                        "lots",
                        Schemas.named(
                                Schemas.list(Schemas.text("id of a lot")),
                                "lots by the name of the line, in the order in which they are used up"))
                .maybe(
                        "droppers",
                        Schemas.named(
                                Schemas.text("id of a dropper of the shelf whose drop of water is known"),
                                "droppers by the name of the line in drops that is dosed with it"))
                .maybe(
                        "meant",
                        Schemas.list(
                                Schemas.text(
                                        "name of a line whose dose of oil is meant though it is implausible; kept in a new revision")))
                .schema();
    }

    /** Returns what is recorded. */
    static Map<String, Object> recorded() {
        return Schemas.group()
                .maybe("step", Schemas.text("id of the step"))
                .with("did", oneOf(MakeOperations.Did.values()))
                .maybe("amount", Schemas.typed("that went in or came, the weight of the vessel, or the density"))
                .maybe("scale_reading", Schemas.flag("the amount is what the scale shows with everything that is in"))
                .maybe("zeroed", Schemas.flag("the scale was set to zero with the vessel on it"))
                .maybe("temperature", Schemas.typed("at which a density was measured; 20 °C when it is left out"))
                .maybe("note", Schemas.text("what was noted"))
                .maybe("entry", Schemas.count("id of the entry that is taken back"))
                .maybe("seen", Schemas.count("number of the last entry that was known"))
                .schema();
    }

    private static Map<String, Object> oneOf(Enum<?>[] values) {
        Map<String, Object> schema = Schemas.text("");
        schema.put("enum", MakeFields.words(values));
        return schema;
    }

    static Map<String, Object> all() {
        return Map.of("Make", make(), "MakeState", state(), "MakePart", part(), "MakeStep", step());
    }

    private static Map<String, Object> make() {
        return Schemas.group()
                .with("id", Schemas.text(""))
                .with("recipe", Schemas.text("id of the recipe"))
                .with("revision", Schemas.count("that is made"))
                .with("begun", Schemas.text("when, ISO 8601"))
                .schema();
    }

    private static Map<String, Object> state() {
        return Schemas.group()
                .with("id", Schemas.text(""))
                .with("recipe", Schemas.text("id of the recipe"))
                .with("revision", Schemas.count("that is made"))
                .with("title", Schemas.text(""))
                .with("begun", Schemas.text("when, ISO 8601"))
                .with("finished", Schemas.orNull(Schemas.text("when, ISO 8601")))
                .with("here", Schemas.orNull(Schemas.text("id of the step at hand; null when all are done")))
                .with("seen", Schemas.count("number of the last entry"))
                .with("parts", Schemas.list(Schemas.ref("MakePart")))
                .with(
                        "timers",
                        Schemas.list(Schemas.group()
                                .with("step", Schemas.text("id of the step"))
                                .with("begun", Schemas.text("when, ISO 8601"))
                                .with("ends", Schemas.text("when, ISO 8601"))
                                .schema()))
                .with(
                        "log",
                        Schemas.list(Schemas.group()
                                .with("id", Schemas.count("of the entry"))
                                .with("at", Schemas.text("when, ISO 8601"))
                                .with("kind", Schemas.text("what happened"))
                                .with("step", Schemas.text("id of the step"))
                                .with("typed", Schemas.orNull(Schemas.text("as typed")))
                                .with("undone", Schemas.flag("whether a later entry takes it back"))
                                .schema()))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .schema();
    }

    private static Map<String, Object> part() {
        return Schemas.group()
                .with("number", Schemas.count("its place; stages come first"))
                .with("title", Schemas.text(""))
                .with("ingredient", Schemas.orNull(Schemas.text("as which it is used; null for the recipe itself")))
                .with(
                        "result",
                        Schemas.group()
                                .with("volume_20c_ml", Schemas.number("with what is in and what is still to pour"))
                                .with("strength_vol_percent", Schemas.number(""))
                                .with("sugar_g_per_l", Schemas.number(""))
                                .schema())
                .with("steps", Schemas.list(Schemas.ref("MakeStep")))
                .with("findings", Schemas.list(Schemas.ref("Finding")))
                .schema();
    }

    private static Map<String, Object> step() {
        Map<String, Object> pour = Schemas.group()
                .with("name", Schemas.text("of the ingredient"))
                .with("amount", Schemas.number("asked, as the instrument shows it"))
                .with("unit", Schemas.text(""))
                .with("instrument", Schemas.text(""))
                .with("words", Schemas.text("as a person reads it"))
                .with("mass_g", Schemas.number("that went in, or is asked"))
                .with("scale_before_g", Schemas.number("what an untared scale shows before"))
                .with("scale_after_g", Schemas.number("and when it is in"))
                .schema();
        return Schemas.group()
                .with("id", Schemas.text("stays the same however often the rest is planned again"))
                .with("kind", oneOf(MakeStep.Kind.values()))
                .with("what", Schemas.text("to do"))
                .with("why", Schemas.text(""))
                .with("state", oneOf(MakeStep.State.values()))
                .with("wait_s", Schemas.count("how long its timer runs; 0 where nothing waits"))
                .with("pour", Schemas.orNull(pour))
                .schema();
    }
}

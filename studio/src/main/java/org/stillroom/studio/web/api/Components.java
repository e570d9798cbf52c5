package org.stillroom.studio.web.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.liquid.Figure;
import org.stillroom.studio.recipefile.RecipeSchema;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The schemas that several operations share. */
final class Components {
    private Components() {}

    static Map<String, Object> all() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("Finding", finding());
        all.put(
                "Refusal",
                Schemas.group()
                        .with("findings", Schemas.list(Schemas.ref("Finding")))
                        .maybe("yours", Schemas.of("object", "what was sent"))
                        .maybe("current", Schemas.of("object", "what is kept now"))
                        .schema());
        all.put("Step", step());
        all.put("Recipe", recipe());
        all.put("RecipeObject", recipeObject());
        all.putAll(PlanComponents.all());
        all.putAll(SafetyOperations.components());
        all.put("Figures", figures());
        all.putAll(RecipeOperations.components());
        all.putAll(LotOperations.components());
        all.putAll(InstrumentOperations.components());
        all.putAll(HouseRuleOperations.components());
        all.putAll(RulesOperations.components());
        all.putAll(MakeComponents.all());
        all.putAll(BatchOperations.components());
        all.putAll(LearnOperations.components());
        all.putAll(HistoryOperations.components());
        return all;
    }

    private static Map<String, Object> finding() {
        Map<String, Object> severity = Schemas.text("how much it matters");
        severity.put("enum", List.of("note", "caution", "stop"));
        return Schemas.group()
                .with("rule", Schemas.text("name of the rule"))
                .with("severity", severity)
                .with("where", Schemas.text("the part of what was sent"))
                .with("jurisdiction", Schemas.text("whose law, if it is one"))
                .with("verdict", Schemas.text("in a word"))
                .with("message", Schemas.text("what is, in a sentence"))
                .with("how_sure", Schemas.text("how sure that is"))
                .with("remedy", Schemas.text("what to do"))
                .with("limit", Schemas.orNull(Schemas.text("the limit that it is held against")))
                .with("source", Schemas.orNull(Schemas.text("where the limit stands")))
                .with("status", Schemas.text("read, secondary, from memory, or common practice"))
                .schema();
    }

    private static Map<String, Object> step() {
        return Schemas.group()
                .with("what", Schemas.text(""))
                .with("value", Schemas.number(""))
                .with("unit", Schemas.text(""))
                .with("source", Schemas.text(""))
                .with("status", Schemas.text(""))
                .schema();
    }

    private static Map<String, Object> recipe() {
        return Map.of(
                "anyOf",
                List.of(
                        Schemas.text("the text of a recipe file, YAML; kept as it was sent"),
                        Schemas.ref("RecipeObject")));
    }

    /** Returns the published schema of recipe files, its inner references set on the place where it stands here. */
    private static Object recipeObject() {
        String here = RecipeSchema.json().replace("\"#/$defs/", "\"#/components/schemas/RecipeObject/$defs/");
        ObjectNode schema = JsonMapper.shared().readTree(here).asObject();
        schema.remove("$schema");
        schema.remove("$id");
        return schema;
    }

    private static Map<String, Object> figures() {
        Schemas.Group group = Schemas.group();
        for (Figure figure : Figure.values()) {
            group.with(figure.key(), Schemas.orNull(Schemas.number(figure.label() + ", " + figure.unit())));
        }
        return group.schema();
    }
}

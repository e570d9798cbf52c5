package org.stillroom.studio.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.desk.Part;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The parts of a question as options: every one is kept as the text that was typed. */
final class PartOptions {
    private final List<Part> parts;
    private final Map<String, OptionSpec> options = new LinkedHashMap<>();

    PartOptions(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /** Adds the options to a command. */
    void declare(CommandSpec command) {
        for (Part part : parts) {
            OptionSpec option = option(part);
            options.put(part.name(), option);
            command.addOption(option);
        }
    }

    private static OptionSpec option(Part part) {
        String usual = part.usual() == null ? "" : " (default: " + part.usual() + ")";
        OptionSpec.Builder option = OptionSpec.builder(Dashes.TWO.name(part.name()))
                .description((part.description() + usual).replace("%", "%%"))
                .required(part.isRequired());
        return switch (part.form()) {
            case FLAG -> option.type(boolean.class).arity("0").build();
            case REQUIRED, TEXT -> option.type(String.class).arity("1").build();
            case REQUIRED_TEXTS -> texts(option).paramLabel("AMOUNT@STRENGTH").build();
            case TEXTS_AS_TYPED -> texts(option).paramLabel("TEXT").build();
            case NAMED_TEXTS -> texts(option).paramLabel("NAME=AMOUNT").build();
            case TEXTS -> texts(option).splitRegex(",").build();
        };
    }

    private static OptionSpec.Builder texts(OptionSpec.Builder option) {
        return option.type(List.class).auxiliaryTypes(String.class).arity("1");
    }

    /** Returns what was typed, by the names of the parts. */
    Map<String, List<String>> typed() {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        options.forEach((part, option) -> {
            @Nullable Object value = option.getValue();
            if (value instanceof List<?> texts && !texts.isEmpty()) {
                typed.put(part, texts.stream().map(String::valueOf).toList());
            } else if (value instanceof String text) {
                typed.put(part, List.of(text));
            } else if (Boolean.TRUE.equals(value)) {
                typed.put(part, List.of("yes"));
            }
        });
        return typed;
    }
}

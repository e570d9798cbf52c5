package org.stillroom.studio.answer;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** Writes fields as JSON. Streams them: a mapper that inspects types would double the time to the first answer. */
public final class Json {
    private static final ObjectWriteContext INDENTED = new ObjectWriteContext.Base() {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    };

    private Json() {}

    /** Returns the fields as indented JSON, without a line end after the last brace. */
    public static String of(Fields fields) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(INDENTED, text)) {
            write(json, fields);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, Fields fields) {
        json.writeStartObject();
        for (Map.Entry<String, @Nullable Object> field : fields.values().entrySet()) {
            json.writeName(field.getKey());
            writeValue(json, field.getValue());
        }
        json.writeEndObject();
    }

    private static void writeValue(JsonGenerator json, @Nullable Object value) {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Double number) {
            json.writeNumber(number);
        } else if (value instanceof Long count) {
            json.writeNumber(count);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof Fields fields) {
            write(json, fields);
        } else if (value instanceof Fields.Written written) {
            json.writeRawValue(written.json());
        } else if (value instanceof List<?> values) {
            json.writeStartArray();
            values.forEach(v -> writeValue(json, v));
            json.writeEndArray();
        } else {
            json.writeString(value.toString());
        }
    }
}

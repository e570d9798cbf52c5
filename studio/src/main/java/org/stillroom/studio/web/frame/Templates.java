package org.stillroom.studio.web.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Fills the compiled templates; everything put into them is escaped for its place. */
final class Templates {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "org.stillroom.studio.web.pages");

    private Templates() {}

    static String html(String template, Map<String, Object> model) {
        StringOutput out = new StringOutput(16_384);
        ENGINE.render(template, model, out);
        return out.toString();
    }
}

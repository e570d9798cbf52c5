package org.stillroom.studio.architecture.canary.core.liquid;

import java.util.Locale;

/** Breaks the rule that a computation knows no place. */
final class AsksTheLocale {
    private AsksTheLocale() {}

    static String language() {
        return Locale.getDefault().getLanguage();
    }
}

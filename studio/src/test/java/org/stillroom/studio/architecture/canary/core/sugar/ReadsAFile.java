package org.stillroom.studio.architecture.canary.core.sugar;

import java.io.File;

/** Breaks the rule that the core knows no file. */
public record ReadsAFile(File file) {}

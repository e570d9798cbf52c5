package org.stillroom.studio.architecture.canary.core.reference;

import java.nio.file.Path;

/** Breaks the rule that the shipped tables are all that is read. */
public record ReadsAPath(Path path) {}

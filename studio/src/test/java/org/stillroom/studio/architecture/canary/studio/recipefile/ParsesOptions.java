package org.stillroom.studio.architecture.canary.studio.recipefile;

import picocli.CommandLine;

/** Breaks the rule that each library stays in its room. */
record ParsesOptions(CommandLine line) {}

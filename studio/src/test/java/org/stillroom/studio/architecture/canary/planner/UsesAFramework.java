package org.stillroom.studio.architecture.canary.planner;

import picocli.CommandLine;

/** Breaks the rule that the planner knows no framework. */
record UsesAFramework(CommandLine framework) {}

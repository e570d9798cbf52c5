package org.stillroom.studio.architecture.canary.core.unplaced;

/** Breaks the rule that every package has its place. */
record HasNoPlace(String name) {}

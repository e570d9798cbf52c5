package org.stillroom.studio.architecture.canary.studio.usecase;

/** What a room that must not look here looks at. */
public record Asked(String name) {}

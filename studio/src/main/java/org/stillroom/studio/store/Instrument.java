package org.stillroom.studio.store;

/**
 * A thing that the maker measures with, or an empty jar.
 *
 * @param id of the instrument
 * @param version grows with each change
 * @param sheet what the maker wrote about it
 */
public record Instrument(String id, int version, InstrumentSheet sheet) {}

package org.stillroom.core.label;

/** Where a label is read. */
public enum Market {
    EU,
    US
}

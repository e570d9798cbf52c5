package org.stillroom.studio.cli;

/** The units in which amounts are shown; what is computed does not depend on them. */
enum Units {
    METRIC,
    US
}

package org.stillroom.studio.architecture.canary.core.alcohol;

import org.stillroom.studio.architecture.canary.core.sugar.ReadsAFile;

/** Breaks the rule that subjects on one step do not see each other. */
record SeesItsNeighbour(ReadsAFile neighbour) {}

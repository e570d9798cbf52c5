package org.stillroom.studio.architecture.canary.core.quantity;

import org.stillroom.studio.architecture.canary.core.reference.ReadsAPath;

/** Breaks the order of the steps. */
record SeesALaterStep(ReadsAPath later) {}

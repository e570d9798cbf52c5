package org.stillroom.studio.architecture.canary.studio.recipefile;

import org.stillroom.studio.architecture.canary.studio.usecase.Asked;

/** Breaks the rule that a recipe file is read without knowing what for. */
record AsksAUseCase(Asked asked) {}

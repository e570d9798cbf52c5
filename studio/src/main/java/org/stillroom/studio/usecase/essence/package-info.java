/** Essences in whole drops: planned, made a recipe, put on the shelf. */
@NullMarked
package org.stillroom.studio.usecase.essence;

import org.jspecify.annotations.NullMarked;

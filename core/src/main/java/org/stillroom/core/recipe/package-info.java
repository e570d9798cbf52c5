/** What a maker asks for: target, lines, stages, measures. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.recipe;

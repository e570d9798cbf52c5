/** What a person asks while composing: the answer as one types, versions, swaps, where to start. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.usecase.compose;

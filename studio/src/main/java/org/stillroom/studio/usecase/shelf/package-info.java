/** What a person asks of the shelf: what stands on it, how much is left, what it is good for. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.usecase.shelf;

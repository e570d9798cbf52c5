/** What batches tell of the labels and droppers of a kitchen, and taking it. */
@NullMarked
package org.stillroom.studio.usecase.learn;

import org.jspecify.annotations.NullMarked;

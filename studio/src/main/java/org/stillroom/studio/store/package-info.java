/** Keeps what a maker has: shelf, recipes in all their revisions, makes, batches, and the history of all of it. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.store;

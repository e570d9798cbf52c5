/** The log of batches: what is in every vessel at every moment, from what was done. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.batch;

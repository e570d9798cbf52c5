/**
 * What a liqueur may be called, and what its label says: legal classes, stated strength, statements, sizes, duty on paper.
 *
 * <p>Information, not legal advice; local law decides.
 */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.label;

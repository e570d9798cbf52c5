/** Extraction: what plants bring into spirit, what their marc holds, and how fast they give. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.extraction;

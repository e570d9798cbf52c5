/** Aroma constituents by CAS number. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.aroma;

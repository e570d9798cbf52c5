/** Tasting: from which content a constituent is smelt, and which notes lead. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.tasting;

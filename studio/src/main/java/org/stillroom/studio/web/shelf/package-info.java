/** The Shelf in the browser: what stands there, how much is left, what it is made of. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.shelf;

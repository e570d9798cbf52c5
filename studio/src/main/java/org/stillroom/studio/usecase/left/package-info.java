/** What is left on the shelf, and what it is good for. */
@NullMarked
package org.stillroom.studio.usecase.left;

import org.jspecify.annotations.NullMarked;

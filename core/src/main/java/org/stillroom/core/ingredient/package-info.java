/** What can go in, and the liquid that it resolves to. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.ingredient;

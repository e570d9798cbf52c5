/** The room where a recipe is composed. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.compose;

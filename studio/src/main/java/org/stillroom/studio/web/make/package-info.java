/** The room where a recipe is made: one step at a time, at arm's length, with wet hands. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.make;

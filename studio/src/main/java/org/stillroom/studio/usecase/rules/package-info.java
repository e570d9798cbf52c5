/** The rules that a maker adds to what ships with the program. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.usecase.rules;

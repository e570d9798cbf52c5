/** The recipe file: YAML in, a recipe or every problem with its line out; and back again. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.recipefile;

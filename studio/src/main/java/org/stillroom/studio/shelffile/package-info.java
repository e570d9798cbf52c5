/** Tables in, the bottles and jars of a shelf or every problem with its line out; and back. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.shelffile;

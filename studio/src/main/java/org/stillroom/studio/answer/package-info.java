/** What use cases answer, as figures with their keys: the same for the command line and for other programs. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.answer;

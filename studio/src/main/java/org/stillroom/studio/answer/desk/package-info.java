/** Questions at the desk: what each takes as texts, and how it is answered, however it was asked. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.answer.desk;

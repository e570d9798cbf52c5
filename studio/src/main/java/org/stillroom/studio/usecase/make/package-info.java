/** What a person asks while making: begin, log what was poured, go on after a slip, finish. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.usecase.make;

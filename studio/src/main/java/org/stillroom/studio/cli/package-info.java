/** The command line: reads what was typed, asks one use case, shows the answer. It computes nothing itself. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.cli;

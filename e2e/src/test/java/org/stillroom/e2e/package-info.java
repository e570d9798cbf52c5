/** The whole program as a person meets it: its process, its start script, its pages in a real browser. */
@org.jspecify.annotations.NullMarked
package org.stillroom.e2e;

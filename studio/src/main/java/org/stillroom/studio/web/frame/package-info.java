/** What all pages stand in: server, layout, the guard at the door, faults. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.frame;

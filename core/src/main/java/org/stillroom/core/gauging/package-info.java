/** What is in a vessel, from whatever was read of it and from what was poured, and how sure. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.gauging;

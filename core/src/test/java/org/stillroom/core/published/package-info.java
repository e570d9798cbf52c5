/** Printed tables and how tests open them. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.published;

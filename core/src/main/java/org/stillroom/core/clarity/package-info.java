/** Whether the oils of a liquid stay dissolved, and what to do where they do not. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.clarity;

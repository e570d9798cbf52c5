/** The studio in the browser. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web;

/** Pages about clouding: the forecast for a recipe, and what another haze may be. */
@NullMarked
package org.stillroom.studio.web.clarity;

import org.jspecify.annotations.NullMarked;

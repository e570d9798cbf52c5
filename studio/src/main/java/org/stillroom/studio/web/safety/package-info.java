/** What is in a drink and what rules say of it; what it may be called and what its label says. Recipes lead here. */
@NullMarked
package org.stillroom.studio.web.safety;

import org.jspecify.annotations.NullMarked;

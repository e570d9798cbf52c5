/** The desk arithmetic in the browser: every question of the desk as a form with its answer. */
@NullMarked
package org.stillroom.studio.web.tables;

import org.jspecify.annotations.NullMarked;

@org.jspecify.annotations.NullMarked
package org.stillroom.studio;

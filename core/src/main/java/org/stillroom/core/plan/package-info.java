/** Amounts that land on a target, the nearest where it cannot be reached, and the doubt of the result. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.plan;

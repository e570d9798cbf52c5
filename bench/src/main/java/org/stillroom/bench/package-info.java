/** How fast Stillroom computes, always beside a yardstick measured in the same run. */
@org.jspecify.annotations.NullMarked
package org.stillroom.bench;

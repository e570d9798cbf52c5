/**
 * What of watched substances is in a drink, how much of it a person takes, and which rules that touches.
 *
 * <p>What is not known is told as not known and never passes a rule. Information, not legal or medical advice.
 */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.safety;

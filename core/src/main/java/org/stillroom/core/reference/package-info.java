/** Sources, findings, workings and the shipped tables: what every subject needs to show where a figure comes from. */
@org.jspecify.annotations.NullMarked
package org.stillroom.core.reference;

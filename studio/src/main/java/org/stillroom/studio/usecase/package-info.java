/** What a person can ask Stillroom to do, one class each. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.usecase;

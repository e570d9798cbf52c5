/** What a person can ask about batches: what is in their vessels, what happens to them, when. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.usecase.batch;

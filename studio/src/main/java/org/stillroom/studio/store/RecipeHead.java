package org.stillroom.studio.store;

import java.time.Instant;

/**
 * A recipe in a list.
 *
 * @param id of the recipe
 * @param title as last saved, or as it was begun
 * @param revision number of the latest one; 0 as long as there is only a draft
 * @param changed when it was last saved or begun
 * @param archived whether the maker has put it away
 * @param hasDraft whether there is work that is not saved as a revision
 */
public record RecipeHead(String id, String title, int revision, Instant changed, boolean archived, boolean hasDraft) {}

package org.stillroom.studio.store;

/**
 * So much more or less in a lot.
 *
 * @param lot id of the lot
 * @param change in the unit of its sheet; negative when something was taken
 * @param why in words, such as "batch 3"
 */
public record LotMove(String lot, double change, String why) {}

package org.stillroom.studio.store;

/**
 * One bottle or jar on the shelf.
 *
 * @param id of the lot
 * @param version grows with each change of its sheet
 * @param sheet what the maker wrote about it
 * @param left how much is in it, in the unit of the sheet
 */
public record Lot(String id, int version, LotSheet sheet, double left) {}

package org.stillroom.core.safety;

/**
 * What one source group says of a constituent in a material.
 *
 * @param material id
 * @param constituent name
 * @param least per cent
 * @param most per cent
 * @param basis the source group: pharmacopoeia, standard, origin
 */
public record Composed(
        String material, String constituent, double least, double most, String basis, RowStatus status) {}

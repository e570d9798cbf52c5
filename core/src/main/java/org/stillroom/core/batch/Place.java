package org.stillroom.core.batch;

/**
 * A vessel of a batch.
 *
 * @param batch id of the batch whose liquid is in it
 * @param vessel what the maker calls it
 */
public record Place(String batch, String vessel) implements Comparable<Place> {
    @Override
    public int compareTo(Place other) {
        int byBatch = batch.compareTo(other.batch);
        return byBatch == 0 ? vessel.compareTo(other.vessel) : byBatch;
    }
}

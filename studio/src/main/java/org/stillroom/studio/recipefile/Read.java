package org.stillroom.studio.recipefile;

/** Something read from a file together with the keys that it was read from. */
record Read<T>(T value, Fields fields) {}

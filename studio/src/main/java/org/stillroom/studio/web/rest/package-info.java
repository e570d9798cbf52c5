/** The room where batches rest: what is in their vessels, what is done with them, when. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.rest;

/** The studio for other programs: the same use cases as the pages, as JSON under /api/v1, and the document that describes it. */
@org.jspecify.annotations.NullMarked
package org.stillroom.studio.web.api;

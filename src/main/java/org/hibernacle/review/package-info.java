/**
 * Chapter 4a: what did the winter do, and what do we learn?
 *
 * <p>Takes a season plan whose log the keeper has filled in and the temperatures that the season
 * really had; hands on what each plant lived through, likely causes of losses, survival across the
 * collection, and corrections to think about. Open {@link org.hibernacle.review.Reviewer} first.
 */
@NullMarked
package org.hibernacle.review;

import org.jspecify.annotations.NullMarked;

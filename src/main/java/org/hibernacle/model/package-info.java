/**
 * Chapter 0: what are the things?
 *
 * <p>Plants, pots, places, temperatures and the season, as small immutable records that every other
 * chapter shares. Takes nothing, hands on the vocabulary. Open {@link org.hibernacle.model.Plant}
 * first, then {@link org.hibernacle.model.Place} and {@link org.hibernacle.model.Season}.
 */
@NullMarked
package org.hibernacle.model;

import org.jspecify.annotations.NullMarked;

/**
 * Chapter 3: what can this plant in this pot take on that day?
 *
 * <p>Takes daily temperatures at roots and tops, hands on today's limits, rest, waking and leaf
 * fall. Open {@code PlantState} first.
 */
@NullMarked
package org.hibernacle.physiology;

import org.jspecify.annotations.NullMarked;

/**
 * Chapter 4: what should be moved when, and why?
 *
 * <p>Takes the inventory and the winters on file, hands on a {@link
 * org.hibernacle.planning.SeasonPlan}: for each plant the places and dates that keep every rule,
 * with the numbers behind each date. Open {@link org.hibernacle.planning.SeasonPlanner} first.
 */
@NullMarked
package org.hibernacle.planning;

import org.jspecify.annotations.NullMarked;

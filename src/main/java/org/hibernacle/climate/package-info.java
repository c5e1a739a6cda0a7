/**
 * Chapter 2: how cold does it get here, when, how surely?
 *
 * <p>Takes the temperature series, hands on hourly air for each winter, frost statistics, chill and
 * heat sums. Open {@code Winter} first, then {@link org.hibernacle.climate.WinterSummary} and
 * {@link org.hibernacle.climate.FreezeDates}.
 */
@NullMarked
package org.hibernacle.climate;

import org.jspecify.annotations.NullMarked;

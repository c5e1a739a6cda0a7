/**
 * Chapter 5: what do we tell the user?
 *
 * <p>Takes the season plan, decides every word, number, rounding and order once, and hands one
 * {@link org.hibernacle.report.SeasonReport} to both writers. Open {@link
 * org.hibernacle.report.SeasonReport} first.
 */
@NullMarked
package org.hibernacle.report;

import org.jspecify.annotations.NullMarked;

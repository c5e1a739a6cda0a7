/**
 * Chapter 2a: how cold does a place, its soil and this root ball get?
 *
 * <p>Takes a winter's hourly air and a place, hands on the root ball's daily trace. Open {@code
 * Simulator} first.
 */
@NullMarked
package org.hibernacle.thermal;

import org.jspecify.annotations.NullMarked;

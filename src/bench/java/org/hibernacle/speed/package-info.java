/**
 * How quick the program is, beside a floor: the same files read and written without a plan between
 * them. Programs, not tests; docs/performance.md tells how they are run and what they measured.
 */
@NullMarked
package org.hibernacle.speed;

import org.jspecify.annotations.NullMarked;

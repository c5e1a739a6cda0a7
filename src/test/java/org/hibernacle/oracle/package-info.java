/**
 * Is the plan right? A second, slow and simple simulation, written from the pages in {@code docs}
 * alone: straight loops over hours and seconds, one after the other. It takes plans as they come
 * out, shares nothing with the program but the records of {@code model} and {@code planning}, and
 * judges them. Open {@link org.hibernacle.oracle.Oracle} first.
 */
@NullMarked
package org.hibernacle.oracle;

import org.jspecify.annotations.NullMarked;

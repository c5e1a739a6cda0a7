/**
 * Chapter 6: how is it started?
 *
 * <p>The only chapter that knows the clock, the streams and exit codes. Open {@code Hibernacle}
 * first.
 */
@NullMarked
package org.hibernacle.cli;

import org.jspecify.annotations.NullMarked;

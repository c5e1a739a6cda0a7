/**
 * Do the numbers make sense to a grower? {@link org.hibernacle.sense.SenseTable} writes {@code
 * docs/sense.md}: what plants on a bench feel by month, beside what they can take then.
 */
@NullMarked
package org.hibernacle.sense;

import org.jspecify.annotations.NullMarked;

/**
 * What must hold of every plan, tried on gardens and winters drawn by chance: {@link
 * org.hibernacle.planning.proof.SomeGarden} draws them, each test class names a property. A failure
 * tells the seed of its garden; {@code docs/planning.md}, "How it is proved", lists the properties.
 */
@NullMarked
package org.hibernacle.planning.proof;

import org.jspecify.annotations.NullMarked;

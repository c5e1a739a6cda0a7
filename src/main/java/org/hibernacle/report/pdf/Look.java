package org.hibernacle.report.pdf;

import java.awt.Color;

/**
 * How a role looks on paper.
 *
 * @param fill behind the words, pale enough to print as light grey
 * @param text the words, and the bar beside them
 */
record Look(Color fill, Color text) {}

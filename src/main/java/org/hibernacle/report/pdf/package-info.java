/**
 * Chapter 5b: how does it look on paper?
 *
 * <p>Takes the report model, draws pages. Open {@code CalendarPdf} first.
 */
@NullMarked
package org.hibernacle.report.pdf;

import org.jspecify.annotations.NullMarked;

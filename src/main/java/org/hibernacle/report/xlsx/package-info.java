/**
 * Chapter 5a: how does it look in a workbook?
 *
 * <p>Takes the report model and a {@code WorkbookTemplate} that holds the look, writes sheets that
 * follow what the keeper enters, with native charts. Open {@code WorkbookWriter} first.
 */
@NullMarked
package org.hibernacle.report.xlsx;

import org.jspecify.annotations.NullMarked;

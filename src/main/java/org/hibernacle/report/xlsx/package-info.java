/**
 * Chapter 5a: how does it look in a workbook?
 *
 * <p>Takes the report model, writes it with looks and native charts. Open {@code WorkbookWriter}
 * first.
 */
@NullMarked
package org.hibernacle.report.xlsx;

import org.jspecify.annotations.NullMarked;

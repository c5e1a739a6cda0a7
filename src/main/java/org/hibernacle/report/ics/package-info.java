/**
 * Chapter 5c: how does it look in a calendar program?
 *
 * <p>Takes the agenda, writes a file of the open standard RFC 5545. Open {@code CalendarFile}
 * first.
 */
@NullMarked
package org.hibernacle.report.ics;

import org.jspecify.annotations.NullMarked;

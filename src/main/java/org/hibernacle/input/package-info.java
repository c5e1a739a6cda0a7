/**
 * Chapter 1: what did the user give us, and what is wrong with it?
 *
 * <p>Takes files, hands on the inventory, the temperature series and every problem met, collected
 * and placed. Open {@code InventoryWorkbook} first.
 */
@NullMarked
package org.hibernacle.input;

import org.jspecify.annotations.NullMarked;

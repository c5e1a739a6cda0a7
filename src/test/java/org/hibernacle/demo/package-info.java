/**
 * Where does the demo come from? Programs that write the invented garden of {@code demo-data} and
 * the workbooks of the tests: {@link org.hibernacle.demo.DemoTemperatures} the weather, {@link
 * org.hibernacle.demo.DemoInventory} the plants and places.
 */
@NullMarked
package org.hibernacle.demo;

import org.jspecify.annotations.NullMarked;

package org.hibernacle.speed;

import java.nio.file.Path;
import java.util.List;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;

/** The demo's input; programs that read it are started in the project's folder. */
final class Demo {
  private Demo() {}

  static Inventory inventory() {
    return InventoryWorkbook.read(
            Path.of("demo-data", "inventory.xlsx"), SpeciesCatalogue.builtIn(), new Problems())
        .orElseThrow();
  }

  static TemperatureSeries weather() {
    return TemperatureCsv.read(
            List.of(Path.of("demo-data", "temperatures.csv")),
            TemperatureCsv.Options.NONE,
            new Problems())
        .orElseThrow();
  }
}

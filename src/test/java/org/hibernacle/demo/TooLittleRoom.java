package org.hibernacle.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hibernacle.model.SheetTable;

/**
 * The demo garden without a roof: an open bench and bare soil is all there is, so olives, azaleas
 * and a tropical fig can not be brought through the demo's winters. Larch and pine can.
 */
public final class TooLittleRoom {
  private static final String PLANTS =
      """
      Id  | Label        | Species                   | Cultivar   | Home       | Pot                   | Size  | Priority | Value | More
      T01 | Larch        | Larix decidua             |            | Open bench | rect 48x34x14 ceramic | 75x60 | 3 | 700 |
      T02 | Scots pine   | Pinus sylvestris          |            | Open bench | round 40x18 ceramic   | 80x60 | 3 | 650 |
      T03 | Old olive    | Olea europaea             |            | Open bench | round 30x16 ceramic   | 60x45 | 5 | 450 |
      T04 | Young olive  | Olea europaea             |            | Open bench | round 18x14 plastic   | 40x25 | 2 | 40  | Count=3
      T05 | Banyan       | Ficus microcarpa          |            | Open bench | rect 30x22x9 ceramic  | 40x48 | 3 | 240 |
      T06 | Satsuki      | Rhododendron indicum      | Kozan      | Open bench | rect 32x24x11 ceramic | 44x46 | 4 | 720 |
      T07 | Kurume       | Rhododendron Kurume Group | Hinodegiri | Open bench | round 12x6 ceramic    | 20x22 | 2 | 60  |
      """;

  private static final String PLACES =
      """
      Place       | Kind   | Floor m2 | Sun  | Wind      | Cover
      Open bench  | bench  | 6        | full | open      | none
      Bare ground | ground | 2        | part | open      | none
      """;

  private TooLittleRoom() {}

  /** Writes {@code too-little-room.xlsx} into the folder named. */
  public static void main(String[] outDir) throws IOException {
    Path folder = Files.createDirectories(Path.of(outDir[0]));
    InventoryWorkbook.write(folder.resolve("too-little-room.xlsx"), sheets());
  }

  /** The three sheets; no Species sheet, which is optional. */
  static List<SheetTable> sheets() {
    return List.of(
        PlantRows.sheet(PLANTS),
        TextTable.sheet("Places", PLACES),
        TextTable.sheet("Settings", DemoInventory.SETTINGS));
  }
}

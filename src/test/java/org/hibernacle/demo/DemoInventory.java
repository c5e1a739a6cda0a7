package org.hibernacle.demo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.model.SheetTable;

/**
 * The invented garden of the demo: a collector near 48° N with a continental winter, plants of all
 * groups and a place of every kind, with room for all of them. Edit the tables below and run {@code
 * main}.
 */
public final class DemoInventory {
  private static final CSVFormat CSV =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  private static final String PLANTS =
      """
      Id  | Label                | Species             | Cultivar      | Home       | Pot                    | Size    | Priority | Value | More
      P01 | Old black pine       | Pinus thunbergii    |               | Open bench | rect 42x31x12 ceramic  | 72x64   | 5 | 1800 | Last root work=2024-04-06; Came from=an estate sale
      P02 | White pine           | Pinus parviflora    | Kokonoe       | Open bench | rect 38x28x10 ceramic  | 58x50   | 5 | 1200 | Rootstock=Pinus thunbergii; Last root work=2023-04-12
      P03 | Heath pine           | Pinus sylvestris    |               | Open bench | round 40x15 ceramic    | 80x60   | 4 | 650  | Came from=dug with leave, 2014
      P04 | Mugo in its box      | Pinus mugo          |               | Open bench | rect 45x45x20 wood     | 50x60   | 2 | 120  | Vigour=strong
      P05 | Shimpaku cascade     | Juniperus chinensis | Itoigawa      | Open bench | rect 26x26x24 ceramic  | 45x55   | 4 | 900  |
      P06 | Dwarf spruce         | dwarf Alberta spruce|               | Wall bench | round 28x22 plastic    | 60x40   | 2 | 60   | Notes=Burns in March sun
      P07 | Hinoki               | Chamaecyparis obtusa| Nana Gracilis | Wall bench | round 30x20 ceramic    | 55x45   | 3 | 280  |
      P08 | Yew stump            | Taxus cuspidata     |               | Open bench | rect 36x26x14 ceramic  | 48x50   | 3 | 420  | Last root work=2025-04-20
      P09 | Larch grove to be    | Larix kaempferi     |               | Open bench | round 14x12 plastic    | 40x20   | 2 | 90   | Count=6; Came from=own seed, 2021
      P10 | Leaning larch        | Larix decidua       |               | Open bench | rect 48x34x9 ceramic   | 75x60   | 4 | 700  |
      P11 | Red spring maple     | Acer palmatum       | Deshojo       | Wall bench | rect 40x30x10 ceramic  | 62x60   | 5 | 1100 | Last root work=2025-03-29
      P12 | Laceleaf by the gate | Acer palmatum Dissectum Group | Inaba-shidare | Wall bench | 60 L wood      | 120x105 | 3 | 350  |
      P13 | Small-leaved maple   | Acer palmatum       | Kiyohime      | Wall bench | round 24x8 ceramic     | 22x34   | 4 | 380  |
      P14 | Corky elm            | Ulmus minor         | Suberosa      | Open bench | rect 34x25x9 ceramic   | 50x42   | 3 | 260  |
      P15 | Hornbeam             | Carpinus betulus    |               | Open bench | rect 44x33x11 ceramic  | 70x58   | 4 | 540  | Last root work=2026-04-03; Notes=Half of its roots cut this spring
      P16 | Beech                | Fagus sylvatica     |               | Open bench | round 36x16 plastic    | 66x48   | 2 | 150  |
      P17 | Crab apple           | Malus halliana      |               | Wall bench | round 32x14 ceramic    | 54x44   | 3 | 330  | Planned root work=2027-03-20
      P18 | Fuji cherry          | Prunus incisa       | Kojo-no-mai   | Wall bench | round 20x9 ceramic     | 34x30   | 2 | 110  |
      P19 | Hawthorn             | Crataegus monogyna  |               | Open bench | rect 35x25x13 concrete | 58x46   | 3 | 300  |
      P20 | Ginkgo               | Ginkgo biloba       |               | Open bench | round 26x18 terracotta | 70x30   | 2 | 140  |
      P21 | Thumb cotoneaster    | Cotoneaster horizontalis |          | Wall bench | round 11x5 ceramic     | 12x16   | 2 | 45   |
      P22 | Zelkova broom        | Zelkova serrata     |               | Open bench | rect 40x28x7 ceramic   | 56x52   | 4 | 620  |
      P23 | Early rhododendron   | Rhododendron PJM Group |            | Wall bench | 12 L plastic           | 60x55   | 2 | 70   |
      P24 | Pieris               | Pieris japonica     |               | Wall bench | 15 L plastic           | 75x55   | 2 | 65   |
      P25 | Ivy on a stone       | Hedera helix        |               | Wall bench | round 10x6 ceramic     | 14x15   | 1 | 30   |
      P26 | Trident maple        | Acer buergerianum   |               | Wall bench | rect 38x27x9 ceramic   | 60x55   | 5 | 1300 | Last root work=2024-03-30
      P27 | Trident over rock    | Acer buergerianum   |               | Wall bench | rect 30x22x8 ceramic   | 38x34   | 4 | 480  | Last root work=2026-03-28
      P28 | Satsuki              | Rhododendron indicum | Kozan        | Wall bench | rect 32x24x11 ceramic  | 44x46   | 4 | 720  |
      P29 | Poorly azalea        | Rhododendron Kurume Group | Hinodegiri | Wall bench | round 22x12 plastic  | 30x32   | 3 | 95   | Vigour=weak; Notes=Lost a third of its leaves in July
      P30 | Camellia             | Camellia japonica   |               | Wall bench | 35 L terracotta        | 140x80  | 3 | 190  | Stay in=Glasshouse; Frost-proof pot=no
      P31 | Chinese elm          | Ulmus parvifolia    |               | Wall bench | rect 28x20x8 ceramic   | 36x38   | 3 | 160  | Root limit °C=-2; Notes=Came to us from a heated shop
      P32 | Japanese holly       | Ilex crenata        |               | Wall bench | round 24x16 plastic    | 40x36   | 2 | 80   |
      P33 | Box                  | Buxus microphylla   |               | Wall bench | round 22x14 ceramic    | 30x34   | 3 | 210  |
      P34 | Crape myrtle         | Lagerstroemia indica |              | Wall bench | 20 L plastic           | 110x60  | 2 | 85   |
      P35 | Olive in the tub     | Olea europaea       |               | Wall bench | 60 L terracotta        | 165x95  | 4 | 450  | Frost-proof pot=no; Notes=Two people to lift
      P36 | Little olive         | Olea europaea       |               | Wall bench | round 24x12 ceramic    | 32x30   | 3 | 180  |
      P37 | Pomegranate          | Punica granatum     | Nana          | Wall bench | round 26x16 terracotta | 45x38   | 2 | 75   | Frost-proof pot=yes
      P38 | Fig                  | common fig          |               | Wall bench | 45 L plastic           | 150x90  | 2 | 60   | Not before=2026-10-24; Notes=Wait until the leaves are down
      P39 | Bay                  | Laurus nobilis      |               | Wall bench | 30 L plastic           | 130x60  | 2 | 90   |
      P40 | Rosemary             | rosemary            |               | Wall bench | round 25x20 terracotta | 55x45   | 1 | 25   | Frost-proof pot=no
      P41 | Calamondin           | Citrus × microcarpa |               | Wall bench | round 28x24 terracotta | 70x50   | 3 | 120  | Frost-proof pot=no
      P42 | Sweet plum           | Sageretia thea      |               | Wall bench | rect 26x18x8 ceramic   | 34x36   | 3 | 150  |
      P43 | Dwarf jade           | Portulacaria afra   |               | Wall bench | round 20x10 ceramic    | 26x30   | 2 | 70   |
      P44 | Banyan               | Ficus microcarpa    |               | Garden room | rect 30x22x9 ceramic  | 40x48   | 3 | 240  |
      P45 | Fukien tea           | Ehretia microphylla |               | Wall bench | rect 24x17x7 ceramic   | 28x32   | 3 | 130  |
      P46 | Desert rose          | Adenium obesum      |               | Wall bench | round 26x18 plastic    | 50x35   | 2 | 80   |
      """;

  private static final String PLACES =
      """
      Place       | Kind            | Floor m2 | Sun  | Wind      | Cover | Cover depth cm | Light  | Lowest held °C | Highest held °C | Warmer by K | Lag h | Holds down to °C | Clear height cm | Vents | Notes
      Open bench  | bench           | 16 | full | open      | none  |    | bright |    |    |     |    |     |     |     | On trestles along the drive
      Wall bench  | bench           | 14 | part | sheltered | none  |    | bright |    |    | 0.5 |    |     |     |     | Slabs on blocks against the south wall
      Hedge foot  | ground          | 10 | part | sheltered | none  |    | bright |    |    |     |    |     |     |     | Bare soil behind the hornbeam hedge
      Mulch bed   | ground          | 12 | none | sheltered | mulch | 30 | low    |    |    |     |    |     |     |     | Pots sunk to the rim in bark
      Stone shed  | cold store      | 10 | none | sheltered | none  |    | low    |    |    | 3   | 48 |     | 200 | yes | Thick walls, small window, no heating
      Glasshouse  | glasshouse      | 12 | full | sheltered | none  |    | bright | 3  | 18 | 1   | 1  | -25 | 210 | yes | Small heater with a thermostat
      Porch       | frost-free room | 5  | none | sheltered | none  |    | low    | 2  | 10 |     |    | -25 | 220 | yes | North window
      Garden room | warm room       | 6  | part | sheltered | none  |    | bright | 16 | 24 |     |    |     | 230 | yes | Heated with the house
      """;

  static final String SETTINGS =
      """
      Setting                      | Value
      Site                         | Quillbrook Yard
      Site colder than station by K | 1.5
      Latitude                     | 48.1
      Longitude                    | 11.4
      Time zone                    | Europe/Berlin
      Units                        | metric
      Safety margin K              | 2
      Accepted risk                | 0
      Moving days                  | Saturday, Sunday
      Away                         | 2026-12-24 to 2027-01-02
      Paper                        | A4
      First day of week            | Monday
      Language tag                 | en-GB
      """;

  private DemoInventory() {}

  /** Writes {@code inventory.xlsx} into the folder named. */
  public static void main(String[] outDir) throws IOException {
    Path folder = Files.createDirectories(Path.of(outDir[0]));
    InventoryWorkbook.write(folder.resolve("inventory.xlsx"), sheets());
  }

  /** The four sheets. */
  static List<SheetTable> sheets() throws IOException {
    return List.of(
        PlantRows.sheet(PLANTS),
        TextTable.sheet("Places", PLACES),
        ownSpecies(
            "Acer buergerianum",
            Map.of(
                "root_limit_estimate_c", "-6",
                "estimate_basis", "common-practice",
                "notes", "Own correction: both of ours came through -6 °C unharmed.",
                "sources", "own records")),
        TextTable.sheet("Settings", SETTINGS));
  }

  /** A Species sheet with one row: that of the built-in table, corrected. */
  private static SheetTable ownSpecies(String taxon, Map<String, String> corrections)
      throws IOException {
    try (CSVParser table = builtInSpecies()) {
      for (CSVRecord species : table) {
        if (species.get("taxon").equals(taxon)) {
          Map<String, String> row = new LinkedHashMap<>(species.toMap());
          row.putAll(corrections);
          return TextTable.sheet("Species", table.getHeaderNames(), List.of(row));
        }
      }
    }
    throw new IllegalArgumentException("no taxon " + taxon);
  }

  /** The built-in species table. */
  static CSVParser builtInSpecies() throws IOException {
    InputStream in = DemoInventory.class.getResourceAsStream("/species.csv");
    if (in == null) {
      throw new IOException("species.csv is not on the class path");
    }
    return CSVParser.parse(in, StandardCharsets.UTF_8, CSV);
  }
}

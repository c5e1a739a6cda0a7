package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.proof.Draw;
import org.hibernacle.planning.proof.SomeGarden;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * More room never costs more, in gardens of chance: their plants' real wishes are shared out in
 * less and in more room. Where all ways of sharing could be tried, the toll is the least there is;
 * {@link SharingTest} holds that against a reference. It can then only fall.
 */
class RoomForAGardenTest {
  static LongStream seeds() {
    return Draw.seeds(7_400, 6);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreRoomNeverCostsMore(long seed) {
    SomeGarden garden = SomeGarden.of(seed);
    Inventory inventory = garden.inventory();
    Settings settings = inventory.settings();
    HourlyAir air = new HourlyAir(garden.file(), settings.latitudeDeg());
    Season first = Season.containing(garden.file().days().firstKey(), settings.southern());
    List<Winter> winters = List.of(Winter.of(first, air, settings.siteColderByK()));
    WintersOnFile onFile =
        new WintersOnFile(
            first.next(), winters, inventory.places(), settings.latitudeDeg(), Map.of());
    Caution caution = Caution.of(settings, 1);
    List<Claim> claims =
        inventory.plants().stream()
            .map(p -> PlantPlanner.of(p, settings, caution, onFile))
            .map(p -> p.claim(p.find()))
            .toList();
    Sharing.Shared tight = Sharing.share(claims, ledger(onFile, inventory, 1));
    Sharing.Shared roomy = Sharing.share(claims, ledger(onFile, inventory, 1.5));
    String where = "-Dproof.seed=" + seed + " -Dproof.cases=1";
    assertTrue(tight.bound().compareTo(tight.toll()) <= 0, where);
    assertEquals(0, tight.bound().compareTo(roomy.bound()), where);
    if (tight.proven() && roomy.proven()) {
      assertTrue(roomy.toll().compareTo(tight.toll()) <= 0, where);
    }
  }

  private static Ledger ledger(WintersOnFile winters, Inventory inventory, double times) {
    double[] floorM2 =
        inventory.places().stream()
            .map(p -> p.floorM2())
            .mapToDouble(m2 -> times * m2.orElse(1e6))
            .toArray();
    Settings settings = inventory.settings();
    OptionalInt pots = settings.plantsPerMovingDay();
    return new Ledger(floorM2, winters.season().days(), pots, settings.minutesPerMovingDay());
  }
}

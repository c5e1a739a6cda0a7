package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.physiology.Acclimation.Phase;
import org.junit.jupiter.api.Test;

/**
 * The limits in use against what was found in freezing tests. A temperature that plants survived is
 * a bound: harm began somewhere colder, so a limit must be warmer than it, by any amount. One that
 * killed must lie below the limit. Abstracts were read unless a line says otherwise.
 */
class PublishedHardinessTest {
  private static final Season SEASON = new Season(2020, false);
  private static final LocalDate REPOTTED = LocalDate.of(2020, 4, 1);

  /**
   * Smit-Spinks, Swanson, Markhart 1985, Can. J. For. Res. 15: Scots pine seedlings after short
   * days and cold stood -40 °C in their shoots, -15 in their roots, -10 in white root tips.
   */
  @Test
  void scotsPineStandsNoMoreThanInShortDaysAndCold() {
    assertLimit("Pinus sylvestris", -15);
    assertYoung("Pinus sylvestris", -10);
    assertTrue(Hardening.shootLimitC(SomePlant.species("Pinus sylvestris")) >= -40);
  }

  /**
   * Lindström and Nyström 1987, Can. J. For. Res. 17:787-793: from late autumn to midwinter
   * container seedlings survived -15 to -25 °C, growth of roots failed much earlier; spruce roots
   * were hardier than those of pine, younger plants more sensitive.
   */
  @Test
  void survivalOfContainerSeedlingsIsABoundAndNotALimit() {
    for (String taxon : new String[] {"Pinus sylvestris", "Picea abies", "Pinus contorta"}) {
      assertLimit(taxon, -15);
      assertTrue(young(taxon) > mature(taxon), taxon);
    }
    assertTrue(mature("Picea abies") < mature("Pinus sylvestris"), "spruce roots are hardier");
  }

  /**
   * Mityga and Lanphear 1971, J. Amer. Soc. Hort. Sci. 96:83-87: mature roots of Japanese yew stood
   * -29 °C outdoors, light young ones did not harden at all. In pots yews die at -12.2 °C, young
   * roots near -3.9 (second-hand, The Washington Post, 26 November 1978).
   */
  @Test
  void yewRootsAreHeldToThePotAndNotToTheGarden() {
    assertLimit("Taxus cuspidata", -12.2);
    assertLimit("Taxus × media", -12.2);
    double margin = 2;
    assertTrue(young("Taxus cuspidata") + margin >= -3.9, "with the usual margin in hand");
    assertTrue(young("Taxus × media") + margin >= -3.9);
  }

  /**
   * Leaves and shoots of olives take harm from about -7 °C (freezing stress of cultivars, Shiraz
   * University, Int. J. Hort. Sci. Technol.), half the leaves of a tender cultivar at -9.5
   * (Barranco et al. 2005, HortScience 40:558-560).
   */
  @Test
  void oliveTopsAreToldToTakeHarmWhereTheyDo() {
    assertEquals(-7, Hardening.shootLimitC(SomePlant.species("Olea europaea")), 0.5);
  }

  /**
   * Tinus, Sword, Barnett 2002, USDA GTR SRS-56:55-57: longleaf pine roots stand -4 °C all season,
   * a few degrees less kills: they hardly harden. A row of such roots keeps one limit all winter.
   */
  @Test
  void rootsThatHardlyHardenKeepOneLimit() {
    Acclimation longleaf =
        new Acclimation(-4, -4, new Phase(10, 0.012, 0.003), new Phase(5, 0.010, 0.004), 3);
    double limitC = -4;
    for (int day = 0; day < 100; day++) {
      limitC = longleaf.next(limitC, -2, false, true, 1);
    }
    assertEquals(-4, limitC);
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (species.taxon().startsWith("Pinus ")) {
        assertTrue(species.unhardenedLimitC() >= -4, species.taxon());
      }
    }
  }

  /**
   * Santamour 1979, J. Arboric. 5:276-279: a week at -9 °C killed root tips of green ash, and all
   * roots of plants from mild origins; a week at -15 °C killed all roots.
   */
  @Test
  void ashRootsAreNotTrustedToMinusNine() {
    assertLimit("Fraxinus excelsior", -9);
  }

  /**
   * Young and old roots and tops of one species: Ilex opaca -5, -12.8, about -29 °C (Mathers,
   * quoted second-hand); Pyracantha coccinea -5.6, -16.7, stems -26.1 (Cornell work, second-hand);
   * Magnolia stellata -6 and -13, also -5 (forum posts); box and Japanese holly, white tips -6.7,
   * tops -20.6 to -23.3 (Dirr and Smith 1988).
   */
  @Test
  void youngRootsOldRootsAndTopsStandApartAsPublished() {
    assertApart("Ilex opaca", -5, -12.8, -29);
    assertApart("Pyracantha coccinea", -5.6, -16.7, -26.1);
    assertApart("Magnolia stellata", -6, -13, -40);
    assertApart("Ilex crenata", -6.7, -6.7, -23.3);
    assertApart("Buxus sempervirens", -6.7, -6.7, -23.3);
  }

  /**
   * Coleman et al. 1992, Can. J. For. Res. 22:932-938: roots of subalpine fir half died at -11.5,
   * of lodgepole pine and mountain hemlock at -7.5 °C; unhardened roots died on freezing through.
   */
  @Test
  void halfKillOfMountainConifersLiesBelowTheirLimits() {
    assertLimit("Abies lasiocarpa", -11.5);
    assertLimit("Pinus contorta", -7.5);
    assertLimit("Tsuga mertensiana", -7.5);
  }

  /** Whatever a row's published figure is: no limit in use is colder, if it is no survival. */
  @Test
  void noLimitIsColderThanWhatKills() {
    int figures = 0;
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (species.rootKill().isPresent()) {
        figures++;
        assertTrue(species.rootLimitC() >= species.rootKill().get().killC(), species.taxon());
      }
    }
    assertEquals(31, figures);
  }

  private static void assertApart(String taxon, double youngC, double matureC, double topC) {
    assertYoung(taxon, youngC);
    assertLimit(taxon, matureC);
    assertTrue(Hardening.shootLimitC(SomePlant.species(taxon)) >= topC, taxon + " top");
    assertTrue(young(taxon) > mature(taxon), taxon);
  }

  private static void assertLimit(String taxon, double boundC) {
    assertTrue(mature(taxon) >= boundC, taxon + " " + mature(taxon));
  }

  private static void assertYoung(String taxon, double boundC) {
    assertTrue(young(taxon) >= boundC, taxon + " " + young(taxon));
  }

  private static double mature(String taxon) {
    return Hardening.midwinterRootLimitC(SomePlant.of(taxon).plant(), SEASON);
  }

  private static double young(String taxon) {
    return Hardening.midwinterRootLimitC(
        SomePlant.of(taxon).lastRootWork(REPOTTED).plant(), SEASON);
  }
}

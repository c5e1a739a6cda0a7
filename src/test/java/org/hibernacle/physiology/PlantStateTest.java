package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.ChillNeed;
import org.junit.jupiter.api.Test;

class PlantStateTest {
  private static final Season SEASON = new Season(2020, false);
  private static final int NIGHTS = 364;
  private static final int CORE_START = 92;
  private static final int MIDWINTER = 198;
  private static final int REST_CAP = 215;

  private final double[] airMeanC = filled(2);
  private final double[] airMinC = filled(-1);
  private final double[] dayLengthH = filled(10);
  private final double[] portions = filled(0);
  private final double[] hours = filled(0);
  private final double[] heat = filled(0);

  @Test
  void restEndsWithTheLastPortionThatIsNeeded() {
    Species maple = SomePlant.species("Acer palmatum");
    assertEquals(50, Rest.of(maple).portions());
    Arrays.fill(portions, CORE_START, NIGHTS, 1);
    assertEquals(CORE_START + 50, live(maple).restEnd());
    portions[CORE_START + 10] = 0.9;
    assertEquals(CORE_START + 51, live(maple).restEnd());
  }

  @Test
  void restEndsWithTheLastHourThatIsNeeded() {
    Arrays.fill(hours, CORE_START, NIGHTS, 20);
    assertEquals(CORE_START + 50, live("Acer palmatum").restEnd());
    hours[CORE_START] = 19;
    assertEquals(CORE_START + 51, live("Acer palmatum").restEnd());
  }

  @Test
  void theEarliestOfTheThreeEndsRest() {
    assertEquals(REST_CAP + 1, live("Acer palmatum").restEnd());
    Arrays.fill(hours, CORE_START, NIGHTS, 10);
    assertEquals(CORE_START + 100, live("Acer palmatum").restEnd());
    Arrays.fill(portions, CORE_START, NIGHTS, 1);
    assertEquals(CORE_START + 50, live("Acer palmatum").restEnd());
  }

  /** What is gained before October does not count. */
  @Test
  void chillCountsFromTheCoreMonthsOn() {
    Arrays.fill(portions, 0, CORE_START, 10);
    assertEquals(REST_CAP + 1, live("Acer palmatum").restEnd());
    portions[CORE_START] = 50;
    assertEquals(CORE_START + 1, live("Acer palmatum").restEnd());
  }

  /**
   * Six to eight weeks in the cold are the usual need of temperate woody plants (Rutgers NJAES
   * FS528), 1000 hours and more: the middle class. The others lie round it; docs/models/rest.md.
   */
  @Test
  void theClassesOfNeedLieAroundSixWeeks() {
    Rest medium = Rest.of(SomePlant.species("Acer palmatum"));
    assertEquals(6, medium.hours() / 24 / 7, 0.1);
    Rest low = Rest.of(SomePlant.species("Olea europaea"));
    assertEquals(25, low.portions());
    assertEquals(400, low.hours());
    Species highest =
        SomePlant.CATALOGUE.species().stream()
            .filter(s -> s.chillNeed() == ChillNeed.HIGH && s.chillPortionsLow().isEmpty())
            .findFirst()
            .orElseThrow();
    assertEquals(75, Rest.of(highest).portions());
    assertEquals(1500, Rest.of(highest).hours());
  }

  /** Published needs are used as they stand; see docs/species.md. */
  @Test
  void publishedPortionsReplaceTheClass() {
    boolean seen = false;
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (species.chillPortionsLow().isPresent()) {
        seen = true;
        assertEquals(species.chillPortionsLow().getAsDouble(), Rest.of(species).portions());
      }
    }
    assertTrue(seen);
  }

  @Test
  void budsBreakOnceTheHeatAfterRestSuffices() {
    Arrays.fill(portions, CORE_START, NIGHTS, 1);
    Arrays.fill(heat, 100);
    int restEnd = CORE_START + 50;
    PlantState maple = live("Acer palmatum");
    assertEquals(restEnd + 40, maple.budBreak());
    heat[restEnd] = 99;
    assertEquals(restEnd + 41, live("Acer palmatum").budBreak());
  }

  /** Order of waking as growers see it: larch, then maples, then pines. Common practice. */
  @Test
  void earlyFlushersBeforeMaplesBeforeEvergreens() {
    Arrays.fill(portions, CORE_START, NIGHTS, 1);
    for (int n = REST_CAP; n < NIGHTS; n++) {
      heat[n] = n - REST_CAP;
    }
    int larch = live("Larix decidua").budBreak();
    int maple = live("Acer palmatum").budBreak();
    int pine = live("Pinus thunbergii").budBreak();
    assertTrue(REST_CAP < larch && larch < maple && maple < pine, larch + " " + maple + " " + pine);
    assertTrue(pine < NIGHTS);
  }

  @Test
  void tropicalPlantsNeitherRestNorWake() {
    Arrays.fill(portions, 5);
    Arrays.fill(hours, 24);
    Arrays.fill(heat, 500);
    PlantState ficus = live("Ficus microcarpa");
    assertEquals(NIGHTS, ficus.budBreak());
    assertFalse(Rest.rests(SomePlant.species("Ficus microcarpa")));
    assertFalse(Rest.rests(SomePlant.species("Citrus × limon")));
    assertTrue(Rest.rests(SomePlant.species("Olea europaea")));
  }

  @Test
  void leavesFallAfterSixtyDegreeDaysOfColdInShortDays() {
    Arrays.fill(dayLengthH, 0, CORE_START, 13);
    Arrays.fill(airMeanC, 6);
    Arrays.fill(airMinC, 2);
    PlantState maple = live("Acer palmatum");
    int bare = CORE_START + 10;
    assertFalse(maple.bare()[bare - 1]);
    assertTrue(maple.bare()[bare] && maple.dormant()[bare]);
    assertTrue(maple.inLeaf(bare - 1, Foliage.DECIDUOUS));
    assertFalse(maple.inLeaf(bare, Foliage.DECIDUOUS));
    PlantState pine = live("Pinus thunbergii");
    assertFalse(pine.bare()[bare]);
    assertTrue(pine.dormant()[bare]);
    assertTrue(pine.inLeaf(bare, Foliage.EVERGREEN));
    Arrays.fill(dayLengthH, 12);
    assertFalse(live("Acer palmatum").bare()[NIGHTS - 1], "days of 12 h are not short");
  }

  @Test
  void aHardFrostBringsLeavesDownAWeekLater() {
    Arrays.fill(airMeanC, 12);
    Arrays.fill(airMinC, 8);
    assertFalse(live("Acer palmatum").bare()[NIGHTS - 1]);
    airMinC[CORE_START] = -3.9;
    assertFalse(live("Acer palmatum").bare()[NIGHTS - 1]);
    airMinC[CORE_START] = -4;
    PlantState maple = live("Acer palmatum");
    assertFalse(maple.bare()[CORE_START + 7]);
    assertTrue(maple.bare()[CORE_START + 8]);
  }

  /** Cold after midwinter is no autumn: what kept its leaves till then keeps them. */
  @Test
  void leavesFallBeforeMidwinterOrNotAtAll() {
    Arrays.fill(airMeanC, 0, MIDWINTER + 1, 15);
    Arrays.fill(airMinC, 0, MIDWINTER + 1, 10);
    assertFalse(live("Acer palmatum").bare()[NIGHTS - 1]);
    Arrays.fill(airMeanC, MIDWINTER - 5, MIDWINTER + 1, 0);
    assertTrue(live("Acer palmatum").bare()[MIDWINTER + 1]);
  }

  @Test
  void leavesAreBackOnceBudsHaveBroken() {
    Arrays.fill(portions, CORE_START, NIGHTS, 1);
    Arrays.fill(heat, REST_CAP, NIGHTS, 100);
    PlantState maple = live("Acer palmatum");
    int woke = maple.budBreak();
    assertTrue(maple.bare()[woke - 1] && maple.dormant()[woke - 1]);
    assertFalse(maple.bare()[woke] || maple.dormant()[woke]);
  }

  /** The first day on file finds every plant unhardened, whatever the day is like. */
  @Test
  void aPlantStartsUnhardened() {
    Arrays.fill(airMeanC, -20);
    PlantState maple = live("Acer palmatum");
    assertEquals(-2, maple.rootLimitC()[0]);
    assertEquals(-5, maple.shootLimitC()[0]);
    assertEquals(0, maple.rootHardness()[0]);
    assertTrue(maple.rootLimitC()[1] < -2);
  }

  @Test
  void livingTwiceGivesTheSame() {
    Arrays.fill(portions, 0.7);
    Arrays.fill(heat, 60);
    PlantState once = live("Acer palmatum");
    PlantState again = live("Acer palmatum");
    assertTrue(Arrays.equals(once.rootLimitC(), again.rootLimitC()));
    assertTrue(Arrays.equals(once.shootLimitC(), again.shootLimitC()));
    assertEquals(once.restEnd(), again.restEnd());
    assertEquals(once.budBreak(), again.budBreak());
  }

  private PlantState live(String taxon) {
    return live(SomePlant.species(taxon));
  }

  private PlantState live(Species species) {
    return PlantState.live(
        SomePlant.of(species).plant(),
        SEASON,
        new Surroundings(
            airMeanC,
            airMeanC,
            airMinC,
            dayLengthH,
            portions,
            hours,
            heat,
            CORE_START,
            MIDWINTER,
            REST_CAP));
  }

  private static double[] filled(double value) {
    double[] nights = new double[NIGHTS];
    Arrays.fill(nights, value);
    return nights;
  }
}

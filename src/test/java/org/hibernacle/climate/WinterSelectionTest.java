package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.climate.WinterSelection.LeftOut;
import org.hibernacle.climate.WinterSelection.Reason;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

class WinterSelectionTest {
  private static final Season NORTH = new Season(2020, false);

  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();

  @Test
  void aFileOfTheCoreMonthsIsEnough() {
    fill("2020-10-01", "2021-05-01");
    WinterSelection selection = select(false);
    assertEquals(List.of(new UsableWinter(NORTH, List.of())), selection.winters());
    assertEquals(List.of(), selection.leftOut());
  }

  @Test
  void oneDayLateIsTooLate() {
    fill("2020-10-02", "2021-05-01");
    assertLeftOut(Reason.FILE_STARTS_TOO_LATE, "2020-10-01", "2020-10-02", 1);
  }

  @Test
  void oneDayShortIsTooEarly() {
    fill("2020-10-01", "2021-04-30");
    assertLeftOut(Reason.FILE_ENDS_TOO_EARLY, "2021-04-30", "2021-05-01", 1);
  }

  @Test
  void aFileThatOnlyTouchesASeasonLeavesItOut() {
    fill("2020-07-01", "2020-09-10");
    assertLeftOut(Reason.FILE_ENDS_TOO_EARLY, "2020-10-01", "2021-05-01", 212);
    days.clear();
    fill("2021-05-10", "2021-06-10");
    assertLeftOut(Reason.FILE_STARTS_TOO_LATE, "2020-10-01", "2021-05-01", 212);
  }

  @Test
  void threeMissingDaysAreBridgedByAStraightLine() {
    fill("2020-10-01", "2021-05-01");
    days.put(LocalDate.parse("2021-01-09"), new DailyExtremes(-8, 0));
    days.put(LocalDate.parse("2021-01-13"), new DailyExtremes(0, 2));
    drop("2021-01-10", "2021-01-13");
    WinterSelection selection = select(false);
    DateSpan gap = span("2021-01-10", "2021-01-13");
    assertEquals(List.of(new UsableWinter(NORTH, List.of(gap))), selection.winters());
    assertEquals(
        List.of(new DailyExtremes(-6, 0.5), new DailyExtremes(-4, 1), new DailyExtremes(-2, 1.5)),
        List.copyOf(
            selection.series().days().subMap(gap.fromInclusive(), gap.toExclusive()).values()));
  }

  @Test
  void fourMissingDaysAreTooMany() {
    fill("2020-10-01", "2021-05-01");
    drop("2021-01-10", "2021-01-14");
    assertLeftOut(Reason.GAP_TOO_LONG, "2021-01-10", "2021-01-14", 4);
    assertFalse(select(false).series().days().containsKey(LocalDate.parse("2021-01-10")));
  }

  @Test
  void tenDaysInAllAreBridgedElevenAreNot() {
    fill("2020-10-01", "2021-05-01");
    for (int month = 11; month <= 12; month++) {
      drop("2020-" + month + "-05", "2020-" + month + "-08");
      drop("2020-" + month + "-15", "2020-" + month + "-17");
    }
    assertEquals(4, select(false).winters().get(0).bridged().size());
    drop("2021-02-01", "2021-02-02");
    assertLeftOut(Reason.TOO_MANY_GAPS, "2020-11-05", "2020-11-08", 11);
  }

  @Test
  void outsideTheCoreLongGapsStayAndShortOnesAreBridged() {
    fill("2020-07-01", "2021-07-01");
    drop("2020-08-01", "2020-08-20");
    drop("2021-06-01", "2021-06-03");
    WinterSelection selection = select(false);
    assertEquals(List.of(span("2021-06-01", "2021-06-03")), selection.winters().get(0).bridged());
    assertFalse(selection.series().days().containsKey(LocalDate.parse("2020-08-10")));
    assertTrue(selection.series().days().containsKey(LocalDate.parse("2021-06-02")));
  }

  @Test
  void aSouthernWinterLiesInsideOneYear() {
    fill("2019-04-01", "2020-11-01");
    WinterSelection selection = select(true);
    assertEquals(
        List.of(2019, 2020), selection.winters().stream().map(w -> w.season().year()).toList());
  }

  @Test
  void everySeasonOfALongFileIsEitherUsedOrLeftOut() {
    fill("2015-01-01", "2021-01-01");
    drop("2018-01-01", "2018-02-01");
    WinterSelection selection = select(false);
    assertEquals(
        List.of(2015, 2016, 2018, 2019),
        selection.winters().stream().map(w -> w.season().year()).toList());
    assertEquals(
        List.of(2014, 2017, 2020),
        selection.leftOut().stream().map(w -> w.season().year()).toList());
  }

  private WinterSelection select(boolean southern) {
    return WinterSelection.of(new TemperatureSeries("somewhere", days, new TreeMap<>()), southern);
  }

  private void assertLeftOut(Reason reason, String from, String to, int missing) {
    WinterSelection selection = select(false);
    assertEquals(List.of(new LeftOut(NORTH, reason, span(from, to), missing)), selection.leftOut());
    assertEquals(List.of(), selection.winters());
  }

  private void fill(String fromInclusive, String toExclusive) {
    LocalDate.parse(fromInclusive)
        .datesUntil(LocalDate.parse(toExclusive))
        .forEach(day -> days.put(day, new DailyExtremes(-1, 5)));
  }

  private void drop(String fromInclusive, String toExclusive) {
    days.subMap(LocalDate.parse(fromInclusive), LocalDate.parse(toExclusive)).clear();
  }

  private static DateSpan span(String fromInclusive, String toExclusive) {
    return new DateSpan(LocalDate.parse(fromInclusive), LocalDate.parse(toExclusive));
  }
}

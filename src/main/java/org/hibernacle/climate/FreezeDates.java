package org.hibernacle.climate;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;

/**
 * When the first and the last frost of a winter come, by chance, over the winters on file that can
 * tell: see docs/models/freeze-dates.md.
 *
 * <p>A winter can tell if no day around its frosts is missing: from a month after the season's
 * start to the first frost, and from the last one to a month before the season's end. A day missing
 * between the two hides neither of them. Winters without such a frost must be whole.
 *
 * @param thresholdC a frost is a minimum at or below this, °C
 * @param winters that can tell
 * @param withFrost how many of them had one
 * @param first frost of a winter, rounded to the earlier day
 * @param last frost of a winter, rounded to the later day
 */
public record FreezeDates(double thresholdC, int winters, int withFrost, Dates first, Dates last) {
  /** Chance that the first frost has come, or the last one is past, by the early date. */
  private static final double EARLY_SHARE = 0.1;

  private static final double TYPICAL_SHARE = 0.5;
  private static final double LATE_SHARE = 0.9;

  /**
   * By the early date the first frost has come in one of ten winters, by the typical one in five,
   * by the late one in nine. After the early date there is a last frost still to come in nine of
   * ten winters, after the typical one in five, after the late one in one.
   */
  public record Dates(ByChance early, ByChance typical, ByChance late) {}

  /**
   * A date, or why there is none.
   *
   * @param basis what it rests on
   * @param day the date; empty unless it is on file
   */
  public record ByChance(Basis basis, Optional<MonthDay> day) {}

  /** What a date rests on. */
  public enum Basis {
    /** Frosts on file before and after it. */
    ON_FILE,
    /** There is no such date: too many winters pass without the frost. */
    NONE_BY_THAT_CHANCE,
    /** It lies beyond all frosts on file. */
    TOO_FEW_WINTERS
  }

  /**
   * One entry for each of {@link WinterSummary#THRESHOLDS_C}.
   *
   * @param winters of the series
   * @param series whose missing days matter
   * @param position how dates on file are spread over chances
   */
  public static List<FreezeDates> of(
      List<WinterSummary> winters, TemperatureSeries series, PlottingPosition position) {
    return IntStream.range(0, WinterSummary.THRESHOLDS_C.size())
        .mapToObj(threshold -> of(threshold, winters, series, position))
        .toList();
  }

  private static FreezeDates of(
      int threshold,
      List<WinterSummary> winters,
      TemperatureSeries series,
      PlottingPosition position) {
    int telling = 0;
    List<LocalDate> firsts = new ArrayList<>();
    List<LocalDate> lasts = new ArrayList<>();
    for (WinterSummary winter : winters) {
      WinterSummary.Frosts frosts = winter.frosts().get(threshold);
      if (canTell(winter.season(), frosts, series)) {
        telling++;
        frosts.first().ifPresent(firsts::add);
        frosts.last().ifPresent(lasts::add);
      }
    }
    boolean southern = winters.stream().anyMatch(winter -> winter.season().southern());
    EventChance chance = new EventChance(telling, firsts.size());
    Calendar first = Calendar.of(firsts, southern, position);
    Calendar last = Calendar.of(lasts, southern, position);
    return new FreezeDates(
        WinterSummary.THRESHOLDS_C.get(threshold),
        telling,
        firsts.size(),
        new Dates(
            first.floor(chance.shareWhenCome(EARLY_SHARE)),
            first.floor(chance.shareWhenCome(TYPICAL_SHARE)),
            first.floor(chance.shareWhenCome(LATE_SHARE))),
        new Dates(
            last.ceiling(chance.shareWhenStillToCome(1 - EARLY_SHARE)),
            last.ceiling(chance.shareWhenStillToCome(1 - TYPICAL_SHARE)),
            last.ceiling(chance.shareWhenStillToCome(1 - LATE_SHARE))));
  }

  /** First day that must be on file: 1 August, or 1 February in the south. */
  public static LocalDate watchedFrom(Season season) {
    return season.start().plusMonths(1);
  }

  /** Day after the last one that must be on file: 1 June, or 1 December in the south. */
  public static LocalDate watchedToExclusive(Season season) {
    return season.endExclusive().minusMonths(1);
  }

  private static boolean canTell(
      Season season, WinterSummary.Frosts frosts, TemperatureSeries series) {
    LocalDate from = watchedFrom(season);
    LocalDate to = watchedToExclusive(season);
    return whole(series, from, frosts.first().orElse(to))
        && whole(series, frosts.last().orElse(to), to);
  }

  private static boolean whole(
      TemperatureSeries series, LocalDate fromInclusive, LocalDate toExclusive) {
    return !fromInclusive.isBefore(toExclusive)
        || series.days().subMap(fromInclusive, toExclusive).size()
            == fromInclusive.until(toExclusive, ChronoUnit.DAYS);
  }

  /** Dates of several winters laid into one season with a leap day. */
  private record Calendar(Season leapSeason, double[] sortedDay, PlottingPosition position) {

    static Calendar of(List<LocalDate> dates, boolean southern, PlottingPosition position) {
      Season leapSeason = new Season(southern ? 2000 : 1999, southern);
      double[] sortedDay =
          dates.stream()
              .mapToDouble(d -> leapSeason.index(leapSeason.sameDay(d)))
              .sorted()
              .toArray();
      return new Calendar(leapSeason, sortedDay, position);
    }

    ByChance floor(OptionalDouble share) {
      return date(share, false);
    }

    ByChance ceiling(OptionalDouble share) {
      return date(share, true);
    }

    private ByChance date(OptionalDouble share, boolean up) {
      if (share.isEmpty()) {
        return new ByChance(Basis.NONE_BY_THAT_CHANCE, Optional.empty());
      }
      if (!position.reaches(sortedDay.length, share.getAsDouble())) {
        return new ByChance(Basis.TOO_FEW_WINTERS, Optional.empty());
      }
      double day = position.quantile(sortedDay, share.getAsDouble());
      int whole = (int) (up ? Math.ceil(day) : Math.floor(day));
      return new ByChance(Basis.ON_FILE, Optional.of(MonthDay.from(leapSeason.day(whole))));
    }
  }
}

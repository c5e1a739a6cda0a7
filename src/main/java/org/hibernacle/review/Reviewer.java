package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.climate.WinterSummaries;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.KnownWinter;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.planning.Covers;
import org.hibernacle.planning.OneWinter;
import org.hibernacle.review.PlantReviewer.Reviewed;

/** Lives every plant through the season that was, and says what is to be learnt. */
public final class Reviewer {
  private final ReviewQuestion question;
  private final Season season;
  private final WinterSelection selection;
  private final OneWinter one;

  private Reviewer(ReviewQuestion asked, WinterSelection selection) {
    this.season = asked.log().season();
    this.selection = selection;
    double latitudeDeg = asked.inventory().settings().latitudeDeg();
    Map<String, HourlyAir> loggers = new HashMap<>();
    asked.loggers().forEach((place, s) -> loggers.put(place, new HourlyAir(s, latitudeDeg)));
    HourlyAir air = new HourlyAir(selection.series(), latitudeDeg);
    Winter winter = Winter.of(season, air, asked.inventory().settings().siteColderByK());
    Inventory laid =
        Covers.laid(asked.inventory(), List.of(winter), season, wrappedIn(asked.log()));
    this.question = new ReviewQuestion(laid, asked.log(), asked.actual(), asked.loggers());
    one = new OneWinter(laid, winter, loggers);
  }

  /** Names of the places in which pots were wrapped. */
  private static Set<String> wrappedIn(SeasonLog log) {
    Stream<String> moved = log.moves().stream().flatMap(m -> Stream.of(m.from(), m.to()));
    Stream<String> stood = log.entries().stream().flatMap(e -> e.stoodIn().stream());
    return Stream.concat(moved, stood)
        .filter(name -> name.endsWith(Place.WRAPPED))
        .map(name -> name.substring(0, name.length() - Place.WRAPPED.length()))
        .collect(Collectors.toSet());
  }

  /**
   * Reviews a season.
   *
   * @return empty if the season's cold months are not on file
   */
  public static Optional<SeasonReview> review(ReviewQuestion question) {
    boolean southern = question.inventory().settings().southern();
    WinterSelection selection = WinterSelection.of(question.actual(), southern);
    boolean onFile =
        selection.winters().stream().anyMatch(w -> w.season().equals(question.log().season()));
    return onFile ? Optional.of(new Reviewer(question, selection).review()) : Optional.empty();
  }

  private SeasonReview review() {
    Inventory inventory = question.inventory();
    PlantReviewer reviewer = new PlantReviewer(question, one);
    List<Reviewed> reviewed = inventory.plants().parallelStream().map(reviewer::review).toList();
    List<PlantReview> plants = reviewed.stream().map(Reviewed::review).toList();
    WinterCompared winter = winter();
    List<PlaceReview> places = places(plants);
    List<Correction> corrections = new ArrayList<>();
    corrections.addAll(Corrections.rootLimits(plants, DoseResponses.points(plants, season)));
    corrections.addAll(Corrections.places(places));
    reviewed.forEach(
        r ->
            Corrections.laterMove(r.review(), r.homeDangerFrom(), winter, inventory.settings())
                .ifPresent(corrections::add));
    return new SeasonReview(
        season,
        inventory,
        winter,
        plants,
        places,
        Punctualities.of(plants),
        Survivals.of(plants, season),
        DoseResponses.of(plants, season),
        corrections,
        ReviewNotes.of(question, selection, one, reviewed));
  }

  private WinterCompared winter() {
    double latitudeDeg = question.inventory().settings().latitudeDeg();
    WinterSummary actual =
        WinterSummaries.of(selection.series(), latitudeDeg).stream()
            .filter(s -> s.season().equals(season))
            .findFirst()
            .orElseThrow();
    List<KnownWinter> known =
        question.log().winters().stream()
            .filter(w -> !w.season().equals(season))
            .sorted(Comparator.comparingDouble(KnownWinter::coldestNightC))
            .toList();
    int colder =
        (int) known.stream().filter(w -> w.coldestNightC() <= actual.coldestNightC()).count();
    return new WinterCompared(actual, known, colder + 1);
  }

  private List<PlaceReview> places(List<PlantReview> plants) {
    List<PlaceReview> reviews = new ArrayList<>();
    List<Place> places = question.inventory().places();
    LocalDate midwinter = season.midwinter();
    for (int p = 0; p < places.size(); p++) {
      double[] airC = one.simulator().climate(p).airC();
      int coldest = 0;
      for (int hour = 1; hour < airC.length; hour++) {
        coldest = airC[hour] < airC[coldest] ? hour : coldest;
      }
      String name = places.get(p).name();
      List<PlantReview> there =
          plants.stream()
              .filter(r -> r.outcome() != Outcome.GONE && r.winterPlace(midwinter).equals(name))
              .toList();
      reviews.add(
          new PlaceReview(
              places.get(p),
              airC[coldest],
              one.winter().first().plusDays(coldest / 24),
              there.size(),
              (int) there.stream().filter(r -> r.outcome().harmed()).count(),
              one.simulator().modelError(p)));
    }
    return reviews;
  }
}

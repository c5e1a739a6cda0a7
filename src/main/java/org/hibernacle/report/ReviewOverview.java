package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hibernacle.model.Outcome;
import org.hibernacle.review.Cause;
import org.hibernacle.review.Correction;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.Prevention;
import org.hibernacle.review.Proportion;
import org.hibernacle.review.Survival;
import org.hibernacle.review.WinterCompared;

/** The review in a dozen lines, failures of the plan first. */
final class ReviewOverview {
  private static final int NAMES_IN_A_LINE = 12;

  private final ReviewMaterial m;
  private final List<SeasonReport.Fact> facts = new ArrayList<>();

  private ReviewOverview(ReviewMaterial material) {
    this.m = material;
  }

  static List<SeasonReport.Fact> write(ReviewMaterial m) {
    ReviewOverview overview = new ReviewOverview(m);
    overview.planFailures();
    overview.losses();
    overview.causes();
    overview.winter();
    overview.survival();
    overview.corrections();
    overview.untold();
    return overview.facts;
  }

  /**
   * What the next inventory's first sheet says.
   *
   * @param asked how many proposals its sheets hold
   */
  static List<SeasonReport.Fact> ofInventory(ReviewMaterial m, int asked) {
    ReviewOverview overview = new ReviewOverview(m);
    overview.fact("next-plan", StyleRole.HEADING, "next-plan");
    overview.fact(
        "next-asked", asked > 0 ? StyleRole.CAUTION : StyleRole.PLAIN, "next-asked", asked);
    List<PlantReview> left =
        m.review().plants().stream()
            .filter(p -> p.outcome() == Outcome.DEAD || p.outcome() == Outcome.GONE)
            .toList();
    overview.named("next-left", StyleRole.PLAIN, left);
    overview.fact("next-history", StyleRole.PLAIN, "next-history");
    return overview.facts;
  }

  private void planFailures() {
    List<PlantReview> failed = m.review().planFailures().toList();
    long harmed = failed.stream().filter(p -> p.outcome().harmed()).count();
    if (failed.isEmpty()) {
      fact("plan-failed.none", StyleRole.PLAIN, "plan-failed.none");
    } else {
      fact("plan-failed", StyleRole.DANGER, "plan-failed", pots(failed), harmed, names(failed));
    }
  }

  private void losses() {
    List<PlantReview> dead = of(Outcome.DEAD);
    named("dead", dead.isEmpty() ? StyleRole.PLAIN : StyleRole.DANGER, dead);
    List<PlantReview> hurt = new ArrayList<>(of(Outcome.BRANCHES));
    hurt.addAll(of(Outcome.TIPS));
    named("hurt", hurt.isEmpty() ? StyleRole.PLAIN : StyleRole.CAUTION, hurt);
    List<PlantReview> gone = of(Outcome.GONE);
    if (!gone.isEmpty()) {
      named("gone", StyleRole.PLAIN, gone);
    }
    m.review()
        .valueLost()
        .ifPresent(
            value -> fact("value-lost", StyleRole.PLAIN, "plain", m.display().number(value, 0)));
  }

  private List<PlantReview> of(Outcome outcome) {
    return m.review().plants().stream().filter(p -> p.outcome() == outcome).toList();
  }

  private void causes() {
    List<PlantReview> losses = m.losses();
    if (losses.isEmpty()) {
      return;
    }
    Map<Cause, Integer> counts = new EnumMap<>(Cause.class);
    losses.forEach(p -> p.likeliest().ifPresent(c -> counts.merge(c.cause(), 1, Integer::sum)));
    String causes =
        counts.entrySet().stream()
            .sorted(
                Map.Entry.<Cause, Integer>comparingByValue()
                    .reversed()
                    .thenComparing(Map.Entry.comparingByKey()))
            .map(e -> m.words().text("overview.text.cause", m.cause(e.getKey()), e.getValue()))
            .collect(m.words().listing());
    fact("causes", StyleRole.PLAIN, "plain", causes);
    List<PlantReview> prevented =
        losses.stream()
            .filter(
                p -> p.prevention().filter(w -> w == Prevention.WOULD_HAVE_PREVENTED).isPresent())
            .toList();
    named("prevented", StyleRole.PLAIN, prevented);
  }

  private void winter() {
    WinterCompared winter = m.review().winter();
    String key =
        winter.known().isEmpty()
            ? "winter-alone"
            : winter.colderThanAny() ? "winter-record" : "winter-rank";
    fact(
        "winter-was",
        winter.colderThanAny() ? StyleRole.CAUTION : StyleRole.PLAIN,
        key,
        m.measures().temperature(winter.winter().coldestNightC()),
        m.display().pastDay(winter.winter().coldestNight()),
        winter.rank(),
        winter.known().size() + 1);
  }

  private void survival() {
    m.review().survival().stream()
        .filter(s -> s.by() == Survival.By.ALL)
        .findFirst()
        .ifPresent(
            s -> {
              Proportion p = s.survived();
              fact(
                  "survived",
                  StyleRole.PLAIN,
                  "survived",
                  p.successes(),
                  p.trials(),
                  m.percent(p.low()),
                  m.percent(p.high()),
                  s.undamaged().successes());
            });
  }

  private void corrections() {
    List<Correction> all = m.review().corrections();
    long limits = all.stream().filter(Correction.RootLimit.class::isInstance).count();
    long places = all.stream().filter(Correction.PlaceWarmth.class::isInstance).count();
    fact(
        "corrections",
        StyleRole.PLAIN,
        all.isEmpty() ? "none" : "corrections",
        limits,
        places,
        all.size() - limits - places);
  }

  private void untold() {
    long untold = m.review().plants().stream().filter(PlantReview::outcomeAssumed).count();
    if (untold > 0) {
      fact("untold", StyleRole.CAUTION, "untold", untold, m.review().plants().size());
    }
  }

  private void named(String label, StyleRole role, List<PlantReview> plants) {
    if (plants.isEmpty()) {
      fact(label, StyleRole.PLAIN, "none");
    } else {
      fact(label, role, "plants-named", pots(plants), names(plants));
    }
  }

  private String names(List<PlantReview> plants) {
    List<String> names =
        plants.stream()
            .sorted(Comparator.comparing(p -> p.plant().id()))
            .map(ReviewMaterial::named)
            .toList();
    return Material.list(m.words(), names, NAMES_IN_A_LINE);
  }

  private static int pots(List<PlantReview> plants) {
    return plants.stream().mapToInt(p -> p.plant().count()).sum();
  }

  private void fact(String label, StyleRole role, String pattern, Object... arguments) {
    facts.add(
        new SeasonReport.Fact(
            m.words().text("overview." + label),
            m.words().text("overview.text." + pattern, arguments),
            role));
  }
}

package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hibernacle.review.Cause;
import org.hibernacle.review.Chill;
import org.hibernacle.review.Cold;
import org.hibernacle.review.Exposure;
import org.hibernacle.review.FrozenSpell;
import org.hibernacle.review.MoveCompared;
import org.hibernacle.review.NewGrowth;
import org.hibernacle.review.PlanVerdict;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.ScoredCause;
import org.hibernacle.review.StoreWarmth;

/** What one plant lived through, why it was harmed, and what the plan would have done. */
final class LossStory {
  private final ReviewMaterial m;
  private final PlantReview p;
  private final List<String> sentences = new ArrayList<>();

  LossStory(ReviewMaterial material, PlantReview plant) {
    this.m = material;
    this.p = plant;
  }

  String tell() {
    planFailed();
    p.likeliest().ifPresent(this::likeliest);
    p.moves().stream().filter(MoveCompared::harmBetween).forEach(this::move);
    prevention();
    return m.words().sentences(sentences);
  }

  /** Said first: what was asked of the keeper was not enough. */
  private void planFailed() {
    if (p.verdict() != PlanVerdict.FAILED) {
      return;
    }
    Optional<String> broken =
        p.asPlanned().broken().stream().findFirst().map(v -> new Clause(m, p.plant()).of(v));
    sentences.add(
        broken.isPresent()
            ? m.words().text("loss.plan-failed", broken.get())
            : m.words().text("loss.plan-failed.plain"));
  }

  private void likeliest(ScoredCause cause) {
    String told = m.words().text("loss.cause", m.cause(cause.cause()), numbers(cause));
    boolean clear = cause.isClear() || cause.cause() == Cause.NOT_TEMPERATURE;
    sentences.add(m.words().text(clear ? "loss.likely" : "loss.perhaps", told));
    if (!cause.isClear() && p.causes().size() > 1) {
      ScoredCause next = p.causes().get(1);
      String other = m.words().text("loss.cause", m.cause(next.cause()), numbers(next));
      sentences.add(m.words().text("loss.or", other));
    }
  }

  private String numbers(ScoredCause cause) {
    Exposure lived = p.lived();
    Optional<String> numbers =
        switch (cause.cause()) {
          case FROZEN_ROOTS ->
              lived.hardRoots().or(() -> Optional.of(lived.roots())).map(c -> cold("roots", c));
          case CAUGHT_UNHARDENED -> lived.unhardened().map(this::unhardened);
          case FROZEN_SHOOTS -> lived.hardShoots().or(lived::shoots).map(c -> cold("shoots", c));
          case FROST_ON_WOKEN_GROWTH -> lived.growth().map(this::growth);
          case DRIED_WHILE_FROZEN -> lived.frozen().map(this::frozen);
          case WOKE_IN_STORE -> lived.store().map(this::store);
          case CHILLED -> lived.chill().map(this::chill);
          case CUT_ROOTS_FROZEN ->
              lived.cutRootsFrozenOn().map(d -> m.words().text("loss.cut-roots", past(d)));
          case NOT_TEMPERATURE -> Optional.of(cold("closest", lived.roots()));
        };
    return numbers.orElseGet(() -> cold("closest", lived.roots()));
  }

  private String cold(String key, Cold cold) {
    return m.words()
        .text(
            "loss." + key,
            m.words().place(cold.place()),
            past(cold.day()),
            m.measures().temperature(cold.foundC()),
            beside(cold.foundC(), cold.limitC()),
            m.measures().temperature(cold.limitC()));
  }

  private String unhardened(Cold cold) {
    return m.words()
        .text(
            "loss.unhardened",
            m.words().place(cold.place()),
            past(cold.day()),
            m.measures().temperature(cold.foundC()),
            beside(cold.foundC(), cold.limitC()),
            m.measures().temperature(cold.limitC()),
            m.measures().temperature(cold.hardestC()));
  }

  /** {@code 0.6 K below}, from the digits that are printed. */
  private String beside(double foundC, double limitC) {
    double apart = m.measures().shown(foundC) - m.measures().shown(limitC);
    String number = m.display().number(Math.abs(apart), 1) + " " + m.measures().degreesApart();
    if (Math.abs(apart) < 0.05) {
      return m.words().text("loss.at");
    }
    return m.words().text(apart < 0 ? "loss.below" : "loss.above", number);
  }

  private String growth(NewGrowth growth) {
    return m.words()
        .text(
            "loss.growth",
            past(growth.woke()),
            m.words().place(growth.place()),
            past(growth.day()),
            m.measures().temperature(growth.foundC()),
            beside(growth.foundC(), growth.limitC()),
            m.measures().temperature(growth.limitC()));
  }

  private String frozen(FrozenSpell spell) {
    return m.words()
        .text(
            "loss.frozen",
            m.words().place(spell.place()),
            spell.days(),
            past(spell.from()),
            m.display().number(spell.dryingIndex(), 1));
  }

  private String store(StoreWarmth store) {
    String warm =
        m.words()
            .text(
                "loss.store",
                m.words().place(store.place()),
                store.warmNights(),
                m.measures().threshold(5),
                m.measures().temperature(store.warmestWeekC()),
                past(store.warmestOn()));
    return store.woke().isEmpty()
        ? warm
        : m.words()
            .text("loss.store.woke", warm, past(store.woke().get()), store.darkNightsAwake());
  }

  private String chill(Chill chill) {
    return m.words()
        .text(
            "loss.chill",
            m.words().place(chill.place()),
            past(chill.day()),
            m.measures().temperature(chill.lowestC()),
            m.measures().temperature(chill.lowestStoreC()),
            m.measures().difference(chill.doseK()));
  }

  private void move(MoveCompared move) {
    String kind = m.words().of("move", move.kind());
    String planned = move.planned().map(this::past).orElse("");
    OptionalInt late = move.daysLate();
    if (move.real().isEmpty()) {
      sentences.add(m.words().text("loss.not-moved", kind, planned));
    } else if (late.isPresent()) {
      String key = late.getAsInt() > 0 ? "loss.moved-late" : "loss.moved-early";
      sentences.add(m.words().text(key, kind, Math.abs(late.getAsInt()), planned));
    }
  }

  private void prevention() {
    p.prevention().ifPresent(w -> sentences.add(m.words().of("loss.prevention", w)));
    Optional<Cause> cause = p.likeliest().map(ScoredCause::cause);
    boolean otherwise = !p.realStays().equals(p.plannedStays());
    if (cause.isEmpty() || !otherwise) {
      return;
    }
    Optional<Cold> planned =
        switch (cause.get()) {
          case FROZEN_ROOTS -> p.asPlanned().hardRoots();
          case CAUGHT_UNHARDENED -> p.asPlanned().unhardened();
          case FROZEN_SHOOTS -> p.asPlanned().hardShoots();
          default -> Optional.empty();
        };
    String key = cause.get() == Cause.FROZEN_SHOOTS ? "as-planned-shoots" : "as-planned";
    planned.ifPresent(cold -> sentences.add(cold(key, cold)));
  }

  private String past(LocalDate day) {
    return m.display().pastDay(day);
  }
}

package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Stay;

/** Writes what paper alone shows: the strips here, the places by {@link PlacePages}. */
final class PaperPages {
  private final Material m;

  private PaperPages(Material material) {
    this.m = material;
  }

  static Paper write(Material m) {
    return new Paper(
        m.plan().season().start(), new PaperPages(m).strips(), new PlacePages(m).write());
  }

  private Optional<Strips> strips() {
    if (m.plan().plants().isEmpty()) {
      return Optional.empty();
    }
    LocalDate from = from();
    LocalDate to = toExclusive();
    List<Strips.Sample> samples = new ArrayList<>();
    for (Strips.Stand stand : Strips.Stand.values()) {
      samples.add(new Strips.Sample(stand, role(stand), m.words().of("stand", stand)));
    }
    return Optional.of(
        new Strips(
            m.words().text("strips.title"),
            List.of(m.words().text("strips.intro")),
            from,
            to,
            samples,
            m.words().text("strips.own-days"),
            m.byName().stream().map(p -> strip(p, from, to)).toList()));
  }

  /** All days with moves, and the winters' own ones that lie in the season. */
  private NavigableSet<LocalDate> days() {
    NavigableSet<LocalDate> days = new TreeSet<>();
    for (PlantPlan p : m.plan().plants()) {
      for (Move move : p.moves()) {
        days.add(move.date());
        move.earliest().filter(m.plan().season()::contains).ifPresent(days::add);
        move.latest().filter(m.plan().season()::contains).ifPresent(days::add);
      }
    }
    return days;
  }

  /** The winter's core months, and before them as far as there are days to show. */
  private LocalDate from() {
    LocalDate core = m.plan().season().coreStart();
    NavigableSet<LocalDate> days = days();
    return days.isEmpty() || core.isBefore(days.first()) ? core : days.first().withDayOfMonth(1);
  }

  private LocalDate toExclusive() {
    LocalDate core = m.plan().season().coreEndExclusive();
    NavigableSet<LocalDate> days = days();
    return days.isEmpty() || days.last().isBefore(core)
        ? core
        : days.last().withDayOfMonth(1).plusMonths(1);
  }

  private Strips.Strip strip(PlantPlan p, LocalDate from, LocalDate to) {
    List<Strips.Bar> bars = new ArrayList<>();
    for (Stay stay : p.stays()) {
      LocalDate first = stay.fromInclusive().isBefore(from) ? from : stay.fromInclusive();
      LocalDate end = stay.toExclusive().isAfter(to) ? to : stay.toExclusive();
      if (first.isBefore(end)) {
        Strips.Stand stand = stand(stay.place());
        String word = m.words().of("stand.short", stand);
        List<String> words = List.of(m.words().place(stay.place().name()), word);
        bars.add(new Strips.Bar(first, end, stand, role(stand), words));
      }
    }
    boolean lost = p.verdict() == PlantPlan.Verdict.UNPROTECTED;
    String name = lost ? m.words().text("strip.lost", p.plant().name()) : p.plant().name();
    return new Strips.Strip(
        p.plant().id(),
        name,
        lost ? StyleRole.DANGER : StyleRole.PLAIN,
        bars,
        p.moves().stream().map(this::mark).toList(),
        words(p));
  }

  private Strips.Mark mark(Move move) {
    return new Strips.Mark(
        move.date(),
        MoveTable.role(move.kind()),
        move.earliest()
            .map(
                early ->
                    new Strips.OwnDays(
                        early, move.typical().orElseThrow(), move.latest().orElseThrow())));
  }

  private String words(PlantPlan p) {
    if (p.moves().isEmpty()) {
      return m.words().text("strip.stays", p.plant().home());
    }
    return String.join("; ", p.moves().stream().map(this::words).toList());
  }

  private String words(Move move) {
    String told =
        m.words()
            .text(
                move.kind().carries() ? "strip.move" : "strip.wrap",
                m.words().of("mark", move.kind()),
                m.display().day(move.date()),
                m.words().place(move.to().name()));
    return move.earliest()
        .map(
            early ->
                m.words()
                    .text(
                        "strip.own",
                        told,
                        m.display().dayAndMonth(early),
                        m.display().dayAndMonth(move.typical().orElseThrow()),
                        m.display().dayAndMonth(move.latest().orElseThrow())))
        .orElse(told);
  }

  private static Strips.Stand stand(Place place) {
    if (place.roofed()) {
      return Strips.Stand.ROOF;
    }
    return place.kind() == PlaceKind.GROUND ? Strips.Stand.GROUND : Strips.Stand.BENCH;
  }

  private static StyleRole role(Strips.Stand stand) {
    return switch (stand) {
      case BENCH -> StyleRole.STAYS;
      case GROUND -> StyleRole.MOVE_DOWN;
      case ROOF -> StyleRole.MOVE_IN;
    };
  }
}

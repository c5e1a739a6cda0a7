package org.hibernacle.input;

import static org.hibernacle.input.Column.ACCEPT_LIMIT;
import static org.hibernacle.input.Column.CHILL_NEED;
import static org.hibernacle.input.Column.CHILL_PORTIONS;
import static org.hibernacle.input.Column.COMMON_NAMES;
import static org.hibernacle.input.Column.DRYING_RISK;
import static org.hibernacle.input.Column.ESTIMATE_BASIS;
import static org.hibernacle.input.Column.EVERGREEN;
import static org.hibernacle.input.Column.GROUP;
import static org.hibernacle.input.Column.KEEP_DRY;
import static org.hibernacle.input.Column.LIGHT_IN_STORE;
import static org.hibernacle.input.Column.MAX_STORE;
import static org.hibernacle.input.Column.MIN_STORE;
import static org.hibernacle.input.Column.NEW_GROWTH_LIMIT;
import static org.hibernacle.input.Column.PROPOSED_LIMIT;
import static org.hibernacle.input.Column.ROOT_LIMIT;
import static org.hibernacle.input.Column.SOURCES;
import static org.hibernacle.input.Column.SPECIES_NOTES;
import static org.hibernacle.input.Column.SYNONYMS;
import static org.hibernacle.input.Column.TOXIC;
import static org.hibernacle.input.Column.TOXIC_SOURCE;
import static org.hibernacle.input.Column.UNHARDENED_LIMIT;
import static org.hibernacle.input.Column.ZONE;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Group;
import org.hibernacle.model.HardinessZone;
import org.hibernacle.model.Light;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.ChillNeed;
import org.hibernacle.model.Species.DryingRisk;
import org.hibernacle.model.Species.RootKill;
import org.hibernacle.model.Species.RootKill.Relation;
import org.hibernacle.model.Species.Toxicity;

/** Reads one row of the species table, the built-in one's or the keeper's. */
final class SpeciesRow {
  /** Basis and source of a figure that the keeper wrote. */
  static final String OWN = "own";

  private final Row row;
  private final Optional<Species> base;

  /**
   * Prepares to read.
   *
   * @param row with the cells
   * @param base row of the table that stands in for blank cells; empty for a new taxon
   */
  SpeciesRow(Row row, Optional<Species> base) {
    this.row = row;
    this.base = base;
  }

  /** The species, or empty with at least one error. */
  Optional<Species> read(String taxon, boolean builtIn) {
    Optional<Group> group = needed(GROUP, row.choice(GROUP, Choice.GROUP), Species::group);
    Optional<Foliage> foliage =
        needed(EVERGREEN, row.choice(EVERGREEN, Choice.EVERGREEN), Species::foliage);
    Optional<HardinessZone> zone =
        needed(ZONE, row.parsed(ZONE, SpeciesRow::zone, "IN-122.zone"), Species::zone);
    OptionalDouble acceptedC = Proposal.accepted(row, PROPOSED_LIMIT, ACCEPT_LIMIT, -60, 40);
    Optional<Double> rootLimitC =
        acceptedC.isPresent()
            ? Optional.of(acceptedC.getAsDouble())
            : needed(ROOT_LIMIT, Species::rootLimitC);
    Optional<Double> unhardenedC = needed(UNHARDENED_LIMIT, Species::unhardenedLimitC);
    Optional<Double> newGrowthC = needed(NEW_GROWTH_LIMIT, Species::newGrowthLimitC);
    Optional<Double> minStoreC = needed(MIN_STORE, Species::minStoreC);
    Optional<Double> maxStoreC = needed(MAX_STORE, Species::maxStoreC);
    Optional<ChillNeed> chill =
        needed(CHILL_NEED, row.choice(CHILL_NEED, Choice.CHILL_NEED), Species::chillNeed);
    Optional<Light> light =
        needed(
            LIGHT_IN_STORE,
            row.choice(LIGHT_IN_STORE, Choice.LIGHT_IN_STORE),
            Species::lightInStore);
    Optional<RootKill> rootKill = rootKill();
    Portions portions = portions();
    boolean incomplete =
        Stream.of(
                group,
                foliage,
                zone,
                rootLimitC,
                unhardenedC,
                newGrowthC,
                minStoreC,
                maxStoreC,
                chill,
                light)
            .anyMatch(Optional::isEmpty);
    if (incomplete
        || crossed("IN-203.limit", ROOT_LIMIT, rootLimitC.get() > unhardenedC.get())
        || crossed("IN-203.store", MIN_STORE, minStoreC.get() >= maxStoreC.get())) {
      return Optional.empty();
    }
    return Optional.of(
        new Species(
            taxon,
            list(SYNONYMS, Species::synonyms),
            list(COMMON_NAMES, Species::commonNames),
            group.get(),
            foliage.get(),
            zone.get(),
            rootKill,
            rootLimitC.get(),
            acceptedC.isPresent() ? OWN : basis(),
            unhardenedC.get(),
            newGrowthC.get(),
            chill.get(),
            portions.low,
            portions.high,
            minStoreC.get(),
            maxStoreC.get(),
            light.get(),
            or(row.choice(KEEP_DRY, Choice.YES_NO), Species::keepDry, false),
            or(row.choice(DRYING_RISK, Choice.DRYING_RISK), Species::dryingRisk, DryingRisk.MEDIUM),
            or(row.choice(TOXIC, Choice.TOXIC), Species::toxic, Toxicity.UNKNOWN),
            text(TOXIC_SOURCE, Species::toxicSource),
            text(SPECIES_NOTES, Species::notes),
            sources(builtIn),
            builtIn));
  }

  private static Optional<HardinessZone> zone(String text) {
    try {
      return Optional.of(HardinessZone.parse(text));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private boolean crossed(String key, Column column, boolean crossed) {
    if (crossed) {
      Column blamed = row.isBlank(column) ? Column.TAXON : column;
      row.error(key, blamed, column.title());
    }
    return crossed;
  }

  private Optional<Double> needed(Column column, Function<Species, Double> ofBase) {
    OptionalDouble number = row.number(column, -60, 40);
    Optional<Double> read =
        number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    return needed(column, read, ofBase);
  }

  private <T> Optional<T> needed(Column column, Optional<T> read, Function<Species, T> ofBase) {
    if (!row.isBlank(column)) {
      return read;
    }
    if (base.isEmpty()) {
      row.missing("IN-129.value", column);
    }
    return base.map(ofBase);
  }

  private <T> T or(Optional<T> read, Function<Species, T> ofBase, T otherwise) {
    return read.or(() -> base.map(ofBase)).orElse(otherwise);
  }

  private String text(Column column, Function<Species, String> ofBase) {
    return row.isBlank(column) ? base.map(ofBase).orElse("") : row.text(column);
  }

  private List<String> list(Column column, Function<Species, List<String>> ofBase) {
    return row.isBlank(column) ? base.map(ofBase).orElse(List.of()) : split(row.text(column));
  }

  private static List<String> split(String text) {
    return Arrays.stream(text.split(";", -1)).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  /** A keeper's root limit is the keeper's, whatever the table's was based on. */
  private String basis() {
    if (!row.isBlank(ESTIMATE_BASIS)) {
      return row.text(ESTIMATE_BASIS);
    }
    return row.isBlank(ROOT_LIMIT) ? base.map(Species::rootLimitBasis).orElse(OWN) : OWN;
  }

  private List<String> sources(boolean builtIn) {
    List<String> sources = list(SOURCES, Species::sources);
    return builtIn || sources.contains(OWN)
        ? sources
        : Stream.concat(Stream.of(OWN), sources.stream()).toList();
  }

  private Optional<RootKill> rootKill() {
    OptionalDouble killC = row.number(Column.ROOT_KILL, -60, 40);
    Optional<Relation> relation = row.choice(Column.ROOT_KILL_RELATION, Choice.ROOT_KILL_RELATION);
    Optional<String> kind = row.choice(Column.ROOT_KILL_KIND, Choice.ROOT_KILL_KIND);
    Optional<Boolean> verified = row.choice(Column.ROOT_KILL_STATUS, Choice.ROOT_KILL_STATUS);
    if (killC.isEmpty()) {
      return base.flatMap(Species::rootKill);
    }
    if (relation.isEmpty() && row.isBlank(Column.ROOT_KILL_RELATION)) {
      row.missing("IN-129.choice", Column.ROOT_KILL_RELATION, Choice.ROOT_KILL_RELATION.words());
    }
    return relation.map(
        r ->
            new RootKill(
                killC.getAsDouble(),
                kind.orElse(""),
                r,
                row.text(Column.ROOT_KILL_SOURCE),
                verified.orElse(false)));
  }

  private record Portions(OptionalDouble low, OptionalDouble high) {}

  private Portions portions() {
    Portions ofBase =
        new Portions(
            base.map(Species::chillPortionsLow).orElse(OptionalDouble.empty()),
            base.map(Species::chillPortionsHigh).orElse(OptionalDouble.empty()));
    return row.parsed(CHILL_PORTIONS, SpeciesRow::portions, "IN-120.portions").orElse(ofBase);
  }

  private static Optional<Portions> portions(String text) {
    String[] ends = text.replace('–', '-').split("-", -1);
    try {
      double low = Double.parseDouble(ends[0].strip());
      double high = Double.parseDouble(ends[ends.length - 1].strip());
      boolean sound = ends.length <= 2 && low >= 0 && low <= high && high <= 200;
      return sound
          ? Optional.of(new Portions(OptionalDouble.of(low), OptionalDouble.of(high)))
          : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}

package org.hibernacle.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of the species table: what a taxon stands in winter, how sure that is, and from where.
 *
 * @param taxon scientific name, unique in the table
 * @param synonyms other scientific names
 * @param commonNames names of everyday use
 * @param group the grower's group
 * @param foliage leaves carried in winter
 * @param zone hardiness zone of the top, roots in the ground
 * @param rootKill published evidence on root killing; never drives a plan
 * @param rootLimitC root-ball temperature at which damage is likely to begin, midwinter, °C
 * @param rootLimitBasis how the limit was come by: {@code published}, {@code common-practice},
 *     {@code rule:NAME}, or {@code own} for a keeper's figure
 * @param unhardenedLimitC the same limit before hardening or after it is lost, °C
 * @param newGrowthLimitC air temperature that fresh growth stands, °C
 * @param chillNeed how much cold ends rest
 * @param chillPortionsLow fewest published chill portions; empty where nothing is published
 * @param chillPortionsHigh most published chill portions; empty where nothing is published
 * @param minStoreC lowest air of a store, °C
 * @param maxStoreC highest air of a store while the plant rests, °C
 * @param lightInStore least light wanted in the store; {@link Light#DARK} only while leafless
 * @param keepDry whether the ball is kept dry while cold
 * @param dryingRisk how fast the plant dries out while its ball is frozen
 * @param toxic whether it is poisonous to people or animals
 * @param toxicSource where that was read; empty if nowhere
 * @param notes a remark for the keeper
 * @param sources keys of the source list
 * @param builtIn false for a row from the keeper's own Species sheet
 */
public record Species(
    String taxon,
    List<String> synonyms,
    List<String> commonNames,
    Group group,
    Foliage foliage,
    HardinessZone zone,
    Optional<RootKill> rootKill,
    double rootLimitC,
    String rootLimitBasis,
    double unhardenedLimitC,
    double newGrowthLimitC,
    ChillNeed chillNeed,
    OptionalDouble chillPortionsLow,
    OptionalDouble chillPortionsHigh,
    double minStoreC,
    double maxStoreC,
    Light lightInStore,
    boolean keepDry,
    DryingRisk dryingRisk,
    Toxicity toxic,
    String toxicSource,
    String notes,
    List<String> sources,
    boolean builtIn) {

  /** How much cold ends rest. */
  public enum ChillNeed {
    NONE,
    LOW,
    MEDIUM,
    HIGH
  }

  /** How fast a plant dries out while it cannot take up water. */
  public enum DryingRisk {
    LOW,
    MEDIUM,
    HIGH
  }

  /** Poisonous or not; {@code UNKNOWN} means not looked up and is never shown as safe. */
  public enum Toxicity {
    YES,
    NO,
    UNKNOWN
  }

  /**
   * A published figure on the death of roots.
   *
   * @param killC root temperature, °C
   * @param kind which roots: {@code young}, {@code mature}, {@code whole}, or empty
   * @param relation what happened there; {@code SURVIVES} is a bound, not a limit
   * @param source key of the source list
   * @param verified whether the figure was read in a text; false means recalled from memory
   */
  public record RootKill(
      double killC, String kind, Relation relation, String source, boolean verified) {
    /** What was seen at the figure. */
    public enum Relation {
      KILLS,
      /** Half of the roots, or of the plants, died. */
      LT50,
      SURVIVES
    }
  }

  public Species {
    synonyms = List.copyOf(synonyms);
    commonNames = List.copyOf(commonNames);
    sources = List.copyOf(sources);
    if (rootLimitC > unhardenedLimitC) {
      throw new IllegalArgumentException(
          taxon + ": root limit " + rootLimitC + " is above its unhardened " + unhardenedLimitC);
    }
    if (minStoreC >= maxStoreC) {
      throw new IllegalArgumentException(
          taxon + ": lowest storage " + minStoreC + " is not below the highest " + maxStoreC);
    }
  }

  /**
   * Whether the midwinter root limit is anything weaker than a published figure that was read in a
   * text: a rule, a habit of growers, a figure recalled from memory, or a mere bound.
   */
  public boolean rootLimitIsEstimate() {
    boolean readAndNoBound =
        rootKill
            .filter(kill -> kill.verified() && kill.relation() != RootKill.Relation.SURVIVES)
            .isPresent();
    return !rootLimitBasis.equals("published") || !readAndNoBound;
  }
}

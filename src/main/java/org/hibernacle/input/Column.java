package org.hibernacle.input;

import static org.hibernacle.input.InventorySheet.PLACES;
import static org.hibernacle.input.InventorySheet.PLANTS;
import static org.hibernacle.input.InventorySheet.SETTINGS;
import static org.hibernacle.input.InventorySheet.SPECIES;
import static org.hibernacle.input.Quantity.AREA;
import static org.hibernacle.input.Quantity.DIFFERENCE;
import static org.hibernacle.input.Quantity.LENGTH;
import static org.hibernacle.input.Quantity.NONE;
import static org.hibernacle.input.Quantity.TEMPERATURE;
import static org.hibernacle.input.Quantity.TIME;
import static org.hibernacle.input.Quantity.VOLUME;

import java.util.List;
import java.util.stream.Stream;

/**
 * Every column (on Settings: every setting) the program knows: its name, what it measures, and
 * other spellings of its heading. Spellings are compared by {@link Words#key}, so case, spaces,
 * hyphens and underscores do not matter; a unit may follow.
 */
enum Column {
  ID(PLANTS, "Id", NONE, "plant id", "plant", "tag", "number"),
  LABEL(PLANTS, "Label", NONE, "name", "nickname"),
  PLANT_SPECIES(PLANTS, "Species", NONE, "taxon", "botanical name", "scientific name"),
  CULTIVAR(PLANTS, "Cultivar", NONE, "variety", "cv"),
  HOME(PLANTS, "Home", NONE, "home place", "summer place"),
  POT_SHAPE(PLANTS, "Pot shape", NONE, "shape"),
  LENGTH_OF_POT(PLANTS, "Length", LENGTH, "pot length", "diameter", "pot diameter"),
  WIDTH_OF_POT(PLANTS, "Width", LENGTH, "pot width"),
  DEPTH_OF_POT(PLANTS, "Depth", LENGTH, "pot depth", "pot height"),
  VOLUME_OF_POT(PLANTS, "Volume", VOLUME, "pot volume", "pot size", "litres", "liters"),
  POT_MATERIAL(PLANTS, "Pot material", NONE, "material", "pot"),
  LAST_ROOT_WORK(PLANTS, "Last root work", NONE, "last repotted", "last repotting", "repotted"),
  VIGOUR(PLANTS, "Vigour", NONE, "vigor", "strength", "health"),
  PRIORITY(PLANTS, "Priority", NONE),
  VALUE(PLANTS, "Value", NONE, "worth"),
  OWN_ROOT_LIMIT(PLANTS, "Root limit", TEMPERATURE, "own root limit"),
  STAY_IN(PLANTS, "Stay in", NONE, "winter place"),
  NOT_BEFORE(PLANTS, "Not before", NONE),
  NOT_AFTER(PLANTS, "Not after", NONE),
  COUNT(PLANTS, "Count", NONE, "how many", "quantity"),
  HEIGHT(PLANTS, "Height", LENGTH, "plant height"),
  SPREAD(PLANTS, "Spread", LENGTH, "crown spread", "crown width"),
  FROST_PROOF_POT(PLANTS, "Frost-proof pot", NONE, "frost proof", "pot frost proof"),
  PLANNED_ROOT_WORK(
      PLANTS, "Planned root work", NONE, "next root work", "planned repotting", "next repotting"),
  ROOTSTOCK(PLANTS, "Rootstock", NONE, "grafted on"),
  PLANT_NOTES(PLANTS, "Notes", NONE, "note", "remarks", "comments"),

  PLACE(PLACES, "Place", NONE, "name", "place name"),
  KIND(PLACES, "Kind", NONE, "kind of place", "type"),
  FLOOR(PLACES, "Floor", AREA, "floor area", "area", "room"),
  SUN(PLACES, "Sun", NONE, "sunshine"),
  WIND(PLACES, "Wind", NONE, "wind exposure"),
  COVER(PLACES, "Cover", NONE, "winter cover"),
  COVER_DEPTH(PLACES, "Cover depth", LENGTH, "mulch depth"),
  PLACE_LIGHT(PLACES, "Light", NONE),
  LOWEST_HELD(PLACES, "Lowest held", TEMPERATURE, "lowest", "heated to", "thermostat"),
  HIGHEST_HELD(PLACES, "Highest held", TEMPERATURE, "highest", "vented at", "cooled to"),
  WARMER_BY(PLACES, "Warmer by", DIFFERENCE, "warmer at night by", "night warmth"),
  WARMTH_SO_FAR(PLACES, "Warmer by so far", DIFFERENCE),
  PROPOSED_WARMTH(PLACES, "Proposed warmer by", DIFFERENCE),
  ACCEPT_WARMTH(PLACES, "Accept", NONE),
  WARMTH_REASON(PLACES, "Reason", NONE),
  LAG(PLACES, "Lag", TIME),
  HOLDS_DOWN_TO(PLACES, "Holds down to", TEMPERATURE, "heater copes down to"),
  CLEAR_HEIGHT(PLACES, "Clear height", LENGTH, "headroom", "height"),
  VENTS(PLACES, "Vents", NONE, "vent", "can be vented"),
  PLACE_NOTES(PLACES, "Notes", NONE, "note", "remarks", "comments"),

  TAXON(SPECIES, "taxon", NONE, "scientific name", "botanical name", "species"),
  SYNONYMS(SPECIES, "synonyms", NONE, "synonym"),
  COMMON_NAMES(SPECIES, "common_names", NONE, "common name"),
  GROUP(SPECIES, "group", NONE),
  EVERGREEN(SPECIES, "evergreen", NONE, "foliage"),
  ZONE(SPECIES, "usda_zone_min", NONE, "usda zone", "zone", "hardiness zone"),
  ROOT_KILL(SPECIES, "root_kill", TEMPERATURE),
  ROOT_KILL_KIND(SPECIES, "root_kill_kind", NONE),
  ROOT_KILL_RELATION(SPECIES, "root_kill_relation", NONE),
  ROOT_KILL_SOURCE(SPECIES, "root_kill_source", NONE),
  ROOT_KILL_STATUS(SPECIES, "root_kill_status", NONE),
  ROOT_LIMIT(SPECIES, "root_limit_estimate", TEMPERATURE, "root limit"),
  LIMIT_SO_FAR(SPECIES, "Root limit so far", TEMPERATURE),
  PROPOSED_LIMIT(SPECIES, "Proposed root limit", TEMPERATURE),
  ACCEPT_LIMIT(SPECIES, "Accept", NONE),
  LIMIT_REASON(SPECIES, "Reason", NONE),
  ESTIMATE_BASIS(SPECIES, "estimate_basis", NONE, "basis"),
  UNHARDENED_LIMIT(SPECIES, "unhardened_limit", TEMPERATURE),
  NEW_GROWTH_LIMIT(SPECIES, "new_growth_limit", TEMPERATURE),
  CHILL_NEED(SPECIES, "chill_need", NONE),
  CHILL_PORTIONS(SPECIES, "chill_portions", NONE),
  MIN_STORE(SPECIES, "min_store", TEMPERATURE, "lowest store"),
  MAX_STORE(SPECIES, "max_store", TEMPERATURE, "highest store"),
  LIGHT_IN_STORE(SPECIES, "light_in_store", NONE),
  KEEP_DRY(SPECIES, "keep_dry_when_cold", NONE, "keep dry"),
  DRYING_RISK(SPECIES, "desiccation_risk", NONE, "drying risk"),
  TOXIC(SPECIES, "toxic_to_pets_or_people", NONE, "toxic", "poisonous"),
  TOXIC_SOURCE(SPECIES, "toxic_source", NONE),
  SPECIES_NOTES(SPECIES, "notes", NONE, "note", "remarks"),
  SOURCES(SPECIES, "sources", NONE, "source"),

  SITE(SETTINGS, "Site", NONE, "garden"),
  SITE_COLDER_BY(SETTINGS, "Site colder than station by", DIFFERENCE, "site colder by"),
  LATITUDE(SETTINGS, "Latitude", NONE, "lat", "latitude deg", "latitude degrees"),
  LONGITUDE(SETTINGS, "Longitude", NONE, "lon", "long", "longitude deg", "longitude degrees"),
  TIME_ZONE(SETTINGS, "Time zone", NONE, "zone"),
  UNITS(SETTINGS, "Units", NONE),
  SAFETY_MARGIN(SETTINGS, "Safety margin", DIFFERENCE, "margin"),
  ACCEPTED_RISK(
      SETTINGS, "Accepted risk", NONE, "risk", "accepted risk of 10", "accepted risk out of 10"),
  MOVING_DAYS(SETTINGS, "Moving days", NONE, "moving day"),
  AWAY(SETTINGS, "Away", NONE, "holidays", "absences"),
  EXTRA_MOVING_DAYS(SETTINGS, "Extra moving days", NONE, "extra moving day"),
  PLANTS_PER_DAY(SETTINGS, "Plants per moving day", NONE, "plants per day"),
  MINUTES_PER_DAY(SETTINGS, "Minutes per moving day", NONE, "minutes per day"),
  PAPER(SETTINGS, "Paper", NONE, "paper size"),
  FIRST_DAY_OF_WEEK(SETTINGS, "First day of week", NONE, "week starts on"),
  LANGUAGE_TAG(SETTINGS, "Language tag", NONE, "language", "locale"),
  LABEL_ROWS(SETTINGS, "Label rows", NONE),
  LABEL_COLUMNS(SETTINGS, "Label columns", NONE),
  LABEL_MARGIN_TOP(SETTINGS, "Label margin top", LENGTH),
  LABEL_MARGIN_BOTTOM(SETTINGS, "Label margin bottom", LENGTH),
  LABEL_MARGIN_LEFT(SETTINGS, "Label margin left", LENGTH),
  LABEL_MARGIN_RIGHT(SETTINGS, "Label margin right", LENGTH),
  LABEL_GAP_DOWN(SETTINGS, "Label gap down", LENGTH, "label gap between rows"),
  LABEL_GAP_ACROSS(SETTINGS, "Label gap across", LENGTH, "label gap between columns");

  private final InventorySheet sheet;
  private final String title;
  private final Quantity quantity;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list
  private final List<String> keys;

  Column(InventorySheet sheet, String title, Quantity quantity, String... otherSpellings) {
    this.sheet = sheet;
    this.title = title;
    this.quantity = quantity;
    this.keys = Stream.concat(Stream.of(title), Stream.of(otherSpellings)).map(Words::key).toList();
  }

  InventorySheet sheet() {
    return sheet;
  }

  /** The name without a unit. */
  String title() {
    return title;
  }

  Quantity quantity() {
    return quantity;
  }

  /** The heading as the blank form has it: {@code Depth cm}. */
  String heading() {
    String symbol = quantity.ours().symbol();
    return symbol.isEmpty() ? title : title + " " + symbol;
  }

  /** All spellings, as keys of {@link Words}. */
  List<String> keys() {
    return keys;
  }

  /** Whether the key, taken without a unit, is one of the spellings. */
  boolean spelled(String key) {
    return keys.contains(key);
  }
}

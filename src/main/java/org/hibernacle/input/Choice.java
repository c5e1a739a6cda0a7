package org.hibernacle.input;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Group;
import org.hibernacle.model.Light;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.Place.Wind;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant.Vigour;
import org.hibernacle.model.Settings.Paper;
import org.hibernacle.model.Settings.Units;
import org.hibernacle.model.Species.ChillNeed;
import org.hibernacle.model.Species.DryingRisk;
import org.hibernacle.model.Species.RootKill.Relation;
import org.hibernacle.model.Species.Toxicity;

/**
 * A list of words that a cell may hold, and what each means.
 *
 * @param <T> what the words stand for
 */
final class Choice<T> {
  static final Choice<Boolean> YES_NO =
      new Choice<Boolean>()
          .word("yes", true)
          .word("no", false)
          .also(true, "y", "true", "1")
          .also(false, "n", "false", "0");
  static final Choice<Shape> SHAPE =
      ofNames(Shape.values())
          .also(Shape.ROUND, "oval", "circular")
          .also(Shape.RECTANGULAR, "rectangle", "square", "tray");
  static final Choice<Material> MATERIAL =
      ofNames(Material.values())
          .also(Material.CERAMIC, "glazed", "stoneware", "porcelain")
          .also(Material.TERRACOTTA, "clay", "earthenware")
          .also(Material.WOOD, "wooden", "timber")
          .also(Material.CONCRETE, "cement", "stone")
          .also(Material.FABRIC, "cloth", "textile");
  static final Choice<Vigour> VIGOUR = ofNames(Vigour.values());
  static final Choice<PlaceKind> KIND =
      ofNames(PlaceKind.values())
          .word("frost-free room", PlaceKind.FROST_FREE_ROOM)
          .also(PlaceKind.BENCH, "stand", "shelf outdoors", "table")
          .also(PlaceKind.GROUND, "on the ground", "soil", "bed")
          .also(PlaceKind.COLD_STORE, "shed", "garage", "cellar", "basement", "unheated")
          .also(PlaceKind.GLASSHOUSE, "greenhouse")
          .also(PlaceKind.FROST_FREE_ROOM, "frost free", "conservatory")
          .also(PlaceKind.WARM_ROOM, "indoors", "house", "living room");
  static final Choice<Sun> SUN = ofNames(Sun.values()).also(Sun.PART, "half");
  static final Choice<Wind> WIND =
      ofNames(Wind.values()).also(Wind.OPEN, "windy", "exposed").also(Wind.SHELTERED, "still");
  static final Choice<Cover> COVER = ofNames(Cover.values());
  static final Choice<Light> LIGHT = ofNames(Light.values());
  static final Choice<Units> UNITS =
      new Choice<Units>()
          .word("metric", Units.METRIC)
          .word("US", Units.US)
          .also(Units.US, "US customary", "imperial");
  static final Choice<Paper> PAPER =
      new Choice<Paper>()
          .word("A4", Paper.A4)
          .word("Letter", Paper.LETTER)
          .also(Paper.LETTER, "US Letter");
  static final Choice<Group> GROUP = groups();
  static final Choice<Foliage> EVERGREEN =
      new Choice<Foliage>()
          .word("yes", Foliage.EVERGREEN)
          .word("semi", Foliage.SEMI_EVERGREEN)
          .word("no", Foliage.DECIDUOUS)
          .also(Foliage.EVERGREEN, "true", "evergreen")
          .also(Foliage.SEMI_EVERGREEN, "semi evergreen")
          .also(Foliage.DECIDUOUS, "false", "deciduous");
  static final Choice<ChillNeed> CHILL_NEED = ofNames(ChillNeed.values());
  static final Choice<DryingRisk> DRYING_RISK = ofNames(DryingRisk.values());
  static final Choice<Toxicity> TOXIC =
      ofNames(Toxicity.values()).also(Toxicity.YES, "true").also(Toxicity.NO, "false");
  static final Choice<Light> LIGHT_IN_STORE =
      new Choice<Light>()
          .word("dark-ok", Light.DARK)
          .word("low", Light.LOW)
          .word("bright", Light.BRIGHT)
          .also(Light.DARK, "dark");
  static final Choice<String> ROOT_KILL_KIND =
      new Choice<String>().word("young", "young").word("mature", "mature").word("whole", "whole");
  static final Choice<Relation> ROOT_KILL_RELATION = ofNames(Relation.values());
  static final Choice<Boolean> ROOT_KILL_STATUS =
      new Choice<Boolean>().word("verified", true).word("memory", false);
  static final Choice<DayOfWeek> WEEKDAY = weekdays();
  static final Choice<IfBlank> IF_BLANK = ofNames(IfBlank.values());
  static final Choice<Outcome> OUTCOME =
      new Choice<Outcome>()
          .word("no damage", Outcome.NO_DAMAGE)
          .word("tips died back", Outcome.TIPS)
          .word("branches lost", Outcome.BRANCHES)
          .word("dead", Outcome.DEAD)
          .word("gone", Outcome.GONE)
          .also(Outcome.NO_DAMAGE, "none", "fine", "ok")
          .also(Outcome.TIPS, "tips")
          .also(Outcome.BRANCHES, "branches")
          .also(Outcome.DEAD, "died", "lost");

  /** Kinds of moves, by the names of their constants. */
  static final Choice<String> MOVE =
      new Choice<String>()
          .word("move-down", "MOVE_DOWN")
          .word("move-in", "MOVE_IN")
          .word("step-out", "STEP_OUT")
          .word("return-to-bench", "RETURN")
          .word("wrap up", "WRAP")
          .word("unwrap", "UNWRAP");

  private final Map<String, T> byKey = new LinkedHashMap<>();
  private final Map<T, String> words = new LinkedHashMap<>();

  private Choice() {}

  private static <E extends Enum<E>> Choice<E> ofNames(E[] values) {
    Choice<E> choice = new Choice<>();
    Arrays.stream(values).forEach(v -> choice.word(lower(v.name()), v));
    return choice;
  }

  private static Choice<Group> groups() {
    Choice<Group> choice = new Choice<>();
    Arrays.stream(Group.values()).forEach(g -> choice.word(lower(g.name()).replace(' ', '-'), g));
    return choice;
  }

  private static Choice<DayOfWeek> weekdays() {
    Choice<DayOfWeek> choice = new Choice<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name().charAt(0) + lower(day.name()).substring(1);
      choice.word(name, day).also(day, name.substring(0, 3), name + "s");
    }
    return choice
        .also(DayOfWeek.TUESDAY, "Tues")
        .also(DayOfWeek.WEDNESDAY, "Weds")
        .also(DayOfWeek.THURSDAY, "Thur", "Thurs");
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private Choice<T> word(String word, T meaning) {
    words.put(meaning, word);
    byKey.put(Words.key(word), meaning);
    return this;
  }

  private Choice<T> also(T meaning, String... others) {
    Arrays.stream(others).forEach(o -> byKey.put(Words.key(o), meaning));
    return this;
  }

  Optional<T> find(String text) {
    return Optional.ofNullable(byKey.get(Words.key(text)));
  }

  /** What a text means that is one of the words shown, and not one of their other spellings. */
  Optional<T> offered(String text) {
    return find(text).filter(meaning -> Words.key(word(meaning)).equals(Words.key(text)));
  }

  /** The word shown for that meaning. */
  String word(T meaning) {
    return words.getOrDefault(meaning, meaning.toString());
  }

  /** The words shown, in order. */
  List<String> words() {
    return List.copyOf(words.values());
  }
}

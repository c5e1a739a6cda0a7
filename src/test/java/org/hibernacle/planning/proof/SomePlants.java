package org.hibernacle.planning.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.model.Container;
import org.hibernacle.model.Group;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;

/** Plants by chance: every group equally often, pots of 0.3 to 80 L, wishes of all sorts. */
final class SomePlants {
  private static final List<Species> TABLE = SpeciesCatalogue.builtIn().species();

  private final Draw draw;
  private final List<Place> places;
  private final Season season;

  SomePlants(Draw draw, List<Place> places, Season season) {
    this.draw = draw;
    this.places = places;
    this.season = season;
  }

  List<Plant> plants(int count) {
    List<Plant> plants = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      plants.add(plant("P" + i));
    }
    return plants;
  }

  private Plant plant(String id) {
    Group group = draw.oneOf(Group.values());
    Species species = draw.oneOf(of(group));
    Place home = home(group);
    double ownLimitC =
        Math.min(species.unhardenedLimitC(), species.rootLimitC() + draw.between(-3.0, 3.0));
    double valueOfAll = 10 * draw.between(1, 90);
    return new Plant(
        id,
        "",
        species,
        species.taxon(),
        "",
        home.name(),
        pot(),
        day(0.2, -200, -60),
        draw.oneOf(
            Plant.Vigour.NORMAL, Plant.Vigour.NORMAL, Plant.Vigour.values()[draw.between(0, 2)]),
        draw.between(1, 5),
        draw.chance(0.5) ? OptionalDouble.of(valueOfAll) : OptionalDouble.empty(),
        draw.chance(0.15) ? OptionalDouble.of(ownLimitC) : OptionalDouble.empty(),
        draw.chance(0.15) ? Optional.of(draw.oneOf(places).name()) : Optional.empty(),
        day(0.15, 60, 170),
        day(0.15, 90, 200),
        draw.chance(0.15) ? draw.between(2, 4) : 1,
        draw.sometimes(0.6, 10, 200),
        draw.sometimes(0.5, 10, 80),
        !draw.chance(0.12),
        day(0.1, 100, 290),
        draw.chance(0.1) ? Optional.of(draw.oneOf(of(group))) : Optional.empty(),
        Plant.Trust.NAMED,
        "");
  }

  private static List<Species> of(Group group) {
    return TABLE.stream().filter(s -> s.group() == group).toList();
  }

  /** The bench, for some plants the ground, for some of the warm countries a room. */
  private Place home(Group group) {
    List<Place> fitting =
        places.stream()
            .filter(
                p ->
                    p.kind() == PlaceKind.GROUND
                        || (group == Group.TROPICAL && p.kind() == PlaceKind.WARM_ROOM))
            .toList();
    return fitting.isEmpty() || draw.chance(0.8) ? places.get(0) : draw.oneOf(fitting);
  }

  private Container pot() {
    double litres = draw.evenlyByOrder(0.3, 80);
    boolean round = draw.chance(0.5);
    double flatness = draw.between(1.0, 4.0);
    double length = draw.between(1.0, 1.6);
    double depthCm = Math.cbrt(litres * 1000 / (flatness * flatness * length));
    double shrink = round ? 4 / Math.PI : 1;
    double widthCm = Math.sqrt(shrink) * flatness * depthCm;
    return new Container(
        round ? Container.Shape.ROUND : Container.Shape.RECTANGULAR,
        round ? widthCm * Math.sqrt(length) : widthCm * length,
        round ? widthCm * Math.sqrt(length) : widthCm,
        depthCm,
        litres,
        draw.oneOf(Container.Material.values()));
  }

  /** Now and then a day of the season, counted from its start. */
  private Optional<LocalDate> day(double share, int from, int to) {
    LocalDate day = season.start().plusDays(draw.between(from, to));
    return draw.chance(share) ? Optional.of(day) : Optional.empty();
  }
}

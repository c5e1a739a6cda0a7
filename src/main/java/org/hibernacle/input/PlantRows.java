package org.hibernacle.input;

import static org.hibernacle.input.Column.COUNT;
import static org.hibernacle.input.Column.CULTIVAR;
import static org.hibernacle.input.Column.FROST_PROOF_POT;
import static org.hibernacle.input.Column.HEIGHT;
import static org.hibernacle.input.Column.HOME;
import static org.hibernacle.input.Column.ID;
import static org.hibernacle.input.Column.LABEL;
import static org.hibernacle.input.Column.LAST_ROOT_WORK;
import static org.hibernacle.input.Column.NOT_AFTER;
import static org.hibernacle.input.Column.NOT_BEFORE;
import static org.hibernacle.input.Column.OWN_ROOT_LIMIT;
import static org.hibernacle.input.Column.PLANNED_ROOT_WORK;
import static org.hibernacle.input.Column.PLANT_NOTES;
import static org.hibernacle.input.Column.PLANT_SPECIES;
import static org.hibernacle.input.Column.PRIORITY;
import static org.hibernacle.input.Column.ROOTSTOCK;
import static org.hibernacle.input.Column.SPREAD;
import static org.hibernacle.input.Column.STAY_IN;
import static org.hibernacle.input.Column.VALUE;
import static org.hibernacle.input.Column.VIGOUR;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.model.Container;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Plant.Trust;
import org.hibernacle.model.Plant.Vigour;

/** Reads the Plants sheet. A row that does not become a plant leaves at least one error. */
final class PlantRows {
  private static final int COMMON_PRIORITY = 3;

  private final PlaceNames places;
  private final SpeciesOfPlant species;

  PlantRows(PlaceNames places, SpeciesCatalogue catalogue) {
    this.places = places;
    this.species = new SpeciesOfPlant(catalogue);
  }

  List<Plant> read(KnownSheet sheet) {
    List<Plant> plants = new ArrayList<>();
    Map<String, Object> seen = new HashMap<>();
    for (Row row : sheet.rows(Tally.Noun.PLANT)) {
      Optional<String> id = row.required(ID, "IN-129.id");
      id.ifPresent(i -> UniqueNames.check(seen, i, row, ID));
      plant(row, id.orElse("")).ifPresent(plants::add);
    }
    return plants;
  }

  private Optional<Plant> plant(Row row, String id) {
    ExampleRow.warn(row, ID);
    Optional<SpeciesOfPlant.Recognised> top = species.read(row, PLANT_SPECIES, row.text(CULTIVAR));
    if (row.isBlank(PLANT_SPECIES)) {
      row.missing("IN-129.species", PLANT_SPECIES);
    }
    Optional<SpeciesOfPlant.Recognised> rootstock = species.read(row, ROOTSTOCK, "");
    if (row.isBlank(HOME)) {
      row.missing("IN-129.home", HOME);
    }
    Optional<String> home = places.read(row, HOME);
    Optional<String> stayIn = places.read(row, STAY_IN);
    Optional<Container> container = PotSize.read(row);
    Optional<LocalDate> notBefore = row.date(NOT_BEFORE);
    Optional<LocalDate> notAfter = row.date(NOT_AFTER);
    boolean crossed =
        notBefore.isPresent() && notAfter.isPresent() && notAfter.get().isBefore(notBefore.get());
    if (crossed) {
      row.error(Code.DATES_CROSSED, NOT_AFTER, notBefore.get());
    }
    Vigour vigour = row.choice(VIGOUR, Choice.VIGOUR, Vigour.NORMAL);
    int priority = row.whole(PRIORITY, 1, 5, COMMON_PRIORITY);
    int count = row.whole(COUNT, 1, 10_000, 1);
    boolean frostProof = row.choice(FROST_PROOF_POT, Choice.YES_NO, true);
    if (id.isEmpty() || top.isEmpty() || home.isEmpty() || container.isEmpty() || crossed) {
      return Optional.empty();
    }
    return Optional.of(
        new Plant(
            id,
            row.text(LABEL),
            top.get().species(),
            row.text(PLANT_SPECIES),
            row.isBlank(CULTIVAR) ? top.get().cultivar() : row.text(CULTIVAR),
            home.get(),
            container.get(),
            row.date(LAST_ROOT_WORK),
            vigour,
            priority,
            row.number(VALUE, 0, 1e9),
            row.number(OWN_ROOT_LIMIT, -40, 20),
            stayIn,
            notBefore,
            notAfter,
            count,
            row.number(HEIGHT, 1, 2000),
            row.number(SPREAD, 1, 2000),
            frostProof,
            row.date(PLANNED_ROOT_WORK),
            rootstock.map(SpeciesOfPlant.Recognised::species),
            trust(rootstock.or(() -> top)),
            row.text(PLANT_NOTES)));
  }

  /** The roots' species counts, which is the rootstock's where there is one. */
  private static Trust trust(Optional<SpeciesOfPlant.Recognised> roots) {
    return roots.map(SpeciesOfPlant.Recognised::trust).orElse(Trust.NAMED);
  }
}

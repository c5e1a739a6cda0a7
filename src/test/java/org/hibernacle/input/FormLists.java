package org.hibernacle.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernacle.model.Species;

/** The lists behind the drop-downs, as the reader itself understands them. */
final class FormLists {
  private FormLists() {}

  static Map<String, List<String>> all() {
    Map<String, List<String>> lists = new LinkedHashMap<>();
    lists.put("yes_no", Choice.YES_NO.words());
    lists.put("pot_shapes", Choice.SHAPE.words());
    lists.put("pot_materials", Choice.MATERIAL.words());
    lists.put("vigours", Choice.VIGOUR.words());
    lists.put("place_kinds", Choice.KIND.words());
    lists.put("suns", Choice.SUN.words());
    lists.put("winds", Choice.WIND.words());
    lists.put("covers", Choice.COVER.words());
    lists.put("lights", Choice.LIGHT.words());
    lists.put("units", Choice.UNITS.words());
    lists.put("papers", Choice.PAPER.words());
    lists.put("weekdays", Choice.WEEKDAY.words());
    lists.put("groups", Choice.GROUP.words());
    lists.put("evergreen", Choice.EVERGREEN.words());
    lists.put("root_kill_kinds", Choice.ROOT_KILL_KIND.words());
    lists.put("root_kill_relations", Choice.ROOT_KILL_RELATION.words());
    lists.put("root_kill_states", Choice.ROOT_KILL_STATUS.words());
    lists.put("chill_needs", Choice.CHILL_NEED.words());
    lists.put("lights_in_store", Choice.LIGHT_IN_STORE.words());
    lists.put("drying_risks", Choice.DRYING_RISK.words());
    lists.put("toxic", Choice.TOXIC.words());
    lists.put(
        "species_names",
        SpeciesCatalogue.builtIn().species().stream().map(Species::taxon).sorted().toList());
    return lists;
  }
}

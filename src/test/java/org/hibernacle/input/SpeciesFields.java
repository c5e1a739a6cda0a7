package org.hibernacle.input;

import java.util.List;

/** The columns of the Species sheet as the blank form shows them. */
final class SpeciesFields {
  private SpeciesFields() {}

  static List<FormField> all() {
    return List.of(
        FormField.of(
                Column.TAXON,
                24,
                "Scientific name. If the built-in table has it, only what you fill in here is"
                    + " changed. If not, everything up to Light in store is needed.")
            .helpedBy("species_names")
            .example("Exemplum inventum"),
        FormField.of(Column.SYNONYMS, 18, "Other scientific names, with ; between."),
        FormField.of(Column.COMMON_NAMES, 18, "Everyday names, with ; between.")
            .example("example tree"),
        FormField.of(Column.GROUP, 19, "Plants of one group winter in much the same way.")
            .from("groups")
            .example("hardy-deciduous"),
        FormField.of(Column.EVERGREEN, 11, "Leaves in winter: yes, semi, no.")
            .from("evergreen")
            .example("no"),
        FormField.of(Column.ZONE, 12, "Hardiness zone of the top in open ground, 1a to 13b.")
            .example("6a"),
        FormField.of(
                Column.ROOT_KILL,
                12,
                "Published temperature of root death. Kept as evidence; no plan is made from it.")
            .between(-60, 40),
        FormField.of(Column.ROOT_KILL_KIND, 12, "Which roots: young, mature, whole.")
            .from("root_kill_kinds"),
        FormField.of(
                Column.ROOT_KILL_RELATION,
                12,
                "What was seen there: kills, lt50 (half died), survives (a bound).")
            .from("root_kill_relations"),
        FormField.of(Column.ROOT_KILL_SOURCE, 16, "Where it was published."),
        FormField.of(
                Column.ROOT_KILL_STATUS,
                12,
                "verified if you read the figure, memory if you recall it.")
            .from("root_kill_states"),
        FormField.of(
                Column.ROOT_LIMIT,
                14,
                "Temperature of the root ball at which damage begins, in midwinter, without any"
                    + " margin.")
            .between(-60, 40)
            .example(-6, 21),
        FormField.of(Column.ESTIMATE_BASIS, 16, "How the limit was come by. Empty: own."),
        FormField.of(
                Column.UNHARDENED_LIMIT,
                14,
                "The same in early autumn, before the plant has hardened.")
            .between(-60, 40)
            .example(-2, 28),
        FormField.of(
                Column.NEW_GROWTH_LIMIT,
                14,
                "Air temperature that open buds and fresh leaves stand.")
            .between(-60, 40)
            .example(-1, 30),
        FormField.of(Column.CHILL_NEED, 11, "How much cold ends rest: none, low, medium, high.")
            .from("chill_needs")
            .example("medium"),
        FormField.of(Column.CHILL_PORTIONS, 12, "Published chill portions, such as 50 or 24-82."),
        FormField.of(Column.MIN_STORE, 11, "Lowest air temperature wanted in a store.")
            .between(-60, 40)
            .example(-3, 26),
        FormField.of(
                Column.MAX_STORE,
                11,
                "Highest air temperature wanted in a store while the plant rests.")
            .between(-60, 40)
            .example(5, 41),
        FormField.of(
                Column.LIGHT_IN_STORE,
                11,
                "Least light wanted: dark-ok (only while leafless), low, bright.")
            .from("lights_in_store")
            .example("dark-ok"),
        FormField.of(
                Column.KEEP_DRY, 12, "Whether to keep the ball dry while it is cold. Empty: no.")
            .from("yes_no")
            .example("no"),
        FormField.of(
                Column.DRYING_RISK, 12, "How fast it dries out over a frozen ball. Empty: medium.")
            .from("drying_risks")
            .example("low"),
        FormField.of(
                Column.TOXIC,
                12,
                "Poisonous: yes, no, unknown. Unknown does not mean safe. Empty: unknown.")
            .from("toxic")
            .example("unknown"),
        FormField.of(Column.TOXIC_SOURCE, 16, "Where that is from."),
        FormField.of(Column.SPECIES_NOTES, 38, "For yourself.")
            .example("Example of an invented species: overwrite or delete this row."),
        FormField.of(Column.SOURCES, 18, "Where the figures are from, with ; between.")
            .example("invented"));
  }
}

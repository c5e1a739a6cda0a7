package org.hibernacle.input;

import java.time.LocalDate;
import java.util.List;

/** The columns of the Plants sheet as the blank form shows them. */
final class PlantFields {
  private PlantFields() {}

  static List<FormField> all() {
    return List.of(
        FormField.of(
                Column.ID,
                13,
                "Needed. Any short mark that no other row has; write it on the pot as well.")
            .example("EXAMPLE-1"),
        FormField.of(Column.LABEL, 18, "What you call the plant. Empty: species and cultivar.")
            .example("Example maple"),
        FormField.of(
                Column.PLANT_SPECIES,
                26,
                "Needed. Scientific or common name. If you only know the genus, write for instance"
                    + " Acer sp.: the most cautious figures of the genus are used then.")
            .helpedBy("species_names")
            .example("Acer palmatum"),
        FormField.of(Column.CULTIVAR, 16, "Name of the cultivar, without quotes."),
        FormField.of(
                Column.HOME,
                18,
                "Needed. Where the plant stands in summer: a name from the Places sheet.")
            .helpedBy("place_names")
            .example("Example bench"),
        FormField.of(
                Column.POT_SHAPE,
                13,
                "Round or rectangular. Empty: rectangular if length and width differ, else round.")
            .from("pot_shapes")
            .example("rectangular"),
        FormField.of(
                Column.LENGTH_OF_POT,
                10,
                "Longest outside width of the pot; the diameter of a round one.")
            .between(1, 300)
            .example(36, 14),
        FormField.of(
                Column.WIDTH_OF_POT,
                10,
                "Shortest outside width. A round pot needs only one of the two.")
            .between(1, 300)
            .example(28, 11),
        FormField.of(Column.DEPTH_OF_POT, 10, "Outside depth of the pot.")
            .between(1.1, 200)
            .example(10, 4),
        FormField.of(
                Column.VOLUME_OF_POT,
                10,
                "What the pot holds. Enough by itself; with length, width and depth it is worked"
                    + " out. Trade sizes of nursery pots hold less than their number in gallons.")
            .between(0.02, 3000),
        FormField.of(Column.POT_MATERIAL, 13, "What the wall is made of. Empty: ceramic.")
            .from("pot_materials")
            .example("ceramic"),
        FormField.of(
                Column.LAST_ROOT_WORK,
                14,
                "Day of the last repotting or root pruning. New roots stand less cold.")
            .day()
            .example(LocalDate.of(2026, 3, 14)),
        FormField.of(
                Column.VIGOUR,
                11,
                "Weak, normal or strong. A weak plant is kept warmer. Empty: normal.")
            .from("vigours")
            .example("normal"),
        FormField.of(
                Column.PRIORITY,
                10,
                "1 (least) to 5 (most dear). Where room is short the higher ones go first, and 4"
                    + " and 5 take no risk. Empty: 3.")
            .wholeBetween(1, 5)
            .example(3),
        FormField.of(
                Column.VALUE,
                10,
                "Worth in money of all plants of the row together, in your currency.")
            .between(0, 1e9)
            .example(150),
        FormField.of(
                Column.OWN_ROOT_LIMIT,
                13,
                "Root-ball temperature the plant stands in midwinter, if you know better than the"
                    + " species table.")
            .between(-40, 20),
        FormField.of(
                Column.STAY_IN,
                18,
                "The place where it must spend the winter, if you insist: a name from the Places sheet.")
            .helpedBy("place_names"),
        FormField.of(Column.NOT_BEFORE, 13, "No move before this day.").day(),
        FormField.of(Column.NOT_AFTER, 13, "Every move away from home has happened by this day.")
            .day(),
        FormField.of(
                Column.COUNT,
                8,
                "How many plants just like this one the row stands for. They stay together. Empty: 1.")
            .wholeBetween(1, 10_000)
            .example(1),
        FormField.of(
                Column.HEIGHT,
                10,
                "Height of plant and pot together. Roofed places can be too low.")
            .between(1, 2000)
            .example(55, 22),
        FormField.of(
                Column.SPREAD, 10, "Width of the crown. It decides how much floor the plant takes.")
            .between(1, 2000)
            .example(50, 20),
        FormField.of(
                Column.FROST_PROOF_POT,
                12,
                "No, if the pot would crack when its wet soil freezes. Empty: yes.")
            .from("yes_no")
            .example("yes"),
        FormField.of(
                Column.PLANNED_ROOT_WORK,
                14,
                "Day of the root work you plan. Freshly cut roots must not freeze.")
            .day(),
        FormField.of(
                Column.ROOTSTOCK,
                22,
                "Species of the roots, if the plant is grafted. It sets the root limit.")
            .helpedBy("species_names"),
        FormField.of(Column.PLANT_NOTES, 34, "For yourself.")
            .example("Example: overwrite or delete this row."));
  }
}

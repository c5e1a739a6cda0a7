package org.hibernacle.report;

import java.util.List;
import java.util.OptionalDouble;
import org.hibernacle.review.Proportion;
import org.hibernacle.review.Survival;

/** How plants came through, by what they have in common. */
final class SurvivalTable {
  private SurvivalTable() {}

  static Section write(ReviewMaterial m) {
    Table table =
        new Table(m.words(), "survival", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.survival"))
            .column("survival-by", 18)
            .column("survival-of", 24)
            .column("rows", 9)
            .column("rows-survived", 10)
            .column("survived-share", 11)
            .numbers()
            .column("survived-low", 13)
            .numbers()
            .column("survived-high", 13)
            .numbers()
            .column("rows-undamaged", 11)
            .column("undamaged-share", 11)
            .numbers()
            .column("undamaged-low", 13)
            .numbers()
            .column("undamaged-high", 13)
            .numbers()
            .column("pots-in-all", 9)
            .column("pots-dead", 9)
            .column("outcomes-untold", 13)
            .column("value-dead", 11)
            .numbers();
    for (Survival s : m.review().survival()) {
      Proportion survived = s.survived();
      Proportion undamaged = s.undamaged();
      OptionalDouble value = s.valueDead();
      table.row(
          StyleRole.PLAIN,
          List.of(
              new Cell.Text(m.words().of("survival.by", s.by())),
              new Cell.Text(key(m, s)),
              Measures.count(survived.trials()),
              Measures.count(survived.successes()),
              percent(survived.share()),
              percent(survived.low()),
              percent(survived.high()),
              Measures.count(undamaged.successes()),
              percent(undamaged.share()),
              percent(undamaged.low()),
              percent(undamaged.high()),
              Measures.count(s.pots()),
              Measures.count(s.potsDead()),
              s.assumed() == 0 ? new Cell.Gap() : Measures.count(s.assumed()),
              value.isPresent() ? new Cell.Quantity(value.getAsDouble(), "", 0) : new Cell.Gap()));
    }
    return table.build();
  }

  private static Cell percent(double share) {
    return new Cell.Quantity(100 * share, "", 0);
  }

  private static String key(ReviewMaterial m, Survival s) {
    return switch (s.by()) {
      case ALL -> m.words().text("survival.all");
      case SPECIES, PLACE -> s.key();
      case GROUP -> m.words().text("group." + s.key());
      case POT_SIZE ->
          m.words().text("pot-size." + s.key(), m.measures().volume(2), m.measures().volume(10));
      case ROOT_WORK -> m.words().text("root-work." + s.key());
    };
  }
}

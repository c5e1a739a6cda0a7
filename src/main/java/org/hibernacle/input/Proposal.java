package org.hibernacle.input;

import java.util.OptionalDouble;

/** A figure that a losses review proposed: it counts only once the keeper has accepted it. */
final class Proposal {
  private Proposal() {}

  /**
   * The figure proposed in a row, if it is accepted.
   *
   * @param proposed column of the figure
   * @param accept column of the keeper's answer
   * @param low smallest allowed, in our unit
   * @param high largest allowed, in our unit
   */
  static OptionalDouble accepted(Row row, Column proposed, Column accept, double low, double high) {
    boolean yes = row.choice(accept, Choice.YES_NO).orElse(false);
    if (row.isBlank(proposed)) {
      if (yes) {
        row.warning(Code.NOTHING_PROPOSED, accept, proposed.title());
      }
      return OptionalDouble.empty();
    }
    if (!yes) {
      row.note(Code.NOT_ACCEPTED, proposed.title(), accept.title());
      return OptionalDouble.empty();
    }
    OptionalDouble figure = row.number(proposed, low, high);
    figure.ifPresent(
        f -> row.note(Code.ACCEPTED, proposed.title(), f, proposed.quantity().ours().symbol()));
    return figure;
  }
}

package org.hibernacle.planning;

import java.util.List;

/** One plant as {@link Sharing} sees it: what it asks for, and what other ways it has. */
interface Claim {
  /** What it asks for wherever it goes. */
  Ledger.Load load();

  /** The path it would take if it were alone. */
  Path wish();

  /** What a path of its costs. */
  Toll toll(Path path);

  /** Its cheapest path within what others have left. */
  Path cheapest(Openings left);

  /**
   * All its paths that cost at most so much more than its wish, or every path if that is empty; cut
   * where there are more than {@code most}.
   */
  List<Path> paths(java.util.OptionalLong extra, int most);
}

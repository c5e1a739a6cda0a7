package org.hibernacle.planning;

import java.util.List;
import org.hibernacle.model.Plant;

/**
 * What would help those plants that are lost, or that gave way to others.
 *
 * @param remedies cheapest first, each found by planning again; {@link #MOST_REMEDIES} at most
 * @param beyondHelp plants that are lost with each change that was tried, by Id
 * @param allTried false if the garden was too large to try every change that was thought of
 */
public record Help(List<Remedy> remedies, List<Plant> beyondHelp, boolean allTried) {
  /** More are too many to weigh. */
  public static final int MOST_REMEDIES = 5;

  /** For a plan in which nobody needs it. */
  public static final Help NOT_NEEDED = new Help(List.of(), List.of(), true);

  public Help {
    remedies = List.copyOf(remedies);
    beyondHelp = List.copyOf(beyondHelp);
  }
}

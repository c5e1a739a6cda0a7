package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * A few pages for whoever looks after the plants for some days and knows nothing of trees.
 *
 * @param title of the file
 * @param subtitle site and days
 * @param parts in order
 * @param pageFooter shown on every page
 * @param digest that the file's identity follows from
 * @param letterPaper Letter instead of A4
 * @param language for dates and numbers
 * @param dated day that the file carries as the day of writing: the first of the days
 */
public record HandOut(
    String title,
    String subtitle,
    List<Part> parts,
    String pageFooter,
    String digest,
    boolean letterPaper,
    Locale language,
    LocalDate dated) {
  /** More than this nobody reads. */
  public static final int MOST_PAGES = 4;

  /** Longest run of days that fits them. */
  public static final int MOST_DAYS = 31;

  /** How an item stands on paper. */
  public enum Kind {
    /** Heads the items that follow. */
    LEAD,
    /** To be ticked when done. */
    TICK,
    POINT,
    /** To be filled in by hand. */
    BLANK
  }

  /**
   * Items under a heading.
   *
   * @param title heading
   * @param role its look
   * @param items in order
   */
  public record Part(String title, StyleRole role, List<Item> items) {
    public Part {
      items = List.copyOf(items);
    }
  }

  /**
   * One thing told.
   *
   * @param kind how it stands
   * @param label what stands out; may be empty
   * @param text what follows; may be empty
   */
  public record Item(Kind kind, String label, String text) {}

  public HandOut {
    parts = List.copyOf(parts);
  }
}

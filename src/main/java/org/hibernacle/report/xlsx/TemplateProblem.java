package org.hibernacle.report.xlsx;

/**
 * What is wrong with a template.
 *
 * @param code of {@code docs/messages.md}
 * @param where file, sheet and cell or name
 * @param found there
 * @param expected there, and how to restore it
 */
public record TemplateProblem(String code, String where, String found, String expected) {
  static final String UNREADABLE = "OU-601";
  static final String ANCHOR_MISSING = "OU-602";
  static final String ANCHOR_TWICE = "OU-603";
  static final String ANCHOR_ELSEWHERE = "OU-604";
  static final String NO_STYLES = "OU-605";
  static final String ROLE_MISSING = "OU-606";
  static final String ROLE_TWICE = "OU-607";
  static final String ROLE_UNKNOWN = "OU-608";
  static final String TOO_PALE = "OU-609";
  static final String TOO_SMALL = "OU-610";
}

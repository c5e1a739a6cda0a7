package org.hibernacle.input;

/**
 * Codes of messages of this chapter; {@code docs/messages.md} has cause and cure. Codes that stand
 * in one place only, and those with several wordings, are written there.
 */
final class Code {
  static final String UNREADABLE_FILE = "IN-101";
  static final String OLD_WORKBOOK = "IN-102";
  static final String NOT_A_WORKBOOK = "IN-103";
  static final String ENCRYPTED = "IN-104";
  static final String EMPTY_FILE = "IN-105";
  static final String DAMAGED = "IN-106";

  static final String MISSING_HEADING = "IN-111";
  static final String UNKNOWN_COLUMN = "IN-113";
  static final String UNKNOWN_SHEET = "IN-114";
  static final String EXAMPLE_LEFT = "IN-116";
  static final String NO_ROWS = "IN-117";
  static final String ABOVE_HEADINGS = "IN-118";

  static final String BAD_DATE = "IN-121";
  static final String BAD_CHOICE = "IN-122";
  static final String ERROR_CELL = "IN-123";
  static final String FORMULA_WITHOUT_VALUE = "IN-124";
  static final String FORMULA = "IN-125";
  static final String NUMBER_AS_TEXT = "IN-126";
  static final String DATE_AS_TEXT = "IN-127";
  static final String DEFAULT = "IN-128";

  static final String DUPLICATE_NAME = "IN-130";
  static final String UNKNOWN_PLACE = "IN-131";
  static final String NO_POT_SIZE = "IN-132";
  static final String POT_OUT_OF_RANGE = "IN-133";
  static final String POT_CONTRADICTS = "IN-134";
  static final String DATES_CROSSED = "IN-136";

  static final String THERMOSTAT_CROSSED = "IN-140";
  static final String HEATER_WITHOUT_TARGET = "IN-141";
  static final String COVER_CONTRADICTS = "IN-142";

  static final String UNKNOWN_SETTING = "IN-150";
  static final String NO_LATITUDE = "IN-152";

  static final String UNKNOWN_SPECIES = "IN-201";
  static final String GENUS_ONLY = "IN-202";
  static final String ROW_BY_CULTIVAR = "IN-205";

  static final String REAL_DATE = "IN-341";
  static final String REAL_DATE_LATER = "IN-342";
  static final String REAL_PLACE_UNKNOWN = "IN-343";
  static final String REAL_PLACE_MISSING = "IN-344";

  static final String NO_LOG = "IN-350";
  static final String PLAN_HEADING = "IN-351";
  static final String LOG_DATE = "IN-352";
  static final String LOG_CHOICE = "IN-353";
  static final String LOG_PLACE = "IN-354";
  static final String LOG_TWICE = "IN-355";
  static final String LOG_OF_UNKNOWN = "IN-356";
  static final String LOG_SEASON = "IN-357";
  static final String LOG_ORDER = "IN-358";
  static final String LOG_STOOD_IN = "IN-359";
  static final String LOG_NOTICED = "IN-360";
  static final String NO_SEASON = "IN-361";

  static final String NOTHING_PROPOSED = "IN-370";
  static final String NOT_ACCEPTED = "IN-371";
  static final String ACCEPTED = "IN-372";

  static final String FOREIGN_LOG = "IN-381";
  static final String HIDDEN = "IN-442";
  static final String MERGED = "IN-443";
  static final String CONTROL_CHARACTERS = "IN-444";
  static final String TEXT_TOO_LONG = "IN-445";
  static final String MACROS = "IN-446";
  static final String TOO_MUCH = "IN-451";

  private Code() {}
}

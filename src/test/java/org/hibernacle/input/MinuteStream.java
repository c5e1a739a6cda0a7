package org.hibernacle.input;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.InputStream;
import java.time.LocalDate;

/** A file of readings by the minute that is made while it is read, and so of any size. */
final class MinuteStream extends InputStream {
  /** Of every other day, from the first on, °C. */
  static final double LOWEST_C = -9.9;

  /** Of every other day, from the first on, °C. */
  static final double HIGHEST_C = 4.4;

  /** Its first day; far enough back for centuries of minutes. */
  static final LocalDate START = LocalDate.of(1800, 1, 1);

  /** One row a minute, of 22 bytes mostly. */
  static final int BYTES_A_DAY = 1440 * 22;

  private final int days;
  private int day;
  private int minute;
  private byte[] row = "time,temp_c\n".getBytes(US_ASCII);
  private int at;

  private MinuteStream(int days) {
    this.days = days;
  }

  /** A source of that many days, some 32 kilobytes each. */
  static CsvSource source(int days) {
    return new CsvSource("minutes.csv", () -> new MinuteStream(days));
  }

  @Override
  public int read() {
    if (at == row.length && !next()) {
      return -1;
    }
    return row[at++];
  }

  @Override
  public int read(byte[] into, int offset, int length) {
    if (at == row.length && !next()) {
      return -1;
    }
    int count = Math.min(length, row.length - at);
    System.arraycopy(row, at, into, offset, count);
    at += count;
    return count;
  }

  private boolean next() {
    if (day == days) {
      return false;
    }
    int tenths = (minute * 144 / 1440) - 99 + day % 2;
    String time = "T" + two(minute / 60) + ":" + two(minute % 60);
    row = (START.plusDays(day) + time + "," + tenths / 10.0 + "\n").getBytes(US_ASCII);
    at = 0;
    minute = (minute + 1) % 1440;
    day += minute == 0 ? 1 : 0;
    return true;
  }

  private static String two(int number) {
    return (number < 10 ? "0" : "") + number;
  }
}

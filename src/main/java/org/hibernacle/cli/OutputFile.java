package org.hibernacle.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * One file that a command writes.
 *
 * @param name without folders
 * @param content what goes into it
 */
record OutputFile(String name, Content content) {
  /** Writes bytes to a stream it is given. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** The whole file; a season's has a few megabytes at most. */
  byte[] bytes() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    content.writeTo(out);
    return out.toByteArray();
  }
}

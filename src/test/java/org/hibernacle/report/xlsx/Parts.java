package org.hibernacle.report.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The parts of an office file, unzipped, because compression differs between Java builds. */
final class Parts {
  private Parts() {}

  /** Name and text of each; a name that comes twice throws. */
  static SortedMap<String, String> of(byte[] file) throws IOException {
    SortedMap<String, String> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        if (parts.put(part.getName(), text) != null) {
          throw new IllegalArgumentException("twice: " + part.getName());
        }
      }
    }
    return parts;
  }
}

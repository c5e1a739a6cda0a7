package org.hibernacle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.hibernacle.report.RunFacts;

/** Names input files by what is in them. */
final class Digests {
  private Digests() {}

  /** Name and SHA-256 of a file. */
  static RunFacts.InputFile of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      in.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), sha));
      String hex = HexFormat.of().formatHex(sha.digest());
      return new RunFacts.InputFile(String.valueOf(file.getFileName()), hex);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}

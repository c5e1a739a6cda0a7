package org.hibernacle.dist;

import java.io.IOException;
import java.nio.file.Path;
import org.hibernacle.cli.CommandPages;

/** Makes the parts of the package that are made of others: pages, licences, completion, manual. */
public final class Parts {
  private Parts() {}

  /** Project folder, folder of the libraries, folder to write to, version. */
  public static void main(String[] args) throws IOException {
    Path project = Path.of(args[0]);
    Path target = Path.of(args[2]);
    new Documents(project).write(target);
    new Licences(project).write(Path.of(args[1]), target.resolve("licences"));
    CommandPages.write(target, args[3]);
  }
}

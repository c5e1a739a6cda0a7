package org.hibernacle.dist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * The project's pages as they are read without the project: in a browser. Links lead to pages that
 * come along; those to what does not come along become plain words.
 */
final class Documents {
  private static final Set<String> FOLDERS = Set.of("docs", "demo-data", "templates");
  private static final List<Extension> EXTENSIONS =
      List.of(TablesExtension.create(), HeadingAnchorExtension.create());
  private static final Pattern FOR_DEVELOPERS =
      Pattern.compile("<!-- for developers -->.*?<!-- for all -->", Pattern.DOTALL);
  private static final String JAR = "java -jar target/hibernacle.jar";
  private static final Pattern BUILDING = Pattern.compile("mvn |java -(cp|jar) |\\btarget/");
  private static final String STYLE =
      "body{max-width:48em;margin:2em auto;padding:0 1em;font:1em/1.5 sans-serif;color:#111}"
          + "table{border-collapse:collapse}th,td{border:1px solid #777;padding:.2em .5em;"
          + "text-align:left;vertical-align:top}pre{overflow:auto;padding:.5em;background:#eee}";

  private final Parser parser = Parser.builder().extensions(EXTENSIONS).build();
  private final HtmlRenderer renderer = HtmlRenderer.builder().extensions(EXTENSIONS).build();
  private final Path project;

  /** The pages of a project. */
  Documents(Path project) {
    this.project = project;
  }

  /**
   * Writes all pages.
   *
   * @throws IllegalStateException if a link leads nowhere, or a page tells how to build the program
   */
  void write(Path folder) throws IOException {
    Map<Path, String> pages = new TreeMap<>();
    for (Path source : sources()) {
      pages.put(html(source), page(source));
    }
    pages.put(Path.of("docs", "index.html"), index("docs", "Documents"));
    pages.put(Path.of("docs", "models", "index.html"), index("docs/models", "Models"));
    List<String> dead = new ArrayList<>();
    pages.forEach((page, text) -> dead.addAll(deadLinks(page, text, pages)));
    if (!dead.isEmpty()) {
      throw new IllegalStateException("links lead nowhere: " + dead);
    }
    pages.forEach(
        (page, text) -> {
          if (BUILDING.matcher(text).find()) {
            throw new IllegalStateException(page + " tells how to build the program");
          }
        });
    for (Map.Entry<Path, String> page : pages.entrySet()) {
      Path target = folder.resolve(page.getKey().toString());
      Files.createDirectories(target.getParent());
      Files.writeString(target, page.getValue());
    }
  }

  private List<Path> sources() throws IOException {
    List<Path> sources = new ArrayList<>(List.of(Path.of("README.md")));
    for (String folder : FOLDERS) {
      try (Stream<Path> files = Files.walk(project.resolve(folder))) {
        files
            .filter(f -> f.toString().endsWith(".md"))
            .map(project::relativize)
            .forEach(sources::add);
      }
    }
    return sources;
  }

  private static Path html(Path source) {
    return Path.of(source.toString().replaceAll("\\.md$", ".html"));
  }

  private String page(Path source) throws IOException {
    Node document = parser.parse(forKeepers(Files.readString(project.resolve(source))));
    document.accept(new Links(source));
    return whole(title(document), renderer.render(document));
  }

  /** Without what only those need who build the program; commands as the launcher takes them. */
  private static String forKeepers(String text) {
    return FOR_DEVELOPERS
        .matcher(text)
        .replaceAll("")
        .replace(JAR, "hibernacle")
        .replace(" -o target/", " -o ");
  }

  private static String whole(String title, String body) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width\">\n<title>"
        + title
        + "</title>\n<style>"
        + STYLE
        + "</style>\n</head>\n<body>\n"
        + body
        + "</body>\n</html>\n";
  }

  private static String title(Node document) {
    StringBuilder title = new StringBuilder();
    document.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Heading heading) {
            if (title.isEmpty()) {
              visitChildren(heading);
            }
          }

          @Override
          public void visit(Text text) {
            if (text.getParent() instanceof Heading heading && heading.getLevel() == 1) {
              title.append(text.getLiteral());
            }
          }
        });
    return title.toString();
  }

  private String index(String folder, String title) throws IOException {
    StringBuilder list = new StringBuilder("# " + title + "\n\n");
    try (Stream<Path> files = Files.list(project.resolve(folder))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
        String name = title(parser.parse(Files.readString(file)));
        list.append("- [" + name + "](" + html(file.getFileName()) + ")\n");
      }
    }
    return whole(title, renderer.render(parser.parse(list.toString())));
  }

  /** Turns links to pages into links to what is made of them, and others into their words. */
  private final class Links extends AbstractVisitor {
    private final Path page;

    Links(Path page) {
      this.page = page;
    }

    @Override
    public void visit(Link link) {
      visitChildren(link);
      String to = link.getDestination();
      if (to.contains("://") || to.startsWith("#")) {
        return;
      }
      String[] parts = to.split("#", 2);
      Path target = page.resolveSibling(parts[0]).normalize();
      if (!comesAlong(target)) {
        while (link.getFirstChild() != null) {
          link.insertBefore(link.getFirstChild());
        }
        link.unlink();
        return;
      }
      String file =
          Files.isDirectory(project.resolve(target))
              ? parts[0].replaceAll("/$", "") + "/index.html"
              : parts[0].replaceAll("\\.md$", ".html");
      link.setDestination(parts.length > 1 ? file + "#" + parts[1] : file);
    }

    private boolean comesAlong(Path target) {
      return target.equals(Path.of("README.md")) || FOLDERS.contains(target.getName(0).toString());
    }
  }

  private List<String> deadLinks(Path page, String text, Map<Path, String> pages) {
    List<String> dead = new ArrayList<>();
    Matcher links = Pattern.compile(" href=\"([^\"]*)\"").matcher(text);
    while (links.find()) {
      String to = links.group(1);
      String[] parts = to.split("#", 2);
      Path target = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
      boolean found =
          to.contains("://")
              || (pages.containsKey(target)
                  ? parts.length == 1 || ids(pages.get(target)).contains(parts[1])
                  : Files.exists(project.resolve(target)));
      if (!found) {
        dead.add(page + " -> " + to);
      }
    }
    return dead;
  }

  private static Set<String> ids(String page) {
    Set<String> ids = new TreeSet<>();
    Matcher found = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
    while (found.find()) {
      ids.add(found.group(1));
    }
    return ids;
  }
}

package org.hibernacle.report.xlsx;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.util.WorkbookUtil;
import org.hibernacle.report.Words;

/** Names that a workbook accepts: no forbidden characters, 31 at most, no two alike. */
final class SheetNames {
  private static final int LONGEST = 31;

  private final Words words;
  private final Set<String> taken = new HashSet<>();

  SheetNames(Words words) {
    this.words = words;
  }

  /** Keeps a name free for {@link #kept}. */
  void keep(String name) {
    taken.add(name.toUpperCase(Locale.ROOT));
  }

  /** A name that was kept free, or one like it. */
  String kept(String name) {
    taken.remove(name.toUpperCase(Locale.ROOT));
    return unique(name);
  }

  /** The title as a sheet's name, numbered if another sheet has it. */
  String unique(String title) {
    String name = WorkbookUtil.createSafeSheetName(title);
    for (int number = 2; !taken.add(name.toUpperCase(Locale.ROOT)); number++) {
      String numbered = words.text("workbook.sheet-again", "", number);
      String start = title.substring(0, Math.min(title.length(), LONGEST - numbered.length()));
      name = WorkbookUtil.createSafeSheetName(start + numbered);
    }
    return name;
  }
}

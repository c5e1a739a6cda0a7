package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Section;

/** Links between rows that are about the same plant or move, set once all rows stand. */
final class Leads {
  /** A cell that is to lead somewhere. */
  private record Wish(XSSFCell cell, String section, String about) {}

  private final XSSFWorkbook workbook;
  private final Map<String, XSSFCell> rows = new HashMap<>();
  private final List<Wish> wishes = new ArrayList<>();

  Leads(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /** Remembers the first row that is about something. */
  void row(String sectionId, List<String> about, XSSFCell firstCell) {
    about.forEach(thing -> rows.putIfAbsent(key(sectionId, thing), firstCell));
  }

  /** Asks for a link from a cell, if there is a row it can lead to. */
  void wish(XSSFCell cell, Section.Lead lead, String thing) {
    wishes.add(new Wish(cell, lead.section(), thing + lead.about()));
  }

  private static String key(String sectionId, String thing) {
    return sectionId + "\n" + thing;
  }

  /** Sets the links. */
  void finish() {
    for (Wish wish : wishes) {
      XSSFCell target = rows.get(key(wish.section(), wish.about()));
      if (target != null) {
        String address = target.getAddress().formatAsString();
        wish.cell().setHyperlink(to(target.getSheet().getSheetName(), address));
      }
    }
  }

  Hyperlink to(String sheet, String address) {
    Hyperlink link = workbook.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress("'" + sheet.replace("'", "''") + "'!" + address);
    return link;
  }
}

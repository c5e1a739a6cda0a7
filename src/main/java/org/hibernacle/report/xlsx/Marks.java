package org.hibernacle.report.xlsx;

import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FontFormatting;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Section.Mark;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTNumFmt;

/** Looks that cells take on while a condition holds, with a sign beside the colour. */
final class Marks {
  private final XSSFWorkbook workbook;
  private final Palette palette;
  private final Formulas formulas;

  Marks(XSSFWorkbook workbook, Palette palette, Formulas formulas) {
    this.workbook = workbook;
    this.palette = palette;
    this.formulas = formulas;
  }

  /**
   * Marks cells.
   *
   * @param cells of one column
   * @param format of their numbers, to which signs are added
   * @param firstRow address of a column's cell in the first of these rows
   */
  void put(
      XSSFSheet sheet,
      CellRangeAddress cells,
      List<Mark> marks,
      String format,
      UnaryOperator<String> firstRow) {
    if (!marks.isEmpty()) {
      formulas.later(() -> set(sheet, cells, marks, format, firstRow));
    }
  }

  private void set(
      XSSFSheet sheet,
      CellRangeAddress cells,
      List<Mark> marks,
      String format,
      UnaryOperator<String> firstRow) {
    ConditionalFormattingRule[] rules =
        marks.stream()
            .map(mark -> rule(sheet, mark, firstRow))
            .toArray(ConditionalFormattingRule[]::new);
    sheet
        .getSheetConditionalFormatting()
        .addConditionalFormatting(new CellRangeAddress[] {cells}, rules);
    CTConditionalFormatting[] all =
        sheet
            .getCTWorksheet()
            .getConditionalFormattingList()
            .toArray(CTConditionalFormatting[]::new);
    CTConditionalFormatting added = all[all.length - 1];
    for (int i = 0; i < marks.size(); i++) {
      if (!marks.get(i).sign().isEmpty()) {
        sign(added.getCfRuleArray(i).getDxfId(), format + "\"" + marks.get(i).sign() + "\"");
      }
    }
  }

  private ConditionalFormattingRule rule(
      XSSFSheet sheet, Mark mark, UnaryOperator<String> firstRow) {
    ConditionalFormattingRule rule =
        sheet
            .getSheetConditionalFormatting()
            .createConditionalFormattingRule(formulas.written(mark.condition(), firstRow));
    Palette.Look look = palette.look(mark.role());
    FontFormatting font = rule.createFontFormatting();
    font.setFontStyle(false, look.bold());
    font.setFontColor(Styles.colour(look.ink()));
    if (look.fill() != palette.paper()) {
      PatternFormatting fill = rule.createPatternFormatting();
      fill.setFillBackgroundColor(Styles.colour(look.fill()));
      fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    }
    return rule;
  }

  /** The library knows no number formats of conditions; the file format does. */
  private void sign(long dxf, String format) {
    CTDxf look = workbook.getStylesSource().getDxfAt((int) dxf);
    CTNumFmt number = look.addNewNumFmt();
    number.setNumFmtId(workbook.createDataFormat().getFormat(format));
    number.setFormatCode(format);
  }
}

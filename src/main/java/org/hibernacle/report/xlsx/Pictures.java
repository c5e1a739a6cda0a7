package org.hibernacle.report.xlsx;

import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;

/** Pictures that stand on a sheet of the template, such as a logo. */
final class Pictures {
  private Pictures() {}

  /** Puts the pictures of one sheet over the same cells of another. */
  static void copy(XSSFWorkbook workbook, XSSFSheet from, XSSFSheet to) {
    if (from.getDrawingPatriarch() == null) {
      return;
    }
    for (XSSFShape shape : from.getDrawingPatriarch()) {
      if (shape instanceof XSSFPicture picture
          && picture.getAnchor() instanceof XSSFClientAnchor anchor) {
        index(workbook, picture.getPictureData())
            .ifPresent(index -> put(to, picture, over(anchor), index));
      }
    }
  }

  private static void put(XSSFSheet to, XSSFPicture like, XSSFClientAnchor over, int index) {
    XSSFPicture picture = to.createDrawingPatriarch().createPicture(over, index);
    CTNonVisualDrawingProps words = like.getCTPicture().getNvPicPr().getCNvPr();
    if (words.isSetDescr()) {
      picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(words.getDescr());
    }
  }

  /** The same file in the workbook, so that it is stored once. */
  private static Optional<Integer> index(XSSFWorkbook workbook, XSSFPictureData data) {
    return IntStream.range(0, workbook.getAllPictures().size())
        .filter(
            i ->
                workbook
                    .getAllPictures()
                    .get(i)
                    .getPackagePart()
                    .getPartName()
                    .equals(data.getPackagePart().getPartName()))
        .boxed()
        .findFirst();
  }

  private static XSSFClientAnchor over(XSSFClientAnchor anchor) {
    XSSFClientAnchor copy =
        new XSSFClientAnchor(
            anchor.getDx1(),
            anchor.getDy1(),
            anchor.getDx2(),
            anchor.getDy2(),
            anchor.getCol1(),
            anchor.getRow1(),
            anchor.getCol2(),
            anchor.getRow2());
    copy.setAnchorType(anchor.getAnchorType());
    return copy;
  }
}

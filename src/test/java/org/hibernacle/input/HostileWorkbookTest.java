package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.logging.log4j.LogManager;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.input.TestBook.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no spreadsheet program writes: refused with a message, within the limits of the manual. */
class HostileWorkbookTest {
  private static final String PLANTS = "xl/worksheets/sheet1.xml";

  private static Reading changed(UnaryOperator<String> plants) {
    return TestBook.read(TestBook.least().bytesWith(PLANTS, plants));
  }

  /** The pot's volume, cell D2 of the plants, as another cell. */
  private static Reading volume(String cell) {
    return changed(xml -> xml.replaceAll("<c r=\"D2\".*?</c>", cell));
  }

  private static void assertRefused(Reading reading, String code, String found) {
    assertTrue(reading.inventory().isEmpty(), reading::text);
    assertTrue(reading.text(code).contains(found), reading::text);
  }

  @Test
  void aSheetThatClaimsToBeVastIsAsLargeAsItIs() {
    Reading reading =
        changed(xml -> xml.replaceAll("<dimension[^>]*>", "<dimension ref=\"A1:XFD1048576\"/>"));
    assertEquals(1, reading.sound().plants().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"XFD1048576", "A1048576", "IW2", "A20001"})
  void aCellFarOutIsNamed(String address) {
    String row = address.replaceAll("[A-Z]", "");
    String far = "<row r=\"" + row + "\"><c r=\"" + address + "\"><v>1</v></c></row></sheetData>";
    Reading reading =
        row.equals("2")
            ? changed(
                xml ->
                    xml.replace(
                        "</row></sheetData>", "<c r=\"IW2\"><v>1</v></c></row></sheetData>"))
            : changed(xml -> xml.replace("</sheetData>", far));
    assertRefused(reading, "IN-441", "something stands in " + address);
  }

  @Test
  void blankCellsFarOutDoNoHarm() {
    Reading reading =
        changed(
            xml ->
                xml.replace(
                    "</sheetData>",
                    "<row r=\"1048576\"><c r=\"XFD1048576\" s=\"0\"/></row></sheetData>"));
    assertEquals(1, reading.sound().plants().size());
  }

  @Test
  void tooManyCellsWithinTheLimitsAreRefusedToo() {
    TestBook book = TestBook.least().sheet("Diary", "a", 1);
    XSSFSheet diary = book.sheet("Diary");
    diary.getRow(0).createCell(255).setCellValue(1);
    for (int i = 1; i < 4000; i++) {
      diary.createRow(i).createCell(0).setCellValue(i);
    }
    assertRefused(book.read(), "IN-441", "sheet Diary [IN-441]: the sheet has 4000 rows in 256");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<c r=\"D2\"><v>NaN</v></c> | IN-123 | the cell shows NaN",
        "<c r=\"D2\"><v>-Infinity</v></c> | IN-123 | the cell shows -Infinity",
        "<c r=\"D2\"><v>1e308</v></c> | IN-120 | Volume L \"1.0E308\"",
        "<c r=\"D2\"><v>five</v></c> | IN-123 | the cell shows what can not be read",
        "<c r=\"D2\" t=\"s\"><v>4711</v></c> | IN-123 | the cell shows what can not be read",
        "<c r=\"D2\" t=\"s\"><v>-1</v></c> | IN-123 | the cell shows what can not be read",
        "<c r=\"D2\" t=\"e\"><v>#OUCH!</v></c> | IN-123 | the cell shows",
        "<c r=\"D2\" t=\"b\"><v>7</v></c> | IN-120 | Volume L \"false\"",
        "<c r=\"D2\"><f>1+</f></c> | IN-124 | the formula has no stored result"
      })
  void aCellThatIsNoValueIsNamed(String cell, String code, String found) {
    assertRefused(volume(cell), code, "D2 [" + code + "]: " + found);
  }

  @Test
  void aDateBeyondAllCalendarsIsNamed() {
    TestBook book =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L|Not before",
                "A1",
                "Acer palmatum",
                "Bench",
                5,
                java.time.LocalDate.of(2026, 10, 1));
    book.sheet("Plants").getRow(1).getCell(4).setCellValue(1e10);
    assertRefused(book.read(), "IN-123", "E2 [IN-123]: the cell shows 10000000000 as a date");
  }

  @Test
  void controlCharactersBecomeSpacesAndAreSaid() {
    TestBook book =
        TestBook.least()
            .plants(
                "Id|Label|Species|Home|Volume L",
                "A1",
                "red_x0007_ \u202Emaple\uFEFF",
                "Acer palmatum",
                "Bench",
                5);
    Reading reading = book.read();
    assertEquals("red maple", reading.sound().plants().get(0).label());
    assertTrue(
        reading.text("IN-444").contains("control characters in 1 cell; each is read as a"),
        reading::text);
  }

  /** An invented name in Hebrew letters: the writing runs from right to left, and stays so. */
  @Test
  void namesFromRightToLeftAreKept() {
    Reading reading =
        TestBook.least()
            .plants("Id|Label|Species|Home|Volume L", "A1", "אלון זקן", "ume", "Bench", 5)
            .read();
    assertEquals("אלון זקן", reading.sound().plants().get(0).label());
    assertEquals("", reading.text("IN-444"));
  }

  @Test
  void aNameOfFiveThousandCharactersIsRefusedWithoutRepeatingIt() {
    String name = "Bäume".repeat(1000);
    Reading reading =
        TestBook.least()
            .plants("Id|Label|Species|Home|Volume L", "A1", name, "ume", "Bench", 5)
            .read();
    assertRefused(reading, "IN-445", "has 5000 characters; expected at most 100;");
    assertTrue(reading.problems().sorted().stream().allMatch(d -> d.toString().length() < 500));
    Reading unknown =
        TestBook.least()
            .plants("Id|Species|Home|Volume L|" + name, "A1", "ume", name, name, 1)
            .read();
    assertTrue(unknown.problems().sorted().stream().allMatch(d -> d.toString().length() < 500));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+A1", "-2+3", "@SUM(A1)", "=HYPERLINK(\"http://x\")"})
  void textThatLooksLikeAFormulaIsText(String id) {
    Reading reading =
        TestBook.least().plants("Id|Species|Home|Volume L|Own", id, "ume", "Bench", 5, id).read();
    assertEquals(id, reading.sound().plants().get(0).id());
    assertEquals(id, reading.sheet("Plants").rows().get(0).get(4));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!DOCTYPE worksheet [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>",
        "<!DOCTYPE worksheet SYSTEM \"file:///etc/hostname\">",
        "<!DOCTYPE worksheet [<!ENTITY % x SYSTEM \"http://localhost:1/x\"> %x;]>"
      })
  void declarationsOfEntitiesAreRefused(String declaration) {
    Reading reading = changed(xml -> xml.replace("<worksheet", declaration + "<worksheet"));
    assertRefused(reading, "IN-106", "it is damaged or of another kind");
  }

  @Test
  void namesThatLeadOutOfTheArchiveLeadNowhere() throws IOException {
    Path outside = Path.of("target", "outside-the-archive.txt");
    Files.deleteIfExists(outside);
    for (String name :
        List.of("../../target/outside-the-archive.txt", outside.toAbsolutePath().toString())) {
      byte[] bytes = withParts(name, 1, "written".getBytes(StandardCharsets.UTF_8));
      TestBook.read(bytes);
      assertFalse(Files.exists(outside));
    }
  }

  @Test
  void anArchiveOfThousandsOfPartsIsRefused() throws IOException {
    byte[] bytes = withParts("xl/media/picture%d.png", 1100, new byte[1]);
    assertRefused(TestBook.read(bytes), "IN-440", "or to more than 1000 parts");
  }

  @Test
  void partsThatTogetherAreTooLargeAreRefused() throws IOException {
    byte[] blanks = new byte[7 << 20];
    Arrays.fill(blanks, (byte) ' ');
    assertRefused(TestBook.read(withParts("xl/media/p%d.png", 10, blanks)), "IN-440", "64 MB");
  }

  /** The program says itself what is wrong; a library must not add where in its code that was. */
  @ParameterizedTest
  @ValueSource(strings = {"[Content_Types].xml", "_rels/.rels", "xl/_rels/workbook.xml.rels"})
  void aPartThatIsNoXmlIsToldWithoutAStackTrace(String part) {
    byte[] bytes = TestBook.least().bytesWith(part, xml -> "no XML");
    assertRefused(TestBook.read(bytes), "IN-106", "it is damaged or of another kind");
    assertFalse(LogManager.getLogger("of a library").isFatalEnabled());
  }

  /** Some kilobytes of archive each, and more than fits into half a gigabyte of memory. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "xl/worksheets/sheet1.xml | </sheetData> | <row/>            | 1300000 | more cells",
        "xl/worksheets/sheet1.xml | </sheetData> | <row r=\"9\" s=''/> | 450000  | more cells",
        "xl/styles.xml            | </cellXfs>   | <xf/>             | 1300000 | more cells",
        "xl/sharedStrings.xml     | </sst>       | <si><t/></si>     | 700000  | more cells",
        "xl/sharedStrings.xml     | </t>         | wood              | 300000  | a text of more than a",
        "xl/worksheets/sheet1.xml | <sheetData>  | <x:col/>          | 17000   | more widths of"
      })
  void whatTheMemoryCanNotHoldIsRefusedBeforeItIsBuilt(
      String part, String before, String more, int times, String found) {
    byte[] bytes =
        TestBook.least()
            .bytesWith(part, xml -> xml.replaceFirst(before, more.repeat(times) + before));
    WorkbookParts parts = WorkbookParts.of(bytes, 512L << 20);
    assertTrue(parts.tooMany().toString().contains(part + " holds " + found), parts::toString);
    if (found.equals("more cells")) {
      assertEquals(Optional.empty(), WorkbookParts.of(bytes, 2048L << 20).tooMany());
    } else {
      assertRefused(TestBook.read(bytes), "IN-451", "the part " + part + " holds " + found);
    }
  }

  @Test
  void tenThousandTextsDoNoHarm() {
    byte[] bytes =
        TestBook.least()
            .bytesWith(
                "xl/sharedStrings.xml",
                xml -> xml.replace("</sst>", "<si><t>x</t></si>".repeat(10_000) + "</sst>"));
    assertEquals(1, TestBook.read(bytes).sound().plants().size());
  }

  private static byte[] withParts(String name, int count, byte[] content) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int i = 0; i < count; i++) {
        zip.putNextEntry(new ZipEntry(name.replace("%d", Integer.toString(i))));
        zip.write(content);
      }
      try (var book =
          new java.util.zip.ZipInputStream(
              new java.io.ByteArrayInputStream(TestBook.least().bytes()))) {
        for (ZipEntry e = book.getNextEntry(); e != null; e = book.getNextEntry()) {
          zip.putNextEntry(new ZipEntry(e.getName()));
          book.transferTo(zip);
        }
      }
    }
    return out.toByteArray();
  }
}

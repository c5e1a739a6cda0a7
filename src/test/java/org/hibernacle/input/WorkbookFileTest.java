package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookFileTest {
  @TempDir private Path folder;

  private static String onlyError(byte[] bytes) {
    TestBook.Reading reading = TestBook.read(bytes);
    assertTrue(reading.inventory().isEmpty());
    assertEquals(1, reading.problems().sorted().size(), reading::text);
    return reading.problems().sorted().get(0).toString();
  }

  @Test
  void anEmptyFileIsSaidToBeEmpty() {
    assertEquals(
        "inventory.xlsx [IN-105]: the file is empty; expected a workbook; \"hibernacle blank DIR\""
            + " writes one to fill in; nothing was written.",
        onlyError(new byte[0]));
  }

  @Test
  void aRenamedCsvFileIsRecognised() {
    assertEquals(
        "inventory.xlsx [IN-103]: this is a text file, perhaps a CSV file that was renamed;"
            + " expected an .xlsx workbook; a CSV file has to be opened in a spreadsheet program"
            + " and saved as .xlsx; nothing was written.",
        onlyError("Id,Species\nA1,Größe\n".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aPictureIsNoWorkbook() {
    byte[] png = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H', 'D', 'R'};
    assertTrue(onlyError(png).contains("[IN-103]: this is not a workbook;"));
  }

  @Test
  void oneByteIsNoWorkbook() {
    assertTrue(onlyError(new byte[] {0}).contains("[IN-103]"));
  }

  @Test
  void anOldWorkbookIsToBeSavedAgain() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      container.createDocument(new ByteArrayInputStream(new byte[5000]), "Workbook");
      container.writeFilesystem(out);
    }
    assertEquals(
        "inventory.xlsx [IN-102]: this is an .xls workbook or another old office file; expected"
            + " the same workbook opened in a spreadsheet program and saved as .xlsx; nothing was"
            + " written.",
        onlyError(out.toByteArray()));
  }

  @Test
  void anEncryptedWorkbookIsToBeSavedWithoutPassword() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (POIFSFileSystem container = new POIFSFileSystem();
        OPCPackage book = OPCPackage.open(new ByteArrayInputStream(TestBook.least().bytes()))) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("winter");
      try (OutputStream inside = encryptor.getDataStream(container)) {
        book.save(inside);
      }
      container.writeFilesystem(out);
    }
    assertEquals(
        "inventory.xlsx [IN-104]: the workbook is protected with a password; expected a copy saved"
            + " without a password for opening; nothing was written.",
        onlyError(out.toByteArray()));
  }

  @Test
  void aWorkbookThatBreaksOffIsDamaged() {
    byte[] whole = TestBook.least().bytes();
    for (int length = 10; length < whole.length; length += 211) {
      String error = onlyError(Arrays.copyOf(whole, length));
      assertTrue(error.contains("[IN-106]: the file can not be read as an .xlsx"), error);
    }
  }

  @Test
  void anotherArchiveIsNoWorkbook() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("mimetype"));
      zip.write("application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write("<office/>".getBytes(StandardCharsets.UTF_8));
    }
    assertEquals(
        "inventory.xlsx [IN-103]: this is an OpenDocument file such as .ods; expected an .xlsx"
            + " workbook; opened in a spreadsheet program it can be saved as one; nothing was"
            + " written.",
        onlyError(out.toByteArray()));
  }

  @Test
  void anArchiveThatUnpacksToFarTooMuchIsRefused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("[Content_Types].xml"));
      byte[] blanks = new byte[1 << 20];
      Arrays.fill(blanks, (byte) ' ');
      for (int i = 0; i < 80; i++) {
        zip.write(blanks);
      }
    }
    assertTrue(
        onlyError(out.toByteArray())
            .contains("[IN-440]: the file unpacks to more than 64 MB, or to more than 1000 parts"));
  }

  @Test
  void aMissingFileIsNamed() {
    Problems problems = new Problems();
    Path file = folder.resolve("nowhere.xlsx");
    assertTrue(InventoryWorkbook.read(file, SpeciesCatalogue.builtIn(), problems).isEmpty());
    assertEquals(
        file
            + " [IN-101]: there is no such file; expected an inventory workbook; nothing was"
            + " written.",
        problems.sorted().get(0).toString());
  }

  @Test
  void readingLeavesTheFileAsItWas() throws IOException {
    Path file = folder.resolve("inventory.xlsx");
    byte[] before = TestBook.least().bytes();
    Files.write(file, before);
    Problems problems = new Problems();
    assertTrue(InventoryWorkbook.read(file, SpeciesCatalogue.builtIn(), problems).isPresent());
    try (InputStream in = Files.newInputStream(file)) {
      assertTrue(Arrays.equals(before, in.readAllBytes()));
    }
  }
}

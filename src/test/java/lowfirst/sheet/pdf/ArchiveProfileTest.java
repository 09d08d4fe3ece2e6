package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** What an independent validator says; it is slow, so nothing else is tested here. */
class ArchiveProfileTest {
  private static final PdfWriter WRITER = new PdfWriter();

  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFA_2_A", "PDFA_2_B", "PDFUA_1"})
  void a_sheet_is_fit_for_archive_and_screen_reader(PDFAFlavour flavour) throws Exception {
    byte[] pdf = WRITER.write(PdfWriterTest.everyBlock(40), Paper.A4);
    assertEquals(List.of(), ArchiveProfile.violations(pdf, flavour));
  }

  @ParameterizedTest
  @MethodSource("lowfirst.sheet.pdf.HardTextTest#hardTexts")
  void it_is_so_whatever_its_texts_hold(String hard) throws Exception {
    byte[] pdf = WRITER.write(HardTextTest.everywhere(hard), Paper.A4);
    assertEquals(List.of(), ArchiveProfile.violations(pdf, PDFAFlavour.PDFA_2_A));
  }

  @Test
  void the_validator_does_find_faults() throws Exception {
    String text =
        new String(
            WRITER.write(PdfWriterTest.everyBlock(3), Paper.A4), StandardCharsets.ISO_8859_1);
    byte[] broken =
        text.replace("<pdfaid:part>2", "<pdfaid:part>3").getBytes(StandardCharsets.ISO_8859_1);
    assertFalse(ArchiveProfile.violations(broken, PDFAFlavour.PDFA_2_B).isEmpty());
  }
}

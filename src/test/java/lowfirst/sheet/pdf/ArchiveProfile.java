package lowfirst.sheet.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The independent judge: veraPDF, the reference validator of the PDF Association's members. */
public final class ArchiveProfile {
  private ArchiveProfile() {}

  /** What breaks the profile, one line a rule; empty when the file conforms. */
  public static List<String> violations(byte[] pdf, PDFAFlavour flavour) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    try (var parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        var validator =
            Foundries.defaultInstance().createValidator(flavour, 20, false, true, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
          .map(
              assertion ->
                  assertion.getRuleId().getClause()
                      + "-"
                      + assertion.getRuleId().getTestNumber()
                      + " "
                      + assertion.getMessage()
                      + " @ "
                      + assertion.getLocation().getContext())
          .distinct()
          .limit(20)
          .toList();
    }
  }
}

package lowfirst.sheet.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * What makes a file fit for the archive and for screen readers: PDF/A-2, level A (ISO 19005-2), and
 * PDF/UA-1 (ISO 14289-1). No dates and a fixed id, so that equal sheets are equal files.
 */
final class Archive {
  private static final String MAKER = "Lowfirst";
  private static final byte[] SRGB = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

  private Archive() {}

  /** Writes language, title, metadata and the meaning of the colours into the document. */
  static void describe(PDDocument pdf, String title) throws IOException {
    PDDocumentCatalog catalog = pdf.getDocumentCatalog();
    catalog.setLanguage("en");
    var preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    pdf.getDocumentInformation().setTitle(title);
    pdf.getDocumentInformation().setCreator(MAKER);
    pdf.getDocumentInformation().setProducer(MAKER);
    var metadata = new PDMetadata(pdf);
    metadata.importXMPMetadata(xmp(title).getBytes(StandardCharsets.UTF_8));
    catalog.setMetadata(metadata);
    var intent = new PDOutputIntent(pdf, new ByteArrayInputStream(SRGB));
    intent.setInfo("sRGB IEC61966-2.1");
    intent.setOutputCondition("sRGB IEC61966-2.1");
    intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
    intent.setRegistryName("http://www.color.org");
    catalog.addOutputIntent(intent);
    pdf.setVersion(1.7f);
    pdf.setDocumentId((long) title.hashCode());
  }

  private static String xmp(String title) {
    return """
        <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
          xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/"
          xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        <dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>
        <dc:format>application/pdf</dc:format>
        <pdf:Producer>%s</pdf:Producer>
        <xmp:CreatorTool>%s</xmp:CreatorTool>
        <pdfaid:part>2</pdfaid:part>
        <pdfaid:conformance>A</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
          <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
          <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
          <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
          <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>part of ISO 14289 this file follows</pdfaProperty:description>
          </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
        .formatted(escaped(title), MAKER, MAKER);
  }

  /** Without characters that XML 1.0 forbids. */
  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replaceAll("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "\uFFFD");
  }
}

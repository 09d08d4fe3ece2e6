package lowfirst.sheet.pdf;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** A page being written: its content, who owns which part of it, and its form fields. */
final class Page {
  private final PDPage page;
  private final PageContent content;
  private final int key;
  private final COSArray owners = new COSArray();
  private final COSArray fields = new COSArray();

  Page(Paper paper, PDResources resources, int key) {
    page = new PDPage(new PDRectangle((float) paper.widthPoints(), (float) paper.heightPoints()));
    page.setResources(resources);
    content = new PageContent(paper.heightPoints());
    this.key = key;
  }

  PageContent content() {
    return content;
  }

  COSDictionary dictionary() {
    return page.getCOSObject();
  }

  /** What is written until {@link PageContent#endMarked} belongs to {@code element}. */
  void begin(Tags.Element element) {
    int id = owners.size();
    owners.add(element.dictionary());
    element.add(dictionary(), id);
    content.beginMarked(element.type(), id);
  }

  /** Adds a form field. */
  void addField(COSDictionary widget) {
    fields.add(widget);
  }

  /** Puts the finished page into the document. */
  void finish(PDDocument document, Tags tags) throws IOException {
    COSStream stream = document.getDocument().createCOSStream();
    try (var out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.bytes());
    }
    COSDictionary dictionary = dictionary();
    dictionary.setItem(COSName.CONTENTS, stream);
    dictionary.setInt(COSName.STRUCT_PARENTS, key);
    dictionary.setItem(COSName.getPDFName("Tabs"), COSName.S);
    if (fields.size() > 0) {
      dictionary.setItem(COSName.ANNOTS, fields);
    }
    tags.owner(key, owners);
    document.addPage(page);
  }
}

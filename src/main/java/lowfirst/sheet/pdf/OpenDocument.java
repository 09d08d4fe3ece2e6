package lowfirst.sheet.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** A PDF being written: fonts, pages, structure, form, outline. */
final class OpenDocument implements AutoCloseable {

  private record Chapter(String title, int page) {}

  private final PDDocument pdf = new PDDocument();
  private final PDResources resources = new PDResources();
  private final Tags tags = new Tags();
  private final List<Page> pages = new ArrayList<>();
  private final List<Chapter> chapters = new ArrayList<>();
  private final Paper paper;
  private final EmbeddedFont regular;
  private final EmbeddedFont bold;
  private final FormFields fields;
  private final Stamps stamps;

  OpenDocument(Paper paper, Typeface regularFace, Typeface boldFace) {
    this.paper = paper;
    regular = new EmbeddedFont("R", regularFace, pdf);
    bold = new EmbeddedFont("B", boldFace, pdf);
    resources.put(COSName.getPDFName(regular.name()), regular.font());
    resources.put(COSName.getPDFName(bold.name()), bold.font());
    fields = new FormFields(pdf, paper, tags, regular);
    stamps = new Stamps(pdf, resources, regular);
  }

  Paper paper() {
    return paper;
  }

  EmbeddedFont regular() {
    return regular;
  }

  EmbeddedFont bold() {
    return bold;
  }

  Tags tags() {
    return tags;
  }

  FormFields fields() {
    return fields;
  }

  Stamps stamps() {
    return stamps;
  }

  List<Page> pages() {
    return pages;
  }

  Page newPage() {
    var page = new Page(paper, resources, tags.nextKey());
    pages.add(page);
    return page;
  }

  /** Names the current page in the outline that viewers show beside the pages. */
  void chapter(String title) {
    chapters.add(new Chapter(title, pages.size() - 1));
  }

  /** Writes the file. The same document always gives the same bytes. */
  void save(String title, OutputStream out) throws IOException {
    for (Page page : pages) {
      page.finish(pdf, tags);
    }
    regular.subset();
    bold.subset();
    tags.finish(pdf.getDocumentCatalog());
    fields.finish(pdf.getDocumentCatalog());
    outline();
    Archive.describe(pdf, title);
    pdf.save(out);
  }

  private void outline() {
    if (chapters.isEmpty()) {
      return;
    }
    var outline = new PDDocumentOutline();
    for (Chapter chapter : chapters) {
      var destination = new PDPageFitWidthDestination();
      destination.setPage(pdf.getPage(chapter.page()));
      var item = new PDOutlineItem();
      item.setTitle(chapter.title());
      item.setDestination(destination);
      outline.addLast(item);
    }
    pdf.getDocumentCatalog().setDocumentOutline(outline);
  }

  @Override
  public void close() throws IOException {
    pdf.close();
  }
}

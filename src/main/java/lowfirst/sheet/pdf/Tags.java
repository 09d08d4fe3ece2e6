package lowfirst.sheet.pdf;

import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * The document's structure for screen readers (ISO 32000-1:2008, 14.7 and 14.8): headings,
 * paragraphs, tables with their headers, figures in words, fields by name.
 */
final class Tags {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final Map<Integer, COSBase> parents = new TreeMap<>();
  private final Element document;

  Tags() {
    document = new Element("Document", root.getCOSObject());
    root.setK(document.dictionary);
  }

  /** The element that holds the whole document. */
  Element document() {
    return document;
  }

  /** The next free key of the tree that leads from content back to its element. */
  int nextKey() {
    int key = parents.size();
    parents.put(key, COSInteger.ZERO);
    return key;
  }

  /** Says which element, or elements by marked-content id, the key leads to. */
  void owner(int key, COSBase owner) {
    parents.put(key, owner);
  }

  /** Hangs the finished structure into the document. */
  void finish(PDDocumentCatalog catalog) {
    var numbers = new COSArray();
    parents.forEach(
        (key, owner) -> {
          numbers.add(COSInteger.get(key));
          numbers.add(owner);
        });
    var tree = new COSDictionary();
    tree.setItem(COSName.NUMS, numbers);
    root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
    root.setParentTreeNextKey(parents.size());
    catalog.setStructureTreeRoot(root);
    var info = new PDMarkInfo();
    info.setMarked(true);
    catalog.setMarkInfo(info);
  }

  /** One element: a heading, a cell, a figure. */
  static final class Element {
    private static final COSName MCR = COSName.getPDFName("MCR");
    private static final COSName OBJR = COSName.getPDFName("OBJR");
    private final String type;
    private final COSDictionary dictionary = new COSDictionary();
    private final COSArray kids = new COSArray();

    private Element(String type, COSDictionary parent) {
      this.type = type;
      dictionary.setItem(COSName.TYPE, COSName.getPDFName("StructElem"));
      dictionary.setItem(COSName.S, COSName.getPDFName(type));
      dictionary.setItem(COSName.P, parent);
      dictionary.setItem(COSName.K, kids);
    }

    /** A new last child. */
    Element child(String childType) {
      var child = new Element(childType, dictionary);
      kids.add(child.dictionary);
      return child;
    }

    /** The standard structure type, such as {@code TD}. */
    String type() {
      return type;
    }

    COSDictionary dictionary() {
      return dictionary;
    }

    /** What it shows, in words, for those who can't see it. */
    Element words(String words) {
      dictionary.setString(COSName.ALT, words);
      return this;
    }

    /** Marks a header cell as the header of its column. */
    Element heads() {
      var scope = new COSDictionary();
      scope.setItem(COSName.O, COSName.getPDFName("Table"));
      scope.setItem(COSName.getPDFName("Scope"), COSName.getPDFName("Column"));
      scope.setDirect(true);
      dictionary.setItem(COSName.A, scope);
      return this;
    }

    /** Marked content of a page belongs to this element. */
    void add(COSDictionary page, int markedContentId) {
      if (dictionary.getDictionaryObject(COSName.PG) == null) {
        dictionary.setItem(COSName.PG, page);
      }
      if (dictionary.getDictionaryObject(COSName.PG) == page) {
        kids.add(COSInteger.get(markedContentId));
        return;
      }
      var reference = new COSDictionary();
      reference.setItem(COSName.TYPE, MCR);
      reference.setItem(COSName.PG, page);
      reference.setInt(COSName.MCID, markedContentId);
      reference.setDirect(true);
      kids.add(reference);
    }

    /** A form field of a page belongs to this element. */
    void add(COSDictionary page, COSDictionary widget) {
      var reference = new COSDictionary();
      reference.setItem(COSName.TYPE, OBJR);
      reference.setItem(COSName.PG, page);
      reference.setItem(COSName.OBJ, widget);
      reference.setDirect(true);
      kids.add(reference);
    }
  }
}

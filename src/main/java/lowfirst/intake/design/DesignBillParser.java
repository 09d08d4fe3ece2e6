package lowfirst.intake.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lowfirst.intake.design.DesignData.Bom;
import lowfirst.intake.design.DesignData.BomItem;
import lowfirst.intake.design.DesignData.Characteristic;
import lowfirst.intake.design.DesignData.RefDes;
import lowfirst.intake.xml.XmlCursor.Refused;

/**
 * Takes from an IPC-2581 file what is to be bought: the bills of materials, with what they say of
 * each item, and the numbers of the makers that are approved for it.
 */
final class DesignBillParser {
  private final DesignCursor xml;

  DesignBillParser(DesignCursor xml) {
    this.xml = xml;
  }

  /** Reads the bill of materials at hand. */
  void readBill(List<Bom> boms) throws Refused {
    int depth = xml.depth();
    var bom = new Bom(xml.reference("name"), new ArrayList<>(), new ArrayList<BomItem>());
    boms.add(bom);
    while (xml.next(depth)) {
      if (xml.name().equals("BomItem")) {
        bomItem(bom);
      } else if (xml.name().equals("BomHeader")) {
        stepsOf(bom);
      }
    }
  }

  private void stepsOf(Bom bom) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("StepRef")) {
        bom.steps().add(xml.reference("name"));
      }
    }
  }

  private void bomItem(Bom bom) throws Refused {
    xml.count();
    int depth = xml.depth();
    var item =
        new BomItem(
            xml.spot(),
            xml.reference("OEMDesignNumberRef"),
            xml.attribute("internalPartNumber"),
            xml.attribute("quantity"),
            xml.attribute("description"),
            xml.attribute("category"),
            new ArrayList<>(),
            new ArrayList<>());
    while (xml.next(depth)) {
      if (xml.name().equals("RefDes")) {
        xml.count();
        item.places()
            .add(
                new RefDes(
                    xml.spot(),
                    xml.reference("name"),
                    xml.reference("packageRef"),
                    xml.attribute("populate")));
      } else if (xml.name().equals("Characteristics")) {
        characteristics(item.characteristics());
      }
    }
    bom.items().add(item);
  }

  private void characteristics(List<Characteristic> into) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      xml.count();
      String kind = xml.name().toLowerCase(Locale.ROOT);
      String name = xml.attribute(kind + "CharacteristicName");
      boolean ranged = kind.equals("ranged");
      String value = xml.attribute(kind + "Characteristic" + (ranged ? "LowerValue" : "Value"));
      String upper = ranged ? xml.attribute("rangedCharacteristicUpperValue") : "";
      if (!name.isEmpty() && !(value.isEmpty() && upper.isEmpty())) {
        into.add(
            new Characteristic(
                xml.spot(),
                name,
                value,
                upper,
                xml.attribute("engineeringUnitOfMeasure"),
                xml.attribute("engineeringNegativeTolerance"),
                xml.attribute("engineeringPositiveTolerance")));
      }
    }
  }

  /** Reads the list of approved makers at hand: makers' numbers by design number. */
  void readMakersNumbers(Map<String, String> makersNumbers) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("AvlItem")) {
        avlItem(makersNumbers);
      }
    }
  }

  /** The chosen maker's number of an item, else the first. */
  private void avlItem(Map<String, String> makersNumbers) throws Refused {
    int depth = xml.depth();
    String number = xml.reference("OEMDesignNumber");
    while (xml.next(depth)) {
      if (xml.name().equals("AvlVmpn")) {
        boolean chosen = xml.isTrue("chosen");
        int inside = xml.depth();
        while (xml.next(inside)) {
          if (xml.name().equals("AvlMpn") && !xml.attribute("name").isEmpty()) {
            xml.count();
            String name = xml.attribute("name");
            makersNumbers.merge(number, name, (first, next) -> chosen ? next : first);
          }
        }
      }
    }
  }
}

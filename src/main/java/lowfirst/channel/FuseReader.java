package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartType;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Source;

/** Finds what a channel needs to know of its fuse, in a datasheet or in the BOM. */
final class FuseReader {
  private static final Pattern AMPERES =
      Pattern.compile(
          "(?i)(?:(?<![A-Z0-9.,])|(?<=(?<![A-Z0-9])(?:TT?|FF?|M)))"
              + "(\\d+(?:[.,]\\d+)?)\\s*(m?)A(?![A-Z])");

  private FuseReader() {}

  static PartData fuse(String name, PartType type, Ratings ratings, String bomWords) {
    var data = new ArrayList<Datum>();
    Datum rated = ratings.rated(Term.FUSE_RATING, DatasheetSymbol.IN, line -> true);
    data.add(rated.isKnown() ? rated : ratingInWords(rated, type, bomWords));
    data.add(
        ratings.rated(
            Term.FUSE_VOLTAGE,
            DatasheetSymbol.VN,
            line -> TestCondition.parse(line.condition()).says("DC")));
    data.add(
        ratings.rated(
            Term.FUSE_BREAKING,
            DatasheetSymbol.BREAKING,
            line -> TestCondition.parse(line.condition()).says("DC")));
    data.add(ratings.rated(Term.FUSE_MELTING, DatasheetSymbol.I2T, line -> true));
    String words =
        (bomWords
                + " "
                + ratings.about(DatasheetSymbol.FAMILY).stream()
                    .map(DatasheetLine::condition)
                    .reduce("", (a, b) -> a + " " + b))
            .toUpperCase(Locale.ROOT);
    FuseFamily family = FuseFamily.UNSTATED;
    boolean ul = words.contains("UL 248") || words.contains("UL248");
    boolean iec = words.contains("60127");
    if (ul != iec) {
      family = ul ? FuseFamily.UL_248_14 : FuseFamily.IEC_60127;
    }
    return new PartData(
        PartData.Role.FUSE,
        name,
        type.kind(),
        data,
        OnResistance.unknown(),
        HotFactor.DEFAULT,
        TransientImpedance.unknown(),
        SafeArea.unknown(),
        family);
  }

  private static Datum ratingInWords(Datum absent, PartType type, String bomWords) {
    for (String words : List.of(type.text(), type.typeNumber(), bomWords)) {
      Matcher found = AMPERES.matcher(words);
      if (found.find()) {
        double amps = Double.parseDouble(found.group(1).replace(',', '.'));
        double scale = found.group(2).isEmpty() ? 1 : 1e-3;
        return Datum.of(
            Term.FUSE_RATING, amps * scale, Source.kit("the BOM: \"" + found.group() + "\""));
      }
    }
    return absent;
  }
}

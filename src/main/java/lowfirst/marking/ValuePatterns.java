package lowfirst.marking;

import java.util.regex.Pattern;

/** What a value looks like inside a longer text, form by form; {@link ValueForms} reads them. */
final class ValuePatterns {
  private static final String NUMBER = "(\\d{1,9}(?:[.,]\\d{1,9})?|\\.\\d{1,9})";

  /** Neither letter nor digit before it: BC547 and LM7805 hold no values, 10-30M not one. */
  private static final String STARTS = "(?<![\\p{L}\\p{N}.,_]|\\d[-–])";

  private static final String ENDS = "(?![\\p{L}\\p{N}])(?![.,]\\d)";
  private static final String OHM = "(?:Ω|[Oo][Hh][Mm][Ss]?)";
  private static final String LETTER = "([BCDFGJKM]?)";

  static final Pattern OHMS =
      Pattern.compile(
          STARTS + NUMBER + "\\s*(k|K|M|G|T|m|u|[Mm][Ee][Gg]|[Kk]ilo|)\\s*" + OHM + ENDS);
  static final Pattern R_SUFFIX =
      Pattern.compile(STARTS + NUMBER + "(k|K|M|m|)([Rr]|E(?![+-]\\d))" + LETTER + ENDS);
  static final Pattern RKM_OHMS =
      Pattern.compile(
          STARTS + "(\\d{1,4})([RrKkMGTLE])(\\d{1,3})" + LETTER + "\\s*" + OHM + "?" + ENDS);
  static final Pattern RKM_OHMS_LEADING =
      Pattern.compile(STARTS + "([RKML])(\\d{1,3})" + LETTER + ENDS);
  static final Pattern KILO =
      Pattern.compile(STARTS + NUMBER + "(\\s*)(k|K|M|G|T|[Mm][Ee][Gg])([DFGJKM]?)" + ENDS);

  /** Potentiometers carry their taper, A, B or C, before or after: B10K, 10KB. */
  static final Pattern KILO_WITH_TAPER =
      Pattern.compile(
          "(?:(?<=(?:^|[^\\p{L}\\p{N}])[ABC])"
              + NUMBER
              + "()(k|K|M)()"
              + ENDS
              + "|"
              + STARTS
              + NUMBER
              + "()(k|K|M)()(?=[ABC]"
              + ENDS
              + "))");

  static final Pattern FARADS =
      Pattern.compile(
          STARTS
              + NUMBER
              + "\\s*(uu|mm|MM|p|P|n|N|u|U|m|M|)(?:[Ff]{1,2}|[Ff][Dd]|[Ff]arads?)"
              + ENDS);
  static final Pattern HENRIES =
      Pattern.compile(
          STARTS + NUMBER + "\\s*(p|P|n|N|u|U|m|M|)(?:[Hh]|[Hh]enry|[Hh]enries)" + ENDS);
  static final Pattern RKM_SMALL =
      Pattern.compile(STARTS + "(\\d{0,4})([pPnNuUm])(\\d{1,3})" + LETTER + "([FfHh]?)" + ENDS);
  static final Pattern SMALL =
      Pattern.compile(STARTS + NUMBER + "(\\s*)([pPnNuUm])" + LETTER + ENDS);
  static final Pattern R_AS_POINT =
      Pattern.compile(STARTS + "(\\d{0,3})R(\\d{1,3})" + LETTER + ENDS);

  private ValuePatterns() {}
}

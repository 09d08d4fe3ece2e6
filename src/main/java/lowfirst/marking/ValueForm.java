package lowfirst.marking;

import java.util.regex.Pattern;

/** A form in which a value stands inside a longer text; {@link ValueForms} reads them. */
enum ValueForm {
  OHMS(
      Part.STARTS
          + Part.NUMBER
          + "\\s*(k|K|M|G|T|m|u|[Mm][Ee][Gg]|[Kk]ilo|)\\s*"
          + Part.OHM
          + Part.ENDS),
  R_SUFFIX(Part.STARTS + Part.NUMBER + "(k|K|M|m|)([Rr]|E(?![+-]\\d))" + Part.LETTER + Part.ENDS),
  RKM_OHMS(
      Part.STARTS
          + Part.NO_LETTERS_BEFORE
          + "(\\d{1,4})([RrKkMGTLE])(\\d{1,3})"
          + Part.LETTER
          + "\\s*"
          + Part.OHM
          + "?"
          + Part.ENDS),
  RKM_OHMS_LEADING(Part.STARTS + "([RKML])(\\d{1,3})" + Part.LETTER + Part.ENDS),
  KILO(Part.STARTS + Part.NUMBER + "(\\s*)(k|K|M|G|T|[Mm][Ee][Gg])([DFGJKM]?)" + Part.ENDS),
  /**
   * Potentiometers carry their taper, A, B, C or W, before it, the first three after it: B10K,
   * 10KB.
   */
  KILO_WITH_TAPER(
      "(?:(?<=(?:^|[^\\p{L}\\p{N}])[ABCW])"
          + Part.NUMBER
          + "()(k|K|M)()"
          + Part.ENDS
          + "|"
          + Part.STARTS
          + Part.NUMBER
          + "()(k|K|M)()(?=[ABC]"
          + Part.ENDS
          + "))"),
  FARADS(
      Part.STARTS
          + Part.NUMBER
          + "\\s*(uu|mm|MM|p|P|n|N|u|U|m|M|)(?:[Ff]{1,2}|[Ff][Dd]|[Ff]arads?)"
          + Part.ENDS),
  HENRIES(
      Part.STARTS + Part.NUMBER + "\\s*(p|P|n|N|u|U|m|M|)(?:[Hh]|[Hh]enry|[Hh]enries)" + Part.ENDS),
  RKM_SMALL(
      Part.STARTS + "(\\d{0,4})([pPnNuUm])(\\d{1,3})" + Part.LETTER + "([FfHh]?)" + Part.ENDS),
  SMALL(
      Part.STARTS
          + Part.NO_NUMBER_BEFORE
          + Part.NUMBER
          + "(\\s*)([pPnNuUm])"
          + Part.LETTER
          + Part.ENDS),
  R_AS_POINT(Part.STARTS + "(\\d{0,3})R(\\d{1,3})" + Part.LETTER + Part.ENDS);

  /** What the forms are made of; constants of an enum can't refer to fields of their own. */
  private static final class Part {
    static final String NUMBER = "(\\d{1,9}(?:[.,]\\d{1,9})?|\\.\\d{1,9})";

    /** Neither letter nor digit before it: BC547 and LM7805 hold no values, 10-30M not one. */
    static final String STARTS = "(?<![\\p{L}\\p{N}.,_]|\\d[-–])";

    /** Behind a dash in a maker's number: 18NP-100N. */
    static final String NO_NUMBER_BEFORE = "(?<!\\d\\d\\p{L}{1,3}[-–])";

    /** Letters and a dash, as in a maker's number: NSL-19M51. */
    static final String NO_LETTERS_BEFORE = "(?<!\\p{L}\\p{L}[-–])";

    static final String ENDS = "(?![\\p{L}\\p{N}])(?![.,]\\d)";
    static final String OHM = "(?:Ω|[Oo][Hh][Mm][Ss]?)";
    static final String LETTER = "([BCDFGJKM]?)";
  }

  private final Pattern pattern;

  ValueForm(String expression) {
    this.pattern = Pattern.compile(expression);
  }

  /** What the form looks like. */
  Pattern pattern() {
    return pattern;
  }
}

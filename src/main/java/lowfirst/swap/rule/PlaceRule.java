package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.LogicFamily;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;
import lowfirst.swap.subject.Words;

/** What holds for every kind of part: it must be of a kind that can do the work, and go in. */
public enum PlaceRule implements SwapRule {
  KIND("kind of part", "another kind of part does other work", COMMON_PRACTICE, PlaceRule::kind),
  NUMBER(
      "type number",
      "makers put letters of their own before a number, and behind it what tells package, rank or"
          + " packing",
      COMMON_PRACTICE,
      PlaceRule::number),
  PACKAGE(
      "package",
      "the holes, the heatsink and the solder pads were drawn for a package",
      COMMON_PRACTICE,
      PlaceRule::packageOf),
  PITCH(
      "leads against the holes",
      "leads that must be forced strain the body and lift pads",
      standard("IPC-A-610: component mounting; IPC-7251: hole patterns"),
      PlaceRule::pitch),
  LEAD_THICKNESS(
      "thickness of its leads",
      "a hole is drilled some 0.2 mm wider than the lead it is for; drilled out it has no plating",
      COMMON_PRACTICE,
      PlaceRule::leadThickness),
  BODY_LENGTH(
      "body between its holes",
      "a lead runs at least 0.8 mm straight from the body, then bends by its own thickness",
      standard("IPC-A-610: lead bends; from the body 0.8 mm or one lead diameter"),
      PlaceRule::bodyLength);

  /** Kinds whose leads the builder bends to the holes. */
  private static final Set<PartKind> BENT =
      EnumSet.of(
          PartKind.RESISTOR,
          PartKind.DIODE,
          PartKind.SCHOTTKY_DIODE,
          PartKind.ZENER_DIODE,
          PartKind.INDUCTOR,
          PartKind.WIRE_LINK);

  /** Radial kinds whose leads may be formed by a grid step or so. */
  private static final Set<PartKind> FORMED =
      EnumSet.of(
          PartKind.CERAMIC_CAPACITOR,
          PartKind.FILM_CAPACITOR,
          PartKind.ELECTROLYTIC_CAPACITOR,
          PartKind.TANTALUM_CAPACITOR,
          PartKind.CAPACITOR,
          PartKind.LED,
          PartKind.CRYSTAL);

  private static final Set<PartKind> SWITCHES = EnumSet.of(PartKind.DIODE, PartKind.SCHOTTKY_DIODE);

  /** Kinds whose leads are where the package puts them. */
  private static final Set<PartKind> RIGID =
      EnumSet.of(
          PartKind.MOSFET,
          PartKind.TRANSISTOR,
          PartKind.BIPOLAR_TRANSISTOR,
          PartKind.JFET,
          PartKind.REGULATOR,
          PartKind.OPTOCOUPLER,
          PartKind.DRIVER_ARRAY,
          PartKind.INTEGRATED_CIRCUIT);

  private static final Pattern PACKAGE_NAME =
      Pattern.compile("(?i)TO-?\\d+(?:FP|AB|F)?|(?:P?DI[LP])-?\\d+");

  private static final Pattern TO_220 = Pattern.compile("(?i)^(TO-?220)(?:FP|AB|FM|FI|F)$");
  private static final Pattern DUAL_IN_LINE = Pattern.compile("(?i)^P?DI[LP]-?(\\d+)$");

  /** Several values in the place of one: 2x 10k, 22k || 33k, 10k + 10k in series. */
  private static final Pattern SEVERAL =
      Pattern.compile("(?i)\\bseries\\b|\\bparallel\\b|\\|\\||^\\s*[2-9] ?(?:[x×*]|pcs) ?\\d");

  /** Two holes are the same distance apart when they differ by less than a hole's play. */
  private static final double PLAY_MILLIMETRES = 0.15;

  /** How far radial leads can be formed: one step of the 2.54 mm grid. */
  private static final double FORMING_MILLIMETRES = 2.6;

  private static final double HOLE_PLAY_MILLIMETRES = 0.2;

  private static final Pattern LEADED_PACKAGE =
      Pattern.compile("(?i)(?<![A-Z0-9])(DO-?35|A-?405|DO-?41|DO-?27|DO-?201)(?![0-9])");

  /**
   * The thickest leads of packages, in millimetres: A-405 and DO-41 by Diodes Incorporated DS29002
   * rev. 6, DO-27 and DO-201 by Synsemi 1N5400 - 1N5408 rev. 03, DO-35 by common practice.
   */
  private static final Map<String, Double> THICKEST_LEADS =
      Map.of("DO35", 0.56, "A405", 0.64, "DO41", 0.864, "DO27", 1.32, "DO201", 1.32);

  /** Twice 0.8 mm straight and 0.6 mm of bend. */
  private static final double BENDS_MILLIMETRES = 2.8;

  private final Card card;

  PlaceRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static Optional<Answer> kind(SwapCase swap) {
    PartKind asked = swap.asked().type().kind();
    PartKind offered = swap.offered().type().kind();
    Evidence needs = Evidence.of(asked.words(), Source.kit("the BOM"));
    Evidence gives = Evidence.of(offered.words(), Source.kit("the candidate"));
    boolean isValued = FittedPart.dimension(asked).isPresent();
    if (isValued && SEVERAL.matcher(swap.offered().type().text()).find()) {
      return Optional.of(
          Answer.missing(
              Optional.of(needs),
              Optional.of(gives),
              List.of("what they come to together, as one part: for example \"2k35 5% 0.5W\""),
              "in series resistances add, in parallel their reciprocals; equal parts share the"
                  + " power; and see that they find room and holes"));
    }
    if (offered == PartKind.UNKNOWN) {
      return Optional.of(
          Answer.missing(
              Optional.of(needs), Optional.empty(), List.of(swap.offered().missing("kind")), ""));
    }
    return Optional.of(
        Answer.of(
            mayReplace(asked, offered) ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            needs,
            gives,
            ""));
  }

  /** Whether one kind may at all do the work of another; the kind's own rules then decide. */
  public static boolean mayReplace(PartKind asked, PartKind offered) {
    return asked == offered
        || asked.isCapacitor() && offered.isCapacitor()
        || SWITCHES.contains(asked) && SWITCHES.contains(offered)
        || asked == PartKind.CRYSTAL && offered == PartKind.RESONATOR;
  }

  private static Optional<Answer> number(SwapCase swap) {
    return swap.offered()
        .word("like")
        .filter(like -> LogicFamily.in(swap.offered()).isEmpty())
        .map(
            like ->
                Answer.missing(
                    Optional.empty(),
                    Optional.of(like),
                    List.of(
                        orderCode(swap.offered(), like.word())
                            + "; else its rows in datasheets.csv"),
                    ""));
  }

  /** What to look up of a part whose number has another in it. */
  static String orderCode(SwapPart part, String known) {
    return "whether "
        + part.name()
        + " is but "
        + known
        + " with a maker's letters (its datasheet's table of order codes): then ask for "
        + known;
  }

  private static Optional<Answer> packageOf(SwapCase swap) {
    PartKind kind = swap.asked().type().kind();
    Optional<Evidence> asked = packageAsked(swap.asked());
    Optional<Evidence> offered = packageOffered(swap.offered());
    if (asked.isEmpty() && offered.isEmpty() || !RIGID.contains(kind)) {
      return Optional.empty();
    }
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(Comparison.unknown(swap, "package", asked, offered));
    }
    boolean same =
        Words.same(asked.get().word(), offered.get().word())
            || Words.same(base(asked.get().word()), base(offered.get().word()));
    return Optional.of(
        Answer.of(
            same ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, asked.get(), offered.get(), ""));
  }

  /** What the BOM names counts for more than what a catalogue has from memory. */
  private static Optional<Evidence> packageAsked(SwapPart part) {
    Optional<Evidence> stated = part.word("package");
    boolean known = stated.filter(evidence -> evidence.source().canPass()).isPresent();
    return known ? stated : packageNamed(part).or(() -> stated);
  }

  /** A candidate's package is what its own lines state, even if that is only remembered. */
  private static Optional<Evidence> packageOffered(SwapPart part) {
    return part.word("package").or(() -> packageNamed(part));
  }

  private static Optional<Evidence> packageNamed(SwapPart part) {
    Matcher named = PACKAGE_NAME.matcher(part.type().packageName());
    return named.find()
        ? Optional.of(Evidence.of(named.group(), Source.kit("the BOM's package")))
        : Optional.empty();
  }

  /** The full-plastic and bent-lead forms of a package go into the same holes: TO-220FP. */
  private static String base(String name) {
    return TO_220.matcher(DUAL_IN_LINE.matcher(name).replaceFirst("DIP$1")).replaceFirst("$1");
  }

  private static Optional<Answer> pitch(SwapCase swap) {
    OptionalDouble asked = pitchOf(swap.asked());
    OptionalDouble offered = pitchOf(swap.offered());
    PartKind kind = swap.asked().type().kind();
    if (BENT.contains(kind) || asked.isEmpty() || offered.isEmpty()) {
      return Optional.empty();
    }
    Evidence needs = length(asked.getAsDouble(), "distance of the holes");
    Evidence gives = length(offered.getAsDouble(), "distance of the leads");
    double apart = Math.abs(asked.getAsDouble() - offered.getAsDouble());
    if (apart <= PLAY_MILLIMETRES) {
      return Optional.of(Answer.of(SwapVerdict.FITS, needs, gives, ""));
    }
    if (FORMED.contains(kind) && apart <= FORMING_MILLIMETRES) {
      return Optional.of(
          Answer.missing(
              Optional.of(needs),
              Optional.of(gives),
              List.of("room to form the leads: try it dry"),
              "its leads can be formed if the body leaves room"));
    }
    return Optional.of(Answer.of(SwapVerdict.DOES_NOT_FIT, needs, gives, ""));
  }

  /** Whether its rating says that its body is larger than the one asked for. */
  private static boolean isLarger(SwapCase swap) {
    var asked = swap.asked().type().ratedPower();
    var offered = swap.offered().type().ratedPower();
    return asked.isPresent() && offered.isPresent() && offered.get().compareTo(asked.get()) > 0;
  }

  private static OptionalDouble pitchOf(SwapPart part) {
    Optional<Evidence> stated = part.greatest("pitch");
    if (stated.isPresent()) {
      return OptionalDouble.of(stated.get().quantity().orElseThrow().asDouble());
    }
    return part.outline().map(BodyOutline::pitch).orElse(OptionalDouble.empty());
  }

  private static Evidence length(double millimetres, String what) {
    return Evidence.of(
        Quantity.of(millimetres, Dimension.LENGTH), what, Source.kit("package or text"));
  }

  private static Optional<Answer> leadThickness(SwapCase swap) {
    Optional<Evidence> asked = thickestLead(swap.asked());
    Optional<Evidence> offered = thickestLead(swap.offered());
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.empty();
    }
    double lead = offered.get().quantity().orElseThrow().asDouble();
    double hole = asked.get().quantity().orElseThrow().asDouble() + HOLE_PLAY_MILLIMETRES;
    return Optional.of(
        lead <= hole
            ? Answer.of(SwapVerdict.FITS, asked.get(), offered.get(), "")
            : Answer.missing(
                asked,
                offered,
                List.of("how wide the holes are: try whether its leads go through"),
                "thicker leads than the holes may have been drilled for"));
  }

  private static Optional<Evidence> thickestLead(SwapPart part) {
    String stated = part.word("package").map(Evidence::word).orElse("");
    Matcher named = LEADED_PACKAGE.matcher(part.type().packageName() + " " + stated);
    if (!named.find()) {
      return Optional.empty();
    }
    double lead = THICKEST_LEADS.get(named.group(1).replace("-", "").toUpperCase(Locale.ROOT));
    return Optional.of(length(lead, "leads of " + named.group(1)));
  }

  /** A lying axial body with its two bends must be shorter than the distance of its holes. */
  private static Optional<Answer> bodyLength(SwapCase swap) {
    OptionalDouble holes = pitchOf(swap.asked());
    Optional<Evidence> body = swap.offered().greatest("length");
    if (!BENT.contains(swap.asked().type().kind()) || holes.isEmpty()) {
      return Optional.empty();
    }
    if (body.isEmpty()) {
      return isLarger(swap)
          ? Optional.of(
              Answer.missing(
                  Optional.of(length(holes.getAsDouble(), "distance of the holes")),
                  Optional.empty(),
                  List.of(
                      "its body: measure it; up to "
                          + Quantity.of(holes.getAsDouble() - BENDS_MILLIMETRES, Dimension.LENGTH)
                              .rounded(2)
                          + " lie between the holes"),
                  "a stronger part is a longer part"))
          : Optional.empty();
    }
    double needed = body.get().quantity().orElseThrow().asDouble() + BENDS_MILLIMETRES;
    Evidence needs = length(holes.getAsDouble(), "distance of the holes");
    Evidence gives =
        Evidence.of(
            Quantity.of(needed, Dimension.LENGTH), "body and two bends", body.get().source());
    boolean lies = needed <= holes.getAsDouble() + PLAY_MILLIMETRES;
    return Optional.of(
        Answer.of(
            lies ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            needs,
            gives,
            lies ? "" : "too long to lie between its holes; standing it changes its height"));
  }
}

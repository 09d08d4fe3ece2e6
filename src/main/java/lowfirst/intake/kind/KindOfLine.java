package lowfirst.intake.kind;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;

/** The kind of part that a line of a BOM names, by what its cells say. */
public final class KindOfLine {
  /** What others sit in, whatever the letters of the designator say. */
  private static final Set<PartKind> HOLDERS =
      EnumSet.of(
          PartKind.SOCKET, PartKind.PIN_HEADER, PartKind.SCREW_TERMINAL, PartKind.FUSE_HOLDER);

  private static final Set<PartKind> PLUGS =
      EnumSet.of(PartKind.CONNECTOR, PartKind.PIN_HEADER, PartKind.SCREW_TERMINAL);

  /** What is plugged into a connector, which may be named after it. */
  private static final Set<PartKind> PLUGGED =
      EnumSet.of(
          PartKind.SWITCH,
          PartKind.BUZZER,
          PartKind.BATTERY,
          PartKind.MOTOR,
          PartKind.MICROPHONE,
          PartKind.DISPLAY);

  /** A value that only counts pins. */
  private static final Pattern PINS =
      Pattern.compile("(?i)\\d{1,3}[- ]?(pins?|ways?|pol(?:e|es|ig)?|p)");

  private static final Set<PartKind> SEMICONDUCTORS =
      EnumSet.of(
          PartKind.DIODE,
          PartKind.SCHOTTKY_DIODE,
          PartKind.ZENER_DIODE,
          PartKind.LED,
          PartKind.TRANSISTOR,
          PartKind.BIPOLAR_TRANSISTOR,
          PartKind.JFET,
          PartKind.MOSFET,
          PartKind.REGULATOR,
          PartKind.INTEGRATED_CIRCUIT);

  /** Packages that only circuits have, in which no diode, and hardly a part without letters, is. */
  private static final Pattern CHIP =
      Pattern.compile(
          "(?i)(?:^|[:_ ])(?:[lt]?qfp|qfn|dfn|ssop|tssop|msop|plcc|(?:p?di[pl]|so(?:ic|p)?)[-_]?(?:08|8|14|16|18|20|24|28|40)(?!\\d))");

  /** Only what a hand turns all the time is made with a taper: A10K, 100k log; common practice. */
  private static final Pattern TAPER =
      Pattern.compile(
          "(?iU)(?<!\\w)[ABCW] ?\\d+([.,]\\d+)?[kM]\\d*(?!\\w)|\\d[kM]\\d* ?[ABCW](?!\\w)"
              + "|\\b(lin(ear\\w*|eal|(é|e)aire)?|(anti|rev)?log(ar\\w+)?|audio|taper)\\b");

  private static final Set<PartKind> TURNED =
      EnumSet.of(PartKind.TRIMMER, PartKind.POTENTIOMETER, PartKind.VARISTOR);

  /** A body with four pins or more in a row. */
  private static final Pattern IN_ROW =
      Pattern.compile("(?i)(?<![a-z0-9])si[pl][-_ ]?([4-9]|1\\d)(?![a-z0-9])");

  /** Bodies of potentiometers that a hand turns or pushes: common series, and what they are. */
  private static final Pattern PANEL =
      Pattern.compile(
          "(?i)(?<![a-z0-9])(pt[av]\\d|pc-?16|p09\\w{2}n|rk(09|11|16|27)|rv(09|16|24)|(single_)?slide|dual_(vert|hor)|alps_pot)");

  /** A letter that some give to crystals and others to what plugs in. */
  public static final String EITHER = "X";

  /** Three words at least, which name no package but say what the part is. */
  private static final Pattern PROSE = Pattern.compile("^\\p{L}{3,}\\S* +\\S+ +\\S");

  /** A description that says what kind of part it is, and nothing else. */
  private static final Pattern ONE_WORD = Pattern.compile("\\p{L}+");

  /** Farads or henries: without letters nothing tells. */
  private static final Pattern MICRO = Pattern.compile("[\\d.,]+\\s?[uµμ](?![\\p{L}])");

  /** Before words, a capital alone may be of a name: 3M adhesive feet. */
  private static final Pattern LETTER_OF_WORDS =
      Pattern.compile("(?U)\\d+M +\\p{L}{3,}\\S* +\\p{L}{3,}");

  /** 0.1 µF as IEC 60062 writes it. */
  private static final Pattern LETTER_FIRST = Pattern.compile("[pnuµ]\\d{1,3}");

  private static final Pattern NO_NUMBER = Pattern.compile("[^\\d.,\\s]");

  /** Of a diode the colour alone tells that it is lit. */
  private static final Pattern COLOURS =
      Pattern.compile(
          "(?iU)(red|green|blue|yellow|orange|amber|white|rot|gr(ü|ue)n|blau|gelb|wei(ß|ss)|rouge|verte?|bleue?|jaune"
              + "|roj[oa]|verd[ei]|azul|amarill[oa]|blanc[oa]?|ross[oa]|blu|giall[oa]|bianc[oa]|vermelh[oa]|amarel[oa]|branc[oa]"
              + "|rood|groen|geel|wit|r(ö|ø)d|gr(ö|ø)n|gul|bl(å|ä)|vit|hvid|czerwon[ay]|zielon[ay]|(ż|z)(ó|o)(ł|l)t[ay]|niebiesk[ai]|bia(ł|l)[ay]"
              + "|(č|c)erven(á|a)|zelen(á|a)|(ž|z)lut(á|a)|modr(á|a)|b(í|i)l(á|a)|piros|z(ö|o)ld|s(á|a)rga|k(é|e)k|feh(é|e)r|k(ı|i)rm(ı|i)z(ı|i)|ye(ş|s)il|sar(ı|i)|mavi|beyaz"
              + "|красн\\w+|зел(е|ё)н\\w+|ж(е|ё)лт\\w+|син\\w+|бел\\w+|[红紅绿綠緑黄黃蓝藍青白赤][色光]?|[ /,+-])+");

  private static final Pattern SIZE_OF_LED = Pattern.compile("(?iU)\\bleds?\\b|\\b\\d{1,2} ?mm\\b");

  /** Their numbers may well begin as those of semiconductors do. */
  private static final Set<PartKind> MECHANICAL =
      EnumSet.of(PartKind.CONNECTOR, PartKind.PIN_HEADER, PartKind.SCREW_TERMINAL, PartKind.RELAY);

  private final LineCells cells;
  private final String value;
  private final String number;
  private final String prefix;

  /** What the package name, and the letters of the designators, tell. */
  private final Optional<PartKind> body;

  private final Optional<PartKind> letters;

  /** A circuit's body, which tells more than letters that say little. */
  private final boolean isChip;

  /** Whether the value only counts pins, so that others say what the part is. */
  private final boolean countsPins;

  /** What a column says that does nothing else. */
  private final Optional<PartKind> stated;

  private final PartKindGuess guess = new PartKindGuess();

  private KindOfLine(LineCells cells) {
    this.cells = cells;
    this.value = cells.value();
    this.number = cells.number();
    this.prefix = cells.letters();
    this.body = body(cells);
    this.letters = PartKindWords.byLetters(prefix).map(this::byLetters);
    this.isChip = CHIP.matcher(cells.packageName()).find();
    String kind = cells.kind();
    this.stated = PartKindWords.byName(kind).or(() -> PartKindWords.byWords(kind));
    this.countsPins = value.isEmpty() || PINS.matcher(value).matches();
  }

  /** From one capacitance to another. */
  private static final Pattern FROM_TO =
      Pattern.compile(
          "(?i)(\\d{1,3}(?:[.,]\\d)?)\\s?(?:pf?)?\\s?(?:-|–|~|…|\\.{2,3}|to|bis|à)"
              + "\\s?(\\d{1,3}(?:[.,]\\d)?)\\s?pf?(?!\\w).*");

  /** So many times the least is the most that a trimmer capacitor is turned to, at least. */
  private static final double WIDEST_CHOICE = 2;

  /** What some give the letter of coils. */
  private static final Pattern LAMP =
      Pattern.compile("(?iU)\\b(lamp|neon|light ?bulb|lampe|glühlampe)\\b");

  /** The kind that most speaks for. */
  static PartKind of(LineCells cells) {
    return new KindOfLine(cells).kind();
  }

  private PartKind kind() {
    voteTypeNumbers();
    voteFootprints();
    voteWords();
    voteLetters();
    voteWhatFitsTheLetters();
    PartKind kind = guess.kind();
    if (PartKindGuess.areKin(kind, PartKind.DIODE) && saysPlain()) {
      return PartKind.DIODE;
    }
    return kind == PartKind.UNKNOWN && letters.isEmpty() ? byUnit(cells) : kind;
  }

  /** Whether a type number tells more than words and letters about a narrower kind. */
  private boolean saysPlain() {
    return PartKindWords.isPlain(PartOfLine.withoutModel(value))
        || value.isEmpty() && PartKindWords.isPlain(number);
  }

  private void voteTypeNumbers() {
    boolean mechanical = letters.filter(MECHANICAL::contains).isPresent();
    Predicate<PartKind> likely = kind -> !mechanical || !SEMICONDUCTORS.contains(kind);
    guess.vote(
        PartKindWords.byTypeNumber(PartOfLine.withoutModel(value)).filter(likely),
        PartKindGuess.STRONG);
    guess.vote(PartKindWords.byTypeNumber(number).filter(likely), PartKindGuess.WEAK);
    // among words it may be that of another part, yet tells which of a family this is
    guess.vote(
        PartKindWords.byTypeNumber(value).isPresent()
            ? Optional.empty()
            : DescriptionWords.typeNumberIn(value)
                .flatMap(PartKindWords::byTypeNumber)
                .filter(likely),
        PartKindGuess.WEAKEST);
    if (value.isEmpty() && number.isEmpty()) {
      String words = description().isEmpty() ? cells.otherText() : description();
      guess.vote(
          PartKindWords.byTypeNumber(DescriptionWords.typeNumberIn(words).orElse(words))
              .filter(likely),
          PartKindGuess.WEAK);
    }
  }

  private void voteFootprints() {
    boolean inSocket =
        letters.filter(PartKind.INTEGRATED_CIRCUIT::equals).isPresent()
            && !countsPins
            && PartKindWords.byWords(value).filter(PartKind.SOCKET::equals).isEmpty();
    guess.vote(body.filter(kind -> !inSocket || kind != PartKind.SOCKET), PartKindGuess.STRONG);
    guess.vote(PartKindWords.byFootprint(number), PartKindGuess.WEAK);
  }

  private void voteWords() {
    // A circuit that switches is no switch.
    boolean circuit = isChip && letters.filter(PartKind.INTEGRATED_CIRCUIT::equals).isPresent();
    Optional<PartKind> named =
        PartKindWords.byWords(value).filter(kind -> !circuit || kind != PartKind.SWITCH);
    // A module goes by the number of the circuit on it.
    boolean module = named.filter(PartKind.MODULE::equals).isPresent();
    boolean outside =
        named.filter(PLUGGED::contains).isPresent() && letters.filter(PLUGS::contains).isPresent();
    guess.vote(
        named,
        module ? PartKindGuess.SUREST : outside ? PartKindGuess.WEAKEST : PartKindGuess.STRONG);
    // A type number tells more than the name of a kind.
    boolean numbered = PartKindWords.byTypeNumber(value).isPresent();
    guess.vote(stated, numbered ? PartKindGuess.WEAK : PartKindGuess.SUREST);
    Optional<PartKind> described =
        PartKindWords.byWords(description()).or(() -> PartKindWords.byName(description()));
    boolean holds = countsPins && described.filter(HOLDERS::contains).isPresent();
    boolean plain = ONE_WORD.matcher(description()).matches();
    guess.vote(described, holds || plain ? PartKindGuess.STRONG : PartKindGuess.WEAK);
    if (described.isEmpty() && !number.contains("://")) {
      guess.vote(PartKindWords.byWords(number), PartKindGuess.WEAK);
    }
    guess.vote(PartKindWords.byWords(cells.otherText()), PartKindGuess.WEAK);
    String packageName = cells.packageName();
    if (PROSE.matcher(packageName).find()) {
      guess.vote(PartKindWords.byWords(packageName), PartKindGuess.WEAK);
    }
  }

  /** After the others, since some letters give way to what these say. */
  private void voteLetters() {
    boolean either = prefix.equals(EITHER) && NO_NUMBER.matcher(value + number).find();
    boolean lamp = prefix.equals("L") && cells.texts().stream().anyMatch(KindOfLine::isLamp);
    guess.vote(
        letters.filter(kind -> !lamp && (!either || kind != PartKind.CRYSTAL)), weightOfLetters());
    boolean turned = letters.isEmpty() || letters.get() == PartKind.CAPACITOR;
    guess.vote(
        Optional.of(PartKind.TRIMMER_CAPACITOR).filter(kind -> turned && isTurned(value)),
        PartKindGuess.STRONG);
    if (guess.has(PartKind.DIODE) && COLOURS.matcher(value).matches()) {
      guess.vote(Optional.of(PartKind.LED), PartKindGuess.STRONG);
    }
    if (isChip && isUnheard()) {
      guess.vote(Optional.of(PartKind.INTEGRATED_CIRCUIT), PartKindGuess.WEAKEST);
    } else if (isChip && prefix.equals("D")) {
      guess.vote(Optional.of(PartKind.INTEGRATED_CIRCUIT), PartKindGuess.STRONG);
    }
  }

  /** Whether a text is the type number of a transistor, circuit or the like, but for LEDs. */
  static boolean isSemiconductor(String text) {
    return PartKindWords.byTypeNumber(text)
        .filter(kind -> kind != PartKind.LED && SEMICONDUCTORS.contains(kind))
        .isPresent();
  }

  /** Whether a text names the colour of an LED, and no more than its size beside. */
  static boolean isColour(String text) {
    String left = SIZE_OF_LED.matcher(text).replaceAll("").strip();
    return !left.isEmpty() && COLOURS.matcher(left).matches();
  }

  /** What can be turned from 5 to 180 pF; 22-27p leaves a choice. */
  private static boolean isTurned(String value) {
    Matcher range = FROM_TO.matcher(value);
    return range.matches()
        && Double.parseDouble(range.group(2).replace(',', '.'))
            >= WIDEST_CHOICE * Double.parseDouble(range.group(1).replace(',', '.'));
  }

  private static boolean isLamp(String text) {
    return LAMP.matcher(text).find();
  }

  private int weightOfLetters() {
    // L is an inductor or, to some, a lamp.
    boolean lamp = prefix.equals("L") && guess.has(PartKind.LED);
    boolean sure = prefix.length() == 1 && !lamp && (isChip ? "RCL" : "RCLD").contains(prefix);
    if (sure) {
      return PartKindGuess.SUREST;
    }
    return lamp || prefix.equals(EITHER) ? PartKindGuess.WEAKEST : PartKindGuess.WEAK;
  }

  private void voteWhatFitsTheLetters() {
    // What plugs into a connector may be all that the value says.
    boolean plugs = letters.filter(PLUGS::contains).isPresent();
    guess.vote(body.filter(kind -> plugs && PLUGS.contains(kind)), PartKindGuess.STRONG);
    // 7812 is no value of a trimmer.
    boolean valued =
        letters
                .filter(kind -> stated.isEmpty() || PartKindGuess.areKin(kind, stated.get()))
                .filter(this::isMeasuredAs)
                .isPresent()
            && PartKindWords.byTypeNumber(value).isEmpty();
    guess.vote(valued ? letters : Optional.empty(), PartKindGuess.STRONG);
    // A resistor in the place of a coil: its value is no inductance.
    Optional<PartKind> described = PartKindWords.byWords(description()).filter(kind -> !valued);
    guess.vote(described.filter(this::isMeasuredAs), PartKindGuess.STRONG);
  }

  private boolean isMeasuredAs(PartKind kind) {
    return kind.measures()
        .filter(measured -> WrittenValue.parse(value, Optional.of(measured)).isRead())
        .isPresent();
  }

  private String description() {
    return cells.description();
  }

  private boolean isUnheard() {
    return letters.isEmpty() && !prefix.isEmpty();
  }

  /**
   * What the package name tells. One of a capacitor with a plus may hold a can or a tantalum bead,
   * whose stripes mean the opposite of each other: there the words decide.
   */
  private static Optional<PartKind> body(LineCells cells) {
    return PartKindWords.byFootprint(cells.packageName())
        .map(
            kind ->
                kind == PartKind.ELECTROLYTIC_CAPACITOR && saysTantalum(cells)
                    ? PartKind.TANTALUM_CAPACITOR
                    : kind);
  }

  private static boolean saysTantalum(LineCells cells) {
    return cells.texts().stream()
        .flatMap(cell -> PartKindWords.byWords(cell).stream())
        .anyMatch(PartKind.TANTALUM_CAPACITOR::equals);
  }

  /** What letters mean beside the value and the body: some are used for several kinds. */
  private PartKind byLetters(PartKind usual) {
    return switch (usual) {
      case CRYSTAL ->
          prefix.equals(EITHER) && PINS.matcher(value).matches() ? PartKind.CONNECTOR : usual;
      case RESISTOR_NETWORK ->
          body.filter(PartKind.RESISTOR::equals).isPresent() ? PartKind.RESISTOR : usual;
      case PIN_HEADER ->
          body.filter(PartKind.CONNECTOR::equals).isPresent() ? PartKind.CONNECTOR : usual;
      case TRIMMER ->
          body.isEmpty() && hasTaper() || PANEL.matcher(cells.packageName()).find()
              ? PartKind.POTENTIOMETER
              : turned().orElse(usual);
      // P is a plug and, in Europe, a potentiometer, whose value is a resistance.
      case CONNECTOR ->
          prefix.equals("P") && WrittenValue.showsUnit(value, Dimension.RESISTANCE)
              ? turned().orElse(PartKind.POTENTIOMETER)
              : usual;
      case RESISTOR -> isInRow() ? PartKind.RESISTOR_NETWORK : usual;
      default -> usual;
    };
  }

  /** What words say of letters that stand for all that is turned, and for varistors. */
  private Optional<PartKind> turned() {
    return Stream.of(value, description(), number)
        .flatMap(words -> PartKindWords.byWords(words).stream())
        .filter(TURNED::contains)
        .findFirst()
        .filter(kind -> kind != PartKind.POTENTIOMETER || body.isEmpty() || body.get() == kind);
  }

  /** Resistors in one body with all pins in a row. */
  private boolean isInRow() {
    return cells.texts().stream().anyMatch(cell -> IN_ROW.matcher(cell).find());
  }

  private boolean hasTaper() {
    return TAPER.matcher(value).find() || TAPER.matcher(description()).find();
  }

  /** Where nothing else tells, the unit of the value does. */
  private static PartKind byUnit(LineCells cells) {
    String value = cells.value().isEmpty() ? cells.description() : cells.value();
    if (LETTER_FIRST.matcher(value).matches()) {
      return PartKind.CAPACITOR;
    }
    boolean open =
        cells.letters().isEmpty()
            && (MICRO.matcher(value).lookingAt() || LETTER_OF_WORDS.matcher(value).lookingAt());
    if (value.isEmpty() || !Character.isDigit(value.charAt(0)) || open) {
      return PartKind.UNKNOWN;
    }
    return Stream.of(PartKind.RESISTOR, PartKind.CAPACITOR, PartKind.INDUCTOR)
        .filter(kind -> WrittenValue.showsUnit(value, kind.measures().orElseThrow()))
        .reduce((one, other) -> PartKind.UNKNOWN)
        .orElse(PartKind.UNKNOWN);
  }
}

package lowfirst.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.marking.BandReading.Direction;
import lowfirst.quantity.Tolerance;

/**
 * Reads colour bands by IEC 60062:2016, clause 3, and by the makers' and military customs beside
 * it.
 *
 * <p>The first band is nearest to an end, and never black, since a code's figures start at 10 or
 * 100. A reading needs a digit colour in each figure's place and a tolerance colour in the
 * tolerance's; that alone settles the direction of every four-band code that ends in gold or
 * silver.
 */
public final class ColourCode {

  /** The body that the bands are on. */
  public enum Body {
    RESISTOR,
    /** A moulded axial choke, read in µH: EIA and MIL-C-15305 custom. */
    INDUCTOR
  }

  private static final Tolerance TWENTY_PERCENT = Tolerance.percent("20");
  private static final int MICRO = -6;
  private static final Comparator<BandReading> LIKELIEST_FIRST =
      Comparator.comparingInt(BandReading::unlikeliness);

  private final Edition edition;
  private final List<BandReading> found = new ArrayList<>(4);

  private ColourCode(Edition edition) {
    this.edition = edition;
  }

  /** Every reading of a resistor's bands from either end, by IEC 60062:2016. */
  public static BandDecoding decode(BandSequence bands) {
    return decode(bands, Body.RESISTOR, Edition.IEC_60062_2016);
  }

  /** Every reading of a part's bands from either end. */
  public static BandDecoding decode(BandSequence bands, Body body, Edition edition) {
    var code = new ColourCode(edition);
    code.read(bands, body, Direction.AS_GIVEN);
    if (!bands.isPalindrome()) {
      code.read(bands.reversed(), body, Direction.FROM_THE_OTHER_END);
    }
    return code.decoded(bands);
  }

  /** The readings of a part whose first band is known, from that end only. */
  public static BandDecoding decodeFromStart(BandSequence bands, Body body, Edition edition) {
    var code = new ColourCode(edition);
    code.read(bands, body, Direction.AS_GIVEN);
    return code.decoded(bands);
  }

  private BandDecoding decoded(BandSequence bands) {
    if (found.size() > 1) {
      found.sort(LIKELIEST_FIRST);
    }
    return new BandDecoding(bands, edition, found);
  }

  private void read(BandSequence sequence, Body body, Direction direction) {
    List<Colour> bands = sequence.bands();
    if (body == Body.INDUCTOR) {
      readInductor(bands, direction);
      return;
    }
    switch (bands.size()) {
      case 1 -> readLink(bands, direction);
      case 3 -> add(Layout.THREE, direction, bands, 2, 0, Optional.of(TWENTY_PERCENT));
      case 4 -> readFour(bands, direction);
      case 5 -> readFive(bands, direction);
      case 6 -> readSix(bands, direction);
      default -> {
        // Two bands are no code.
      }
    }
  }

  private void readLink(List<Colour> bands, Direction direction) {
    if (bands.get(0) == Colour.BLACK) {
      found.add(
          new BandReading(Layout.LINK, direction, 0, 0, Optional.empty(), OptionalInt.empty(), ""));
    }
  }

  private void readFour(List<Colour> bands, Direction direction) {
    Colour last = bands.get(3);
    add(Layout.FOUR, direction, bands, 2, 0, last.tolerance(edition));
    if (last == Colour.YELLOW) {
      add(Layout.FOUR_HIGH_VOLTAGE, direction, bands, 2, 0, toleranceOf(Colour.GOLD));
    } else if (last == Colour.GREY) {
      add(Layout.FOUR_HIGH_VOLTAGE, direction, bands, 2, 0, toleranceOf(Colour.SILVER));
    }
  }

  private void readFive(List<Colour> bands, Direction direction) {
    Colour fourth = bands.get(3);
    Colour fifth = bands.get(4);
    add(Layout.FIVE, direction, bands, 3, 0, fifth.tolerance(edition));
    if (fifth == Colour.BLACK || fifth == Colour.WHITE) {
      String extra = fifth == Colour.BLACK ? "wirewound" : "fusible";
      add(Layout.FOUR_AND_SPECIAL, direction, bands, fourth.tolerance(edition), extra);
    }
    if (fourth == Colour.GOLD || fourth == Colour.SILVER) {
      String rate = failureRate(fifth);
      if (!rate.isEmpty()) {
        add(Layout.FOUR_AND_FAILURE_RATE, direction, bands, fourth.tolerance(edition), rate);
      }
    }
  }

  private void readSix(List<Colour> bands, Direction direction) {
    OptionalInt ppm = bands.get(5).ppmPerKelvin();
    Optional<Tolerance> tolerance = bands.get(4).tolerance(edition);
    int figures = figures(bands, 3);
    if (figures >= 0 && tolerance.isPresent() && ppm.isPresent() && isMultiplier(bands.get(3))) {
      int exponent = bands.get(3).exponent();
      found.add(new BandReading(Layout.SIX, direction, figures, exponent, tolerance, ppm, ""));
    }
  }

  /** Letters and rates: NSWC Crane SD-18. Which colour is which letter: from memory. */
  private static String failureRate(Colour colour) {
    return switch (colour) {
      case BROWN -> "failure rate M, 1 % per 1000 h";
      case RED -> "failure rate P, 0.1 % per 1000 h";
      case ORANGE -> "failure rate R, 0.01 % per 1000 h";
      case YELLOW -> "failure rate S, 0.001 % per 1000 h";
      case PINK, SILVER, GOLD, BLACK, GREEN, BLUE, VIOLET, GREY, WHITE -> "";
    };
  }

  private void readInductor(List<Colour> bands, Direction direction) {
    if (bands.size() == 3) {
      add(Layout.INDUCTOR_THREE, direction, bands, 2, MICRO, Optional.of(TWENTY_PERCENT));
    } else if (bands.size() == 4) {
      add(Layout.INDUCTOR_FOUR, direction, bands, 2, MICRO, inductorTolerance(bands.get(3)));
    }
    boolean military = bands.size() == 4 || bands.size() == 5;
    if (military && bands.get(0) == Colour.SILVER) {
      readMilitaryInductor(bands, direction);
    }
  }

  private void readMilitaryInductor(List<Colour> bands, Direction direction) {
    Optional<Tolerance> tolerance =
        bands.size() == 5 ? inductorTolerance(bands.get(4)) : Optional.of(TWENTY_PERCENT);
    Colour second = bands.get(1);
    Colour third = bands.get(2);
    Colour fourth = bands.get(3);
    int exponent;
    int figures;
    if (second == Colour.GOLD) {
      figures = figures(List.of(third, fourth), 2);
      exponent = MICRO - 2;
    } else if (third == Colour.GOLD) {
      figures = figures(List.of(second, fourth), 2);
      exponent = MICRO - 1;
    } else {
      figures = isMultiplier(fourth) ? figures(List.of(second, third), 2) : -1;
      exponent = MICRO + fourth.exponent();
    }
    if (figures >= 0 && tolerance.isPresent()) {
      found.add(
          new BandReading(
              Layout.INDUCTOR_MILITARY,
              direction,
              figures,
              exponent,
              tolerance,
              OptionalInt.empty(),
              ""));
    }
  }

  /** EIA charts for moulded inductors; orange 3 % and yellow 4 % are theirs, not IEC's. */
  private static Optional<Tolerance> inductorTolerance(Colour colour) {
    return switch (colour) {
      case BLACK -> Optional.of(TWENTY_PERCENT);
      case ORANGE -> Optional.of(Tolerance.percent("3"));
      case YELLOW -> Optional.of(Tolerance.percent("4"));
      case SILVER, GOLD, BROWN, RED -> toleranceOf(colour);
      case PINK, GREEN, BLUE, VIOLET, GREY, WHITE -> Optional.empty();
    };
  }

  private static Optional<Tolerance> toleranceOf(Colour colour) {
    return colour.tolerance(Edition.IEC_60062_2016);
  }

  private void add(
      Layout layout,
      Direction direction,
      List<Colour> bands,
      int digits,
      int unitExponent,
      Optional<Tolerance> tolerance) {
    Colour multiplier = bands.get(digits);
    int figures = figures(bands, digits);
    if (figures >= 0 && tolerance.isPresent() && isMultiplier(multiplier)) {
      found.add(
          new BandReading(
              layout,
              direction,
              figures,
              unitExponent + multiplier.exponent(),
              tolerance,
              OptionalInt.empty(),
              ""));
    }
  }

  private void add(
      Layout layout,
      Direction direction,
      List<Colour> bands,
      Optional<Tolerance> tolerance,
      String extra) {
    int figures = figures(bands, 2);
    if (figures >= 0 && tolerance.isPresent() && isMultiplier(bands.get(2))) {
      int exponent = bands.get(2).exponent();
      found.add(
          new BandReading(
              layout, direction, figures, exponent, tolerance, OptionalInt.empty(), extra));
    }
  }

  private boolean isMultiplier(Colour colour) {
    return edition != Edition.OLDER || colour != Colour.PINK;
  }

  /** The first {@code count} bands as one number, or -1 where they aren't figures. */
  private static int figures(List<Colour> bands, int count) {
    int figures = 0;
    for (int i = 0; i < count; i++) {
      int digit = bands.get(i).digit();
      if (digit < 0 || i == 0 && digit == 0) {
        return -1;
      }
      figures = 10 * figures + digit;
    }
    return figures;
  }
}

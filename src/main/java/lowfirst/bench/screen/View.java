package lowfirst.bench.screen;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.assembly.Step;
import lowfirst.bench.web.Request;
import lowfirst.board.Unit;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;

/**
 * How a step is looked at: on which units, from which side, how close.
 *
 * @param unit the one unit in view; empty when all are
 * @param turned whether the board is turned over against what the round asks for
 * @param close whether the map shows only the surroundings of the places
 */
public record View(Optional<String> unit, boolean turned, boolean close) {

  /** The view that a request asks for. */
  public static View of(Request request) {
    String unit = request.field("unit");
    return new View(
        unit.isEmpty() ? Optional.empty() : Optional.of(unit),
        request.field("turned").equals("1"),
        request.field("close").equals("1"));
  }

  /** The units of a step that are in view; all of them when the one asked for has no such step. */
  List<Unit> units(Step step) {
    List<Unit> all = Progress.unitsOf(step);
    List<Unit> one =
        all.stream().filter(known -> unit.filter(known.serial()::equals).isPresent()).toList();
    return one.isEmpty() ? all : one;
  }

  View turnedOver() {
    return new View(unit, !turned, close);
  }

  View closer() {
    return new View(unit, turned, !close);
  }

  View only(Optional<String> serial) {
    return new View(serial, turned, close);
  }

  /** The address of a step seen in this way. */
  public String step(int number) {
    var fields = new ArrayList<String>();
    unit.ifPresent(serial -> fields.add("unit=" + encoded(serial)));
    if (turned) {
      fields.add("turned=1");
    }
    if (close) {
      fields.add("close=1");
    }
    return "/step/" + number + (fields.isEmpty() ? "" : "?" + String.join("&", fields));
  }

  /** The address of one part of one unit. */
  public static String spot(Spot spot) {
    return "/spot/" + encoded(spot.unit().serial()) + "/" + encoded(spot.designator().text());
  }

  /** The address of first power of a unit. */
  public static String power(String serial) {
    return "/power/" + encoded(serial);
  }

  /** One part of an address. */
  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** An address with one more field. */
  public static String with(String address, String name, String value) {
    return address + (address.contains("?") ? "&" : "?") + name + "=" + encoded(value);
  }
}

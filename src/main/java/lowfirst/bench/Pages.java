package lowfirst.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import lowfirst.assembly.Step;
import lowfirst.bench.screen.FoundSteps;
import lowfirst.bench.screen.JobScreens;
import lowfirst.bench.screen.OtherPart;
import lowfirst.bench.screen.PowerScreens;
import lowfirst.bench.screen.Rounds;
import lowfirst.bench.screen.SpotScreens;
import lowfirst.bench.screen.StepScreens;
import lowfirst.bench.screen.View;
import lowfirst.bench.web.Assets;
import lowfirst.bench.web.Pairing;
import lowfirst.bench.web.Request;
import lowfirst.bench.web.Response;
import lowfirst.bench.web.Server;
import lowfirst.bench.web.Templates;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.MeasuredReading;
import lowfirst.progress.NextWork;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sorting.Meter;
import lowfirst.sorting.MeterLimits;
import lowfirst.store.StoreFailure;

/** Every address of the bench: which page it shows, or which change it makes. */
final class Pages implements Server.Pages {
  private final Bench bench;
  private final News news;
  private final Frame frame;
  private final Clock clock;
  private final Optional<Pairing> pairing;
  private final Consumer<RuntimeException> bugs;

  Pages(Bench bench, Clock clock, Optional<Pairing> pairing, Consumer<RuntimeException> bugs) {
    this.bench = bench;
    this.news = new News(bench);
    this.frame = new Frame(bench, pairing);
    this.clock = clock;
    this.pairing = pairing;
    this.bugs = bugs;
  }

  @Override
  public Response answer(Request request) {
    try {
      return Assets.answer(request.path())
          .orElseGet(() -> request.method().equals("POST") ? change(request) : page(request));
    } catch (Changes.Refused refused) {
      return frame.message(request, 400, "That can't be recorded", refused.getMessage());
    }
  }

  @Override
  public void news(Request request, OutputStream stream) throws IOException {
    String seen = request.header("last-event-id").orElse(request.field("seen"));
    news.tell(seen.matches("\\d{1,18}") ? Long.parseLong(seen) : 0, stream);
  }

  @Override
  public Response sorry(RuntimeException failure) {
    if (failure instanceof StoreFailure) {
      return Response.text(503, failure.getMessage());
    }
    bugs.accept(failure);
    return Response.text(500, "This is a bug of ours; the terminal of the bench says more.");
  }

  private Response page(Request request) {
    List<String> path = request.segments();
    String first = path.isEmpty() ? "" : path.get(0);
    return switch (first + "/" + path.size()) {
      case "/0" -> goOn(request, "");
      case "step/2" -> step(request, path.get(1));
      case "spot/3" -> spot(request, path.get(1), path.get(2));
      case "find/1" -> find(request);
      case "job/1" -> frame.show(request, "job", "The whole job", "job", JobScreens.of(progress()));
      case "power/1" -> firstPower(request);
      case "power/2" -> power(request, path.get(1));
      case "device/1" -> frame.show(request, "device", "This device");
      case "meter/1" -> meter(request);
      case "fits/1" -> fits(request);
      case "pair/1" -> pairPage(request, "");
      default -> frame.missing(request);
    };
  }

  private Response change(Request request) {
    var changes = new Changes(request, bench.kit(), progress(), clock);
    return switch (request.path()) {
      case "/tick" -> recorded(request, changes, changes.ticks());
      case "/note" -> recorded(request, changes, changes.notes());
      case "/substitute" -> recorded(request, changes, changes.substitutions());
      case "/undo" -> recorded(request, changes, changes.undos());
      case "/power" -> {
        bench.record(changes.powerReadings());
        yield Response.seeOther(
            View.with(View.power(request.field("unit")), "did", changes.action()));
      }
      case "/device" ->
          People.remembering(Response.seeOther("/device?kept=1"), People.chosen(request));
      case "/pair" -> pair(request);
      default -> frame.missing(request);
    };
  }

  private Progress progress() {
    return bench.now().progress();
  }

  /** Records, then leads on: to the same part from its own page, else to what is due next. */
  private Response recorded(Request request, Changes changes, List<Event> events) {
    bench.record(events);
    if (request.field("from").equals("spot")) {
      Optional<Spot> spot =
          request.fields("spot").stream()
              .flatMap(text -> Rounds.spot(progress(), text).stream())
              .findFirst()
              .or(() -> undoneSpot(changes));
      if (spot.isPresent()) {
        return Response.seeOther(View.with(View.spot(spot.get()), "did", changes.action()));
      }
    }
    return goOn(request, changes.action());
  }

  private Optional<Spot> undoneSpot(Changes changes) {
    List<String> undone =
        progress().log().events().stream()
            .filter(Event.Undo.class::isInstance)
            .map(Event.Undo.class::cast)
            .filter(undo -> undo.id().startsWith(changes.action()))
            .map(Event.Undo::undone)
            .toList();
    return progress().log().events().stream()
        .filter(event -> undone.contains(event.id()))
        .filter(Event.Tick.class::isInstance)
        .map(Event.Tick.class::cast)
        .map(tick -> new Spot(tick.unit(), tick.designators().get(0)))
        .findFirst();
  }

  private Response goOn(Request request, String did) {
    View view = new View(View.of(request).unit(), false, false);
    Predicate<Unit> wanted =
        unit -> view.unit().isEmpty() || view.unit().get().equals(unit.serial());
    Optional<NextWork> next = progress().next(wanted);
    String address = next.map(work -> view.step(work.step().number())).orElse("/job");
    return Response.seeOther(did.isEmpty() ? address : View.with(address, "did", did));
  }

  private Response step(Request request, String number) {
    Optional<Step> step =
        number.matches("\\d{1,6}") ? bench.plan().step(Integer.parseInt(number)) : Optional.empty();
    View view = View.of(request);
    return step.map(
            known ->
                frame.show(
                    request,
                    "step",
                    "Step " + number,
                    "step",
                    StepScreens.of(bench.kit(), bench.sorting(), progress(), known, view),
                    "unit",
                    view.unit().orElse("")))
        .orElseGet(() -> frame.missing(request));
  }

  private Response spot(Request request, String serial, String designator) {
    return progress().records().keySet().stream()
        .filter(known -> known.unit().serial().equals(serial))
        .filter(known -> known.designator().text().equals(designator))
        .findFirst()
        .map(
            known ->
                frame.show(
                    request,
                    "spot",
                    known.toString(),
                    "spot",
                    SpotScreens.of(progress(), known, clock.getZone())))
        .orElseGet(() -> frame.missing(request));
  }

  private Response find(Request request) {
    String asked = People.plain(request.field("q"), 100);
    var found = FoundSteps.in(progress(), asked);
    // A single hit is where the person wants to be.
    return found.hits().size() == 1
        ? Response.seeOther(found.hits().get(0).address())
        : frame.show(request, "find", "Find", "found", found);
  }

  private Response firstPower(Request request) {
    return progress().units().stream()
        .findFirst()
        .map(unit -> Response.seeOther(View.power(unit.serial())))
        .orElseGet(() -> frame.missing(request));
  }

  private Response power(Request request, String serial) {
    return progress().units().stream()
        .filter(unit -> unit.serial().equals(serial))
        .findFirst()
        .map(
            unit ->
                frame.show(
                    request,
                    "power",
                    "First power of " + unit.serial(),
                    "power",
                    PowerScreens.of(
                        bench.kit(), bench.findings(), progress(), unit, clock.getZone())))
        .orElseGet(() -> frame.missing(request));
  }

  /** Judges a reading: the verdict on the first line, its words on the second. */
  private Response meter(Request request) {
    String number = request.field("step");
    String typed = People.plain(request.field("measured"), 40);
    return (number.matches("\\d{1,6}")
            ? bench.plan().step(Integer.parseInt(number))
            : Optional.<Step>empty())
        .flatMap(step -> MeterLimits.of(step.partType(), Meter.of(bench.kit().settings())))
        .map(limits -> MeasuredReading.parse(typed, limits))
        .map(
            reading ->
                reading
                    .value()
                    .map(
                        read ->
                            Response.text(
                                200, read.judgement() + "\n" + ProgressWords.verdict(read)))
                    .orElseGet(() -> Response.text(200, "UNREAD\n" + reading.remedy())))
        .orElseGet(() -> frame.missing(request));
  }

  /** Judges another part for a place: the verdict on the first line, its words on the second. */
  private Response fits(Request request) {
    String fitted = People.plain(request.field("fitted"), 100);
    return Rounds.spot(progress(), request.field("spot"))
        .filter(spot -> !fitted.isEmpty())
        .flatMap(spot -> OtherPart.judged(bench.kit(), spot, fitted))
        .map(finding -> Response.text(200, OtherPart.words(finding)))
        .orElseGet(() -> frame.missing(request));
  }

  private Response pairPage(Request request, String fault) {
    return Response.html(
        fault.isEmpty() ? 200 : 403,
        Templates.page(
            "pair",
            Map.of(
                "shell", frame.shell(request, "Let this device in"),
                "fault", fault,
                "code",
                    People.plain(request.query().getOrDefault("code", List.of("")).get(0), 12))));
  }

  private Response pair(Request request) {
    Optional<String> device = pairing.flatMap(open -> open.admit(request.field("code")));
    return device
        .map(
            secret ->
                Response.seeOther("/")
                    .with(
                        "Set-Cookie",
                        Pairing.COOKIE + "=" + secret + "; Path=/; HttpOnly; SameSite=Strict"))
        .orElseGet(
            () ->
                pairPage(request, "That is not the code that the terminal shows now. Look again."));
  }
}

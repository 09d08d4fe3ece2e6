package lowfirst.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import lowfirst.assembly.Step;
import lowfirst.bench.page.Shell;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.EventLog;
import lowfirst.progress.MeasuredReading;
import lowfirst.progress.NextWork;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.sheet.ProgressWords;
import lowfirst.store.StoreFailure;

/** Every address of the bench: which page it shows, or which change it makes. */
final class Pages implements Server.Pages {
  private final Bench bench;
  private final News news;
  private final Clock clock;
  private final Optional<Pairing> pairing;
  private final Consumer<RuntimeException> bugs;

  Pages(Bench bench, Clock clock, Optional<Pairing> pairing, Consumer<RuntimeException> bugs) {
    this.bench = bench;
    this.news = new News(bench);
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
      return message(request, 400, "That can't be recorded", refused.getMessage());
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
    int length = path.size();
    return switch (first) {
      case "" -> length == 0 ? goOn(request, "") : missing(request);
      case "step" -> length == 2 ? step(request, path.get(1)) : missing(request);
      case "spot" -> length == 3 ? spot(request, path.get(1), path.get(2)) : missing(request);
      case "find" -> length == 1 ? find(request) : missing(request);
      case "job" ->
          length == 1
              ? show(request, "job", "The whole job", "job", JobScreens.of(progress()))
              : missing(request);
      case "power" -> length <= 2 ? power(request, path) : missing(request);
      case "device" -> length == 1 ? show(request, "device", "This device") : missing(request);
      case "meter" -> length == 1 ? meter(request) : missing(request);
      case "fits" -> length == 1 ? fits(request) : missing(request);
      case "pair" -> length == 1 ? pairPage(request, "") : missing(request);
      default -> missing(request);
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
            View.with("/power/" + View.encoded(request.field("unit")), "did", changes.action()));
      }
      case "/device" ->
          People.remembering(Response.seeOther("/device?kept=1"), People.chosen(request));
      case "/pair" -> pair(request);
      default -> missing(request);
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
        return Response.seeOther(
            View.with(StepScreens.spotAddress(spot.get()), "did", changes.action()));
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
                show(
                    request,
                    "step",
                    "Step " + number,
                    "step",
                    StepScreens.of(bench.kit(), bench.sorting(), progress(), known, view),
                    "unit",
                    view.unit().orElse("")))
        .orElseGet(() -> missing(request));
  }

  private Response spot(Request request, String serial, String designator) {
    return progress().records().keySet().stream()
        .filter(known -> known.unit().serial().equals(serial))
        .filter(known -> known.designator().text().equals(designator))
        .findFirst()
        .map(
            known ->
                show(
                    request,
                    "spot",
                    known.toString(),
                    "spot",
                    SpotScreens.of(progress(), known, clock.getZone())))
        .orElseGet(() -> missing(request));
  }

  private Response find(Request request) {
    String asked = People.plain(request.field("q"), 100);
    var found = FoundSteps.in(progress(), asked);
    // A single hit is where the person wants to be.
    return found.hits().size() == 1
        ? Response.seeOther(found.hits().get(0).address())
        : show(request, "find", "Find", "found", found);
  }

  private Response power(Request request, List<String> path) {
    List<Unit> units = progress().units();
    if (path.size() == 1) {
      return units.isEmpty()
          ? missing(request)
          : Response.seeOther("/power/" + View.encoded(units.get(0).serial()));
    }
    return units.stream()
        .filter(unit -> unit.serial().equals(path.get(1)))
        .findFirst()
        .map(
            unit ->
                show(
                    request,
                    "power",
                    "First power of " + unit.serial(),
                    "power",
                    PowerScreens.of(
                        bench.kit(), bench.findings(), progress(), unit, clock.getZone())))
        .orElseGet(() -> missing(request));
  }

  /** Judges a reading: the verdict on the first line, its words on the second. */
  private Response meter(Request request) {
    String number = request.field("step");
    String typed = People.plain(request.field("measured"), 40);
    return (number.matches("\\d{1,6}")
            ? bench.plan().step(Integer.parseInt(number))
            : Optional.<Step>empty())
        .flatMap(step -> StepScreens.limits(bench.kit(), step))
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
        .orElseGet(() -> missing(request));
  }

  /** Judges another part for a place: the verdict on the first line, its words on the second. */
  private Response fits(Request request) {
    String fitted = People.plain(request.field("fitted"), 100);
    return Rounds.spot(progress(), request.field("spot"))
        .filter(spot -> !fitted.isEmpty())
        .flatMap(spot -> OtherPart.judged(bench.kit(), spot, fitted))
        .map(finding -> Response.text(200, OtherPart.words(finding)))
        .orElseGet(() -> missing(request));
  }

  private Response pairPage(Request request, String fault) {
    return Response.html(
        fault.isEmpty() ? 200 : 403,
        Templates.page(
            "pair",
            Map.of(
                "shell", shell(request, "Let this device in"),
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

  private Response missing(Request request) {
    return message(
        request, 404, "Not found", "Nothing of this kit is at that address. Go on, or use Find.");
  }

  private Response message(Request request, int status, String title, String message) {
    return Response.html(
        status,
        Templates.page("message", Map.of("shell", shell(request, title), "message", message)));
  }

  private Response show(Request request, String template, String title, Object... values) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("shell", shell(request, title));
    for (int i = 0; i < values.length; i += 2) {
      all.put((String) values[i], values[i + 1]);
    }
    return Response.html(200, Templates.page(template, all));
  }

  private Shell shell(Request request, String title) {
    Bench.Snapshot now = bench.now();
    boolean inside =
        request.peer() == Request.Peer.THIS_COMPUTER
            || pairing
                .flatMap(open -> request.cookie(Pairing.COOKIE).filter(open::knows))
                .isPresent();
    return new Shell(
        title,
        inside ? bench.kit().settings().title() : "Bench",
        now.sequence(),
        People.of(request),
        inside ? said(request, now.progress()) : "",
        request.path());
  }

  /** What was just done, worded from the record and never from the address. */
  private static String said(Request request, Progress progress) {
    String did = request.field("did");
    if (did.isEmpty()) {
      return request.field("kept").equals("1") ? "Kept on this device." : "";
    }
    List<Event> events =
        progress.log().events().stream()
            .filter(event -> EventLog.actionOf(event.id()).equals(did))
            .toList();
    if (events.isEmpty()) {
      return "Nothing to record: it stands so already.";
    }
    return events.get(0) instanceof Event.Undo undo
        ? "Undone: " + undoneWords(progress, undo)
        : "Recorded – " + Rounds.words(events);
  }

  private static String undoneWords(Progress progress, Event.Undo undo) {
    String action = EventLog.actionOf(undo.undone());
    return Rounds.words(
        progress.log().events().stream()
            .filter(event -> EventLog.actionOf(event.id()).equals(action))
            .toList());
  }
}

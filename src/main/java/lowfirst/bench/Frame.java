package lowfirst.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.bench.page.Shell;
import lowfirst.bench.screen.Rounds;
import lowfirst.bench.web.Pairing;
import lowfirst.bench.web.Request;
import lowfirst.bench.web.Response;
import lowfirst.bench.web.Templates;
import lowfirst.progress.Event;
import lowfirst.progress.EventLog;
import lowfirst.progress.Progress;

/**
 * What every page has around it: its title, the person, what was just done.
 *
 * @param pairing which devices are let in; empty when only this computer is served
 */
record Frame(Bench bench, Optional<Pairing> pairing) {

  /** A page from its template, with the values that this names in pairs. */
  Response show(Request request, String template, String title, Object... values) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("shell", shell(request, title));
    for (int i = 0; i < values.length; i += 2) {
      all.put((String) values[i], values[i + 1]);
    }
    return Response.html(200, Templates.page(template, all));
  }

  /** That there is nothing at an address. */
  Response missing(Request request) {
    return message(
        request, 404, "Not found", "Nothing of this kit is at that address. Go on, or use Find.");
  }

  /** A page of a few words. */
  Response message(Request request, int status, String title, String message) {
    return Response.html(
        status,
        Templates.page("message", Map.of("shell", shell(request, title), "message", message)));
  }

  /** The frame alone, for a page that is answered otherwise. */
  Shell shell(Request request, String title) {
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
        inside ? said(request, now.progress()) : "");
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

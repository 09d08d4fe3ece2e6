package lowfirst.bench.web;

import java.util.Optional;
import java.util.Set;

/**
 * Who may ask at all. A page on the web can make any browser send requests to this computer, under
 * a name that it points here (DNS rebinding) or by posting across sites: so the host must be one
 * that the terminal announced, and a change must come from a page of ours (OWASP, Cross-Site
 * Request Forgery Prevention; RFC 6454).
 *
 * @param hosts the hosts that were announced, each with its port
 * @param pairing who from the network may come in; empty when only this computer may
 */
public record Guard(Set<String> hosts, Optional<Pairing> pairing) {

  public Guard {
    hosts = Set.copyOf(hosts);
  }

  /** Why a request is refused; empty when it may go on. */
  Optional<Response> refusal(Request request) {
    String host = request.header("host").orElse("").toLowerCase(java.util.Locale.ROOT);
    if (!hosts.contains(host)) {
      return Optional.of(
          Response.text(
              421,
              "This bench does not answer to that name; use the address that it"
                  + " printed when it started."));
    }
    if (request.method().equals("POST") && !comesFrom(host, request)) {
      return Optional.of(
          Response.text(403, "A change must come from a page of this bench. Open the page again."));
    }
    if (request.peer() == Request.Peer.NETWORK && !isPaired(request)) {
      boolean pairs = request.path().equals("/pair") || Assets.has(request.path());
      return pairs ? Optional.empty() : Optional.of(Response.seeOther("/pair"));
    }
    return Optional.empty();
  }

  private static boolean comesFrom(String host, Request request) {
    Optional<String> origin = request.header("origin");
    return origin.isPresent() && origin.get().equalsIgnoreCase("http://" + host);
  }

  private boolean isPaired(Request request) {
    return pairing.isPresent()
        && request.cookie(Pairing.COOKIE).filter(pairing.get()::knows).isPresent();
  }
}

package lowfirst.bench.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.bench.web.Request.Peer;
import org.junit.jupiter.api.Test;

class GuardTest {
  private static final String HOST = "192.168.1.20:7460";

  private final List<String> codes = new ArrayList<>();
  private final Pairing pairing = new Pairing(codes::add);
  private final Guard guard = new Guard(Set.of(HOST), Optional.of(pairing));

  @Test
  void a_device_of_the_network_is_sent_to_the_pairing_page_and_sees_nothing_else() {
    Response refusal = guard.refusal(get("/step/1", "")).orElseThrow();
    assertEquals(303, refusal.status());
    assertEquals("/pair", refusal.headers().get("Location"));
    assertTrue(guard.refusal(get("/pair", "")).isEmpty());
    assertTrue(guard.refusal(get("/bench.css", "")).isEmpty());
    assertTrue(guard.refusal(get("/news", "")).isPresent());
  }

  @Test
  void the_code_in_the_terminal_lets_one_device_in_and_then_changes() {
    String code = codes.get(0);
    String secret = pairing.admit(code).orElseThrow();
    assertTrue(guard.refusal(get("/step/1", Pairing.COOKIE + "=" + secret)).isEmpty());
    assertEquals(Optional.empty(), pairing.admit(code));
    assertNotEquals(code, codes.get(1));
    assertTrue(guard.refusal(get("/step/1", Pairing.COOKIE + "=guess")).isPresent());
  }

  @Test
  void guessing_makes_the_code_change() {
    String code = pairing.code();
    for (int guess = 0; guess < 5; guess++) {
      assertEquals(Optional.empty(), pairing.admit("no"));
    }
    assertNotEquals(code, pairing.code());
    assertEquals(Optional.empty(), pairing.admit(code));
  }

  @Test
  void without_a_network_nobody_from_the_network_gets_in() {
    Guard closed = new Guard(Set.of(HOST), Optional.empty());
    assertTrue(closed.refusal(get("/step/1", "")).isPresent());
  }

  @Test
  void a_paired_device_still_has_to_post_from_our_page() {
    String cookie = Pairing.COOKIE + "=" + pairing.admit(codes.get(0)).orElseThrow();
    assertTrue(guard.refusal(request("POST", "/tick", cookie, "http://evil.example")).isPresent());
    assertFalse(guard.refusal(request("POST", "/tick", cookie, "http://" + HOST)).isPresent());
  }

  private static Request get(String path, String cookie) {
    return request("GET", path, cookie, "");
  }

  private static Request request(String method, String path, String cookie, String origin) {
    var headers = new HashMap<>(Map.of("host", HOST, "cookie", cookie));
    if (!origin.isEmpty()) {
      headers.put("origin", origin);
    }
    return new Request(method, path, Map.of(), Map.of(), headers, Peer.NETWORK);
  }
}

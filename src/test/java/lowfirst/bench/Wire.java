package lowfirst.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Speaks HTTP by hand, so that a test can send what no browser would. */
record Wire(int port) {

  /** An answer as it came. */
  record Answer(int status, String head, String body) {
    String header(String name) {
      Matcher line =
          Pattern.compile("(?im)^" + Pattern.quote(name) + ":\\s*(.*?)\\s*$").matcher(head);
      return line.find() ? line.group(1) : "";
    }
  }

  static Wire to(BenchServer server) {
    URI address = server.addresses().get(0);
    return new Wire(address.getPort());
  }

  String host() {
    return "127.0.0.1:" + port;
  }

  Answer get(String path) throws IOException {
    return send("GET " + path + " HTTP/1.1", List.of("Host: " + host()), "");
  }

  /** Posts as a page of the bench would: names and values in turn. */
  Answer post(String path, String... fields) throws IOException {
    return send(
        "POST " + path + " HTTP/1.1",
        List.of(
            "Host: " + host(),
            "Origin: http://" + host(),
            "Content-Type: application/x-www-form-urlencoded"),
        form(fields));
  }

  static String form(String... fields) {
    var pairs = new ArrayList<String>();
    for (int i = 0; i < fields.length; i += 2) {
      pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return String.join("&", pairs);
  }

  Answer send(String requestLine, List<String> headers, String body) throws IOException {
    byte[] content = body.getBytes(StandardCharsets.UTF_8);
    var head = new StringBuilder(requestLine).append("\r\n");
    headers.forEach(header -> head.append(header).append("\r\n"));
    if (content.length > 0) {
      head.append("Content-Length: ").append(content.length).append("\r\n");
    }
    head.append("Connection: close\r\n\r\n");
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(head.toString().getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().write(content);
      socket.getOutputStream().flush();
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      int end = answer.indexOf("\r\n\r\n");
      String answerHead = answer.substring(0, end);
      int status = Integer.parseInt(answerHead.split(" ")[1]);
      return new Answer(status, answerHead, answer.substring(end + 4));
    }
  }

  /** The id of the action that a page brings along. */
  static String action(String page) {
    Matcher field = Pattern.compile("name=\"action\" value=\"([0-9a-f-]{36})\"").matcher(page);
    if (!field.find()) {
      throw new AssertionError("no action on the page: " + page.toLowerCase(Locale.ROOT));
    }
    return field.group(1);
  }
}

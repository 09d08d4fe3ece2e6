package lowfirst.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.URI;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.bench.web.Guard;
import lowfirst.bench.web.Pairing;
import lowfirst.bench.web.Request;
import lowfirst.bench.web.Server;
import lowfirst.board.Kit;
import lowfirst.store.EventStore;

/** The bench page of one kit, being served until it is closed. */
public final class BenchServer implements AutoCloseable {
  private final Bench bench;
  private final Server server;
  private final List<URI> addresses;

  private BenchServer(Bench bench, Server server, List<URI> addresses) {
    this.bench = bench;
    this.server = server;
    this.addresses = addresses;
  }

  /** Who may reach the page. */
  public enum Reach {
    /** Programs on this computer. */
    THIS_COMPUTER,
    /** Devices on the network that were let in by a code. */
    NETWORK
  }

  /**
   * What the server tells the person at the terminal.
   *
   * @param codes each new code that lets one device in
   * @param bugs what went wrong in the program
   */
  public record Terminal(Consumer<String> codes, Consumer<RuntimeException> bugs) {}

  /**
   * Starts to serve; the store is closed with the server.
   *
   * @param port 0 takes a free one
   */
  public static BenchServer start(
      Kit kit,
      AssemblyPlan plan,
      EventStore store,
      Clock clock,
      Reach reach,
      int port,
      Terminal terminal)
      throws IOException {
    InetAddress loopback = InetAddress.getLoopbackAddress();
    boolean open = reach == Reach.NETWORK;
    Optional<Pairing> pairing =
        open ? Optional.of(new Pairing(terminal.codes())) : Optional.empty();
    List<InetAddress> own = open ? ownAddresses() : List.of();
    Bench bench = Bench.open(kit, plan, store);
    var pages = new Pages(bench, clock, pairing, terminal.bugs());
    try {
      warmUp(pages);
      Server server =
          Server.start(
              new InetSocketAddress(open ? InetAddress.getByName("0.0.0.0") : loopback, port),
              taken -> new Guard(hosts(own, taken), pairing),
              pages);
      return new BenchServer(bench, server, addresses(own, server.port()));
    } catch (IOException | RuntimeException failure) {
      bench.close();
      throw failure;
    }
  }

  /** Makes the first pages before anybody asks, so that the first one asked for comes at once. */
  private static void warmUp(Pages pages) {
    for (String path : List.of("/", "/step/1", "/step/2", "/job", "/step/1")) {
      pages.answer(
          new Request("GET", path, Map.of(), Map.of(), Map.of(), Request.Peer.THIS_COMPUTER));
    }
  }

  /** Where the page is: first for this computer, then for the network. */
  public List<URI> addresses() {
    return addresses;
  }

  @Override
  public void close() {
    server.close();
    bench.close();
  }

  private static List<URI> addresses(List<InetAddress> own, int port) {
    var addresses = new ArrayList<URI>(List.of(URI.create("http://127.0.0.1:" + port + "/")));
    own.forEach(
        address ->
            addresses.add(URI.create("http://" + address.getHostAddress() + ":" + port + "/")));
    return List.copyOf(addresses);
  }

  private static Set<String> hosts(List<InetAddress> own, int port) {
    var hosts = new HashSet<String>();
    hosts.add("127.0.0.1:" + port);
    hosts.add("localhost:" + port);
    own.forEach(address -> hosts.add(address.getHostAddress() + ":" + port));
    return hosts;
  }

  /** The IPv4 addresses under which other devices can reach this computer. */
  private static List<InetAddress> ownAddresses() throws IOException {
    var own = new ArrayList<InetAddress>();
    for (NetworkInterface one :
        java.util.Collections.list(NetworkInterface.getNetworkInterfaces())) {
      if (one.isUp() && !one.isLoopback()) {
        one.inetAddresses()
            .filter(address -> address instanceof java.net.Inet4Address)
            .forEach(own::add);
      }
    }
    return own;
  }
}

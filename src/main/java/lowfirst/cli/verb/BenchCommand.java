package lowfirst.cli.verb;

import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.bench.BenchServer;
import lowfirst.bench.BenchServer.Reach;
import lowfirst.board.Kit;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.BatchOptions;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.option.StoreOption;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.store.EventStore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Serves the bench page until the process is stopped. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    header = "a page for the bench, where one step fills the screen",
    description =
        "Serves a page for the tablet, phone or laptop on the bench: one step fills the screen. "
            + "It runs until Ctrl+C; every acknowledged tick is on the disk by then.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:stopped",
      "1:nothing to build",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_NO_PORT,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst bench my-kit",
      "  lowfirst bench my-kit --network    for phones too; each is let in by a code",
      "  lowfirst bench my-kit --port 0     on any free port"
    })
public final class BenchCommand implements Callable<Integer> {
  private static final int USUAL_PORT = 7460;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private KitArgument kit = new KitArgument();
  @Mixin private BatchOptions batches = new BatchOptions();
  @Mixin private StoreOption store = new StoreOption();

  @Option(
      names = "--port",
      paramLabel = "<number>",
      description = "where to listen, usually " + USUAL_PORT + "; 0 takes a free port")
  private int port = USUAL_PORT;

  @Option(
      names = "--network",
      description =
          "also for devices on the network, each let in by a code that stands here. The link is not "
              + "encrypted: use it on a network that you trust.")
  private boolean network;

  /** The verb in these surroundings. */
  public BenchCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (port < 0 || port > 65535) {
      throw new ParameterException(spec.commandLine(), "--port: write a number from 0 to 65535");
    }
    Kit read = kit.read(surroundings).kit();
    AssemblyPlan plan = AssemblyOrder.of(read, batches.options());
    if (plan.batches().isEmpty()) {
      surroundings
          .err()
          .println("nothing in this kit has a place on a board; lowfirst check says why");
      return ExitStatus.FINDINGS;
    }
    EventStore open = store.open(surroundings, kit.directory(surroundings));
    try (BenchServer server = started(read, plan, open)) {
      announce(server);
      new CountDownLatch(1).await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return ExitStatus.OK;
  }

  private BenchServer started(Kit read, AssemblyPlan plan, EventStore open) {
    try {
      return BenchServer.start(
          read,
          plan,
          open,
          surroundings.clock(),
          network ? Reach.NETWORK : Reach.THIS_COMPUTER,
          port,
          new BenchServer.Terminal(this::tellCode, this::tellBug));
    } catch (IOException failure) {
      open.close();
      throw new CannotReadOrWrite(
          failure instanceof BindException
              ? "port "
                  + port
                  + " is taken, perhaps by another bench; stop that one, or say --port 0"
              : "can't listen on port " + port + ": " + failure.getMessage(),
          failure);
    }
  }

  private void announce(BenchServer server) {
    boolean first = true;
    for (URI address : server.addresses()) {
      surroundings
          .out()
          .println((first ? "the bench is at " : "other devices come in at ") + address);
      first = false;
    }
    surroundings.out().flush();
    surroundings.err().println("Ctrl+C stops it.");
    surroundings.err().flush();
  }

  private void tellCode(String code) {
    surroundings.err().println("code for the next device: " + code);
    surroundings.err().flush();
  }

  private void tellBug(RuntimeException bug) {
    surroundings.err().println("lowfirst: this is a bug of ours, please report it:");
    bug.printStackTrace(surroundings.err());
    surroundings.err().flush();
  }
}

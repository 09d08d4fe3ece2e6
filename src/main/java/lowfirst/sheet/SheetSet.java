package lowfirst.sheet;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.KitInputs;
import lowfirst.channel.LoadFindings;
import lowfirst.progress.Progress;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.loads.LoadsDocument;
import lowfirst.sheet.map.BoardMap;
import lowfirst.sheet.power.FirstPowerDocument;
import lowfirst.sheet.power.WiringDocument;
import lowfirst.sheet.progress.SignOffDocument;
import lowfirst.sheet.progress.StepAddress;
import lowfirst.sheet.sort.SortDocument;
import lowfirst.sheet.sort.TrayLabelsDocument;
import lowfirst.sheet.steps.AssemblyBook;
import lowfirst.sheet.steps.StepsDocument;
import lowfirst.sorting.SortPlan;

/** Every sheet of a kit that goes on paper, in the order of the job. */
public final class SheetSet {

  /**
   * One sheet.
   *
   * @param name of its file, without ending: letters, digits, dots, dashes
   * @param orientation how it lies
   * @param document makes what it says, when it is needed
   */
  public record Sheet(String name, Orientation orientation, Supplier<Document> document) {}

  /**
   * What the sheets are made for.
   *
   * @param bodyWidthMillimetres of the upright paper between its margins
   * @param bodyHeightMillimetres of the upright paper between its margins
   * @param compartment size of the tray's compartments
   * @param zone the time zone of the bench
   * @param address what codes beside steps lead to
   */
  public record Options(
      double bodyWidthMillimetres,
      double bodyHeightMillimetres,
      TrayLabelsDocument.Compartment compartment,
      AssemblyOptions assembly,
      ZoneId zone,
      StepAddress address) {}

  private final Kit kit;
  private final Progress progress;
  private final Options options;
  private final List<Sheet> sheets = new ArrayList<>();

  private SheetSet(Kit kit, Progress progress, Options options) {
    this.kit = kit;
    this.progress = progress;
    this.options = options;
  }

  /** The sheets of a kit; a sheet with nothing to say is left out. */
  public static List<Sheet> of(Kit kit, Progress progress, Options options) {
    var set = new SheetSet(kit, progress, options);
    set.sorting();
    set.assembly();
    KitInputs inputs = KitInputs.of(kit);
    LoadFindings findings = LoadFindings.of(inputs);
    set.power(inputs, findings);
    set.signOff(findings);
    return List.copyOf(set.sheets);
  }

  private void add(String name, Orientation orientation, Supplier<Document> document) {
    String wanted = fileName(name);
    int copies = 1;
    String free = wanted;
    while (isTaken(free)) {
      copies++;
      free = wanted + "-" + copies;
    }
    sheets.add(new Sheet(free, orientation, document));
  }

  private boolean isTaken(String name) {
    return sheets.stream().anyMatch(sheet -> sheet.name().equalsIgnoreCase(name));
  }

  /** A name that every file system takes: a board may be called anything. */
  static String fileName(String name) {
    String safe = name.replaceAll("[^\\p{L}\\p{N}._-]+", "-").replaceAll("^[.-]+|[.-]+$", "");
    return safe.length() <= 80 ? safe : safe.substring(0, 80);
  }

  private void sorting() {
    SortPlan plan = SortPlan.of(kit);
    if (plan.lines().isEmpty()) {
      return;
    }
    String title = kit.settings().title();
    add("sort-sheet", Orientation.PORTRAIT, () -> SortDocument.of(plan, title));
    add(
        "tray-labels",
        Orientation.PORTRAIT,
        () ->
            TrayLabelsDocument.of(
                title,
                plan,
                options.compartment(),
                options.bodyWidthMillimetres(),
                options.bodyHeightMillimetres()));
  }

  private void assembly() {
    if (progress.plan().batches().isEmpty()) {
      return;
    }
    add(
        "assembly-steps",
        Orientation.PORTRAIT,
        () -> StepsDocument.illustrated(kit, progress.plan(), options.assembly()));
    for (Board board : boardsBuilt()) {
      Orientation orientation = orientation(board);
      double width =
          orientation == Orientation.PORTRAIT
              ? options.bodyWidthMillimetres()
              : options.bodyHeightMillimetres();
      add(
          "assembly-book-" + board.name(),
          orientation,
          () -> AssemblyBook.of(kit, board, progress, width));
    }
  }

  private List<Board> boardsBuilt() {
    return kit.boards().stream()
        .filter(
            board ->
                progress.plan().batches().stream().anyMatch(b -> b.board().equals(board.name())))
        .toList();
  }

  /** On its side where the board is wider than upright paper. */
  private Orientation orientation(Board board) {
    return BoardMap.widthMillimetres(board) > options.bodyWidthMillimetres()
        ? Orientation.LANDSCAPE
        : Orientation.PORTRAIT;
  }

  private void power(KitInputs inputs, LoadFindings findings) {
    String title = kit.settings().title();
    if (!kit.channels().isEmpty()) {
      add(
          "channel-report",
          Orientation.PORTRAIT,
          () ->
              LoadsDocument.of(
                  title,
                  kit.fingerprint().hexadecimal(),
                  ChannelStudy.of(inputs),
                  findings.sums()));
    }
    if (!kit.rails().isEmpty() || !kit.channels().isEmpty()) {
      add("wiring-list", Orientation.LANDSCAPE, () -> WiringDocument.of(kit, findings));
    }
    for (Board board : boardsBuilt()) {
      for (Unit unit : board.units()) {
        add(
            "first-power-" + unit.serial(),
            Orientation.LANDSCAPE,
            () -> FirstPowerDocument.of(kit, progress.plan(), board, unit, findings));
      }
    }
  }

  private void signOff(LoadFindings findings) {
    for (Board board : boardsBuilt()) {
      for (Unit unit : board.units()) {
        add(
            "sign-off-" + unit.serial(),
            Orientation.LANDSCAPE,
            () ->
                SignOffDocument.of(
                    kit, board, unit, findings, progress, options.zone(), options.address()));
      }
    }
  }
}

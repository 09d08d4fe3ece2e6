package lowfirst.bench.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import lowfirst.assembly.Step;
import lowfirst.bench.page.StepScreen.BoardPicture;
import lowfirst.bench.page.StepScreen.PlaceChip;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Side;
import lowfirst.board.Unit;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Window;
import lowfirst.sheet.html.SvgWriter;
import lowfirst.sheet.map.BoardCloseUp;
import lowfirst.sheet.map.BoardMap;

/** Where a step's parts go: the board as it lies for the round of work, whole and from near. */
record StepMap(Kit kit, Progress progress, Step step, View view) {

  /**
   * The picture of a step.
   *
   * @param places the names below it
   */
  static BoardPicture of(
      Kit kit, Progress progress, Step step, State round, View view, List<PlaceChip> places) {
    return new StepMap(kit, progress, step, view).picture(round, places);
  }

  private BoardPicture picture(State round, List<PlaceChip> places) {
    Optional<Board> found = kit.board(step.board());
    Side worked = round == State.SEATED ? step.side() : step.side().opposite();
    Side seen = view.turned() ? worked.opposite() : worked;
    Optional<Window> window =
        found
            .flatMap(board -> BoardCloseUp.around(board, step.designators(), seen))
            .filter(near -> isWorthwhile(near, found.orElseThrow()));
    return new BoardPicture(
        found.map(board -> map(board, seen, Optional.empty())).orElse(""),
        window.flatMap(near -> found.map(board -> map(board, seen, Optional.of(near)))).orElse(""),
        view.close() ? "swapped" : "",
        (seen == step.side() ? "Component side, " : "Solder side, ")
            + seen.words()
            + (seen == Side.BOTTOM ? ", mirrored as you see it" : ""),
        view.turnedOver().step(step.number()),
        view.closer().step(step.number()),
        places);
  }

  /** Whether looking closer shows much less than the whole board. */
  private static boolean isWorthwhile(Window near, Board board) {
    double seen = near.widthMillimetres() * near.heightMillimetres();
    return board
        .outline()
        .filter(size -> seen > 0.6 * size.widthMillimetres() * size.heightMillimetres())
        .isEmpty();
  }

  /** The whole board, lit places and what is there already, large enough to read in a window. */
  private String map(Board board, Side seen, Optional<Window> window) {
    var lit = new LinkedHashMap<Designator, String>();
    step.spots().forEach(designator -> lit.put(designator, "" + (lit.size() + 1)));
    Unit first = view.units(step).get(0);
    List<Designator> done =
        progress.records().values().stream()
            .filter(record -> record.spot().unit().equals(first))
            .filter(record -> isOnTheBoard(record.state()))
            .map(record -> record.spot().designator())
            .toList();
    double shown =
        window.map(Window::widthMillimetres).orElseGet(() -> BoardMap.widthMillimetres(board));
    Drawing drawing = BoardMap.forScreen(board, lit, done, seen, shown);
    return SvgWriter.write(
        drawing, "Board map of " + board.name(), window.orElse(Window.whole(drawing)));
  }

  private static boolean isOnTheBoard(State state) {
    return state == State.SEATED || state == State.SOLDERED || state == State.INSPECTED;
  }
}

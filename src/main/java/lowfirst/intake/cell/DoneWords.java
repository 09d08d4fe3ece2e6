package lowfirst.intake.cell;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.problem.Excerpt;

/**
 * Words by which a BOM says that somebody else has put a part onto the board; common practice. It
 * counts as to be fitted, so that none is missing, and that is said.
 */
public final class DoneWords {
  /** A longer text is prose, a shorter one says less. */
  private static final int LONGEST = 120;

  private static final int SHORTEST = 8;

  private static final Pattern DONE =
      Pattern.compile(
          "(?iU)\\bpre[- ]?(solder|assembl|fitt|install|mount|populat)ed\\b"
              + "|\\balready (soldered|fitted|assembled|mounted|installed|populated|placed|in place|(on|part of) (the |your )?(pcb|board))\\b"
              + "|\\b(factory|comes?|supplied|delivered|shipped)[- ](soldered|fitted|assembled|mounted|installed|populated)\\b"
              + "|\\b(soldered|fitted|assembled|mounted|populated) (by|at|in) (the )?(factory|fab|manufacturer|maker|supplier)\\b"
              + "|\\bvor(best(ü|ue)ckt|montiert|gel(ö|oe)tet)\\w*|\\b(bereits|schon|ab werk|werkseitig) (auf der platine|(be|ein|auf|ver)?(st(ü|ue)ckt|gel(ö|oe)tet|l(ö|oe)tet|montiert|gebaut))\\w*"
              + "|\\bpr(é|e)[- ]?(soud|mont|assembl|c(â|a)bl)(é|e)e?s?\\b|\\bd(é|e)j(à|a) (soud|mont|plac|install)(é|e)e?s?\\b"
              + "|\\bpre[- ]?(soldad|montad|ensamblad|instalad)[oa]s?\\b|\\b(ya|j(á|a)) (soldad|montad|ensamblad|instalad|colocad)[oa]s?\\b"
              + "|\\bpre[- ]?(saldat|montat|assemblat)[oaie]\\b|\\bgi(à|a) (saldat|montat|assemblat|presente)\\w*"
              + "|\\bvoorge(soldeerd|monteerd)\\b|\\b(reeds|al) ge(soldeerd|monteerd|plaatst)\\b"
              + "|\\b(już|fabrycznie) (w|z|przy)?(lutowan|montowan|amontowan)\\w*|\\bju(ż|z) zamontowan\\w*"
              + "|\\bуже (запаян|припаян|установлен|смонтирован)\\w*|\\b(osazeno|zapájeno) z výroby\\b"
              + "|已(焊接?|贴装?|安装|預焊)|預焊|预焊|実装済み?");

  private DoneWords() {}

  /** The words that say so; empty where none do. */
  public static String in(String text) {
    boolean may = text.length() <= LONGEST && (text.length() >= SHORTEST || isForeign(text));
    Matcher done = DONE.matcher(may ? text : "");
    return done.find() ? Excerpt.of(done.group().strip(), 40) : "";
  }

  private static boolean isForeign(String text) {
    return text.length() > 1 && text.charAt(0) > '\u024f';
  }
}

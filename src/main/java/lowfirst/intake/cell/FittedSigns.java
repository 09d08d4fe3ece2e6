package lowfirst.intake.cell;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** The words and signs by which a cell says that a part is fitted or not; common practice. */
public final class FittedSigns {
  private static final Set<String> YES =
      Set.of(
          "yes",
          "y",
          "true",
          "1",
          "x",
          "fitted",
          "fit",
          "mounted",
          "populated",
          "ja",
          "j",
          "oui",
          "o",
          "si",
          "sí",
          "s",
          "ok",
          "✓",
          "✔",
          "+",
          "place",
          "assemble",
          "bestückt",
          "tak",
          "ano",
          "sim",
          "sì",
          "да",
          "так",
          "evet",
          "igen",
          "takılı",
          "montado",
          "montato",
          "monté",
          "geplaatst",
          "monterad",
          "monteret",
          "montert",
          "asennettu",
          "osazeno",
          "beültetve",
          "beültetett",
          "是",
          "有");

  private static final Set<String> NO =
      Set.of(
          "no",
          "n",
          "false",
          "0",
          "-",
          "nein",
          "non",
          "not fitted",
          "not mounted",
          "none",
          "✗",
          "✘",
          "excluded",
          "exclude",
          "unpopulated",
          "nee",
          "nie",
          "ne",
          "não",
          "нет",
          "否",
          "無",
          "无");

  /** By itself in a cell; elsewhere it may be anything. */
  private static final String ABBREVIATION = "nf|nm|nb|np|n/[fmp]";

  /** No, and a verb for what is done with a part, language by language. */
  private static final String WORDS =
      String.join(
          "|",
          "dnf|dnp|dni|dns|n\\.\\s?[fmbp]\\.|no[ -]?(pop|fit|stuff|load)|un(populated|stuffed|mounted|fitted)",
          "(do[ -]not|don['’]?t)[ -](fit|place|populate|mount|install|stuff|solder|load|assemble|insert)",
          "not[ -](fit|(fitt|populat|mount|plac|install|stuff|load|assembl|solder|insert)ed)",
          "(nicht|ohne) (best(ü|ue)ck|montier|verbau|eingebau|einbau|(ein)?gel(ö|oe)te|einl(ö|oe)te)\\w*|unbest(ü|ue)ckt",
          "(non|pas|ne pas) (mont|implant|soud|(é|e)quip|plac|install|c(â|a)bl|peupl)(é|e|er|(é|e)e?s?)",
          "(no|n(ã|a)o|sin) (mont|pobl|popul|instal|coloc|sold|ensambl|equip)(ar|ad[oa]s?)",
          "non? (mont|install|popol|sald|inser|equip)(are|ire|at[oaie]|it[oaie])",
          "niet (ge)?(plaats|monteer|monter|bestuk|soldeer|solder)\\w*",
          "(nie[ -]?)(montow|montuj|zamontow|obsadz|wlutow|lutow)\\w*|(ne|bez )(osazen|osazov|osad|mont(á|a)(ž|z)|montov|zapojov)\\w*",
          "(ej|inte|ikke|ikkje) (monter|bestyck|bestykk|lodd|l(ö|o)d|placer|plasser)\\w*|ei (asenne|kalust|juote|ladot)\\w*",
          "tak[ıi]l(ı|i) (de(ğ|g)il)|tak[ıi]l(ma|may)\\w*|(monte|dizili|lehimli) de(ğ|g)il|monte edilme\\w*|lehimlenme\\w*",
          "(nem|ne|nincs) (be)?((ü|u)ltet|(é|e)p(í|i)t|szerel|forraszt)\\w*|(be)?(ü|u)ltetetlen|ne(montat|plantat|echipat)\\w*|nu se (monteaz|planteaz)\\w*",
          "(не|нe) ?(устан|монтир|монтуй|монтув|запаив|припаив|паять|паяти|ставить|ставити|встановл|впаив)\\w*|без (монтажа|установки)",
          "δεν τοποθετ\\w*|χωρίς τοποθέτηση");

  /** Between such signs nothing parts words. */
  private static final String UNSPACED =
      "未実装|非実装|不実装|実装(しない|なし|せず)|不[贴貼焊装裝插]接?|未[贴貼焊装裝]|不安[装裝]|不上件|空[贴貼]|미실장|미삽|미장착|실장 ?안 ?함";

  private static final Pattern NOT_FITTED =
      Pattern.compile(
          "(?iU)^(?:"
              + ABBREVIATION
              + ")$|(?<![^\\s(\\[/,;*_])(?:"
              + WORDS
              + ")(?![^\\s)\\]/,;.:*_])|"
              + UNSPACED);

  private static final Pattern OPTIONAL =
      Pattern.compile(
          "(?iU)\\b(op[tcz]ional(e|mente)?|optionnel|optioneel|opcjonaln\\w*|opt\\.?)(\\W|$)");

  /** A longer text is prose. */
  private static final int LONGEST = 60;

  private FittedSigns() {}

  /** Whether a cell about fitting means yes. */
  public static boolean isYes(String text) {
    return YES.contains(text.toLowerCase(Locale.ROOT));
  }

  /** Whether a cell about fitting means no. */
  public static boolean isNo(String text) {
    return NO.contains(text.toLowerCase(Locale.ROOT));
  }

  /** Whether a cell about fitting leaves it to the builder. */
  public static boolean isOptional(String text) {
    return OPTIONAL.matcher(text).find();
  }

  /** Whether a text says that the part is not fitted, and nothing else. */
  public static boolean leaveOutOnly(String text) {
    return NOT_FITTED.matcher(text).matches();
  }

  /** Whether a text about whatever says that the part is not fitted. */
  public static boolean leaveOut(String text) {
    return NOT_FITTED.matcher(text).find();
  }

  /** Whether a cell of a column that nothing is known about says so, short enough for it. */
  public static boolean mayLeaveOut(String text) {
    return text.length() > 1
        && text.length() < LONGEST
        && !isYes(text)
        && (leaveOut(text) || FittingWords.leaveOut(text));
  }

  /** Whether one of the two cells about fitting says that the part is not fitted. */
  public static boolean sayLeftOut(String fitted, String notFitted) {
    return (!notFitted.isEmpty() && !isNo(notFitted))
        || (!fitted.isEmpty()
            && !isYes(fitted)
            && !isOptional(fitted)
            && (isNo(fitted) || mayLeaveOut(fitted)));
  }

  /** Whether a cell says that a part is fitted or not, and nothing else. */
  public static boolean isOne(String text) {
    return isYes(text) || isNo(text) || isOptional(text) || mayLeaveOut(text);
  }
}

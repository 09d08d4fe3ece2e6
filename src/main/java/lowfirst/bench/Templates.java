package lowfirst.bench;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Fills the templates, which were compiled with the program; they escape every text. */
final class Templates {
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, Templates.class.getClassLoader(), "lowfirst.bench.page");

  private Templates() {}

  static String page(String template, Map<String, Object> values) {
    var output = new StringOutput(16 * 1024);
    ENGINE.render(template + ".jte", values, output);
    return output.toString();
  }
}

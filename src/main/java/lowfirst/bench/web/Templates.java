package lowfirst.bench.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.Map;
import lowfirst.sheet.document.Unparted;

/** Fills the templates, which were compiled with the program; they escape every text. */
public final class Templates {
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, Templates.class.getClassLoader(), "lowfirst.bench.page");

  private Templates() {}

  /** The page of a template, with these values in it. */
  public static String page(String template, Map<String, Object> values) {
    var output = new StringOutput(16 * 1024);
    ENGINE.render(template + ".jte", values, new UnpartedOutput(output));
    return output.toString();
  }

  /** Escapes as usual; in what people read, and there alone, no number is parted from its unit. */
  private static final class UnpartedOutput extends OwaspHtmlTemplateOutput {
    private boolean isRead = true;

    UnpartedOutput(TemplateOutput output) {
      super(output);
    }

    @Override
    public void setContext(String tagName, String attributeName) {
      super.setContext(tagName, attributeName);
      isRead = attributeName == null && !"textarea".equals(tagName) && !"option".equals(tagName);
    }

    @Override
    public void writeUserContent(String text) {
      super.writeUserContent(isRead && text != null ? Unparted.joined(text) : text);
    }
  }
}

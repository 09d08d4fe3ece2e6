package lowfirst.sheet.html;

import lowfirst.sheet.Block;
import lowfirst.sheet.Document;

/** Documents as one static HTML file: no script, nothing fetched, everything escaped. */
public final class HtmlWriter implements Block.Writer<String> {
  private static final String STYLE =
      """
      body{font:16px/1.5 'Liberation Sans',Arial,Helvetica,sans-serif;color:#111;background:#fff;
       margin:2rem auto;max-width:70rem;padding:0 1rem}
      h1{border-bottom:2px solid #111;padding-bottom:.3rem}
      table{border-collapse:collapse;margin:1rem 0;width:100%}
      caption{text-align:left;font-weight:bold;padding:.3rem 0}
      th{text-align:left;border-bottom:2px solid #111;padding:.3rem .5rem;vertical-align:bottom}
      td{border-bottom:1px solid #bbb;padding:.3rem .5rem;vertical-align:top}
      .end{text-align:right}
      .caution{border-left:.4rem solid #111;padding:.3rem .8rem;font-weight:bold}
      .field{display:inline-block;min-width:6rem;border-bottom:1px solid #555}
      .scroll{overflow-x:auto}
      dt{font-weight:bold}
      dl{display:grid;grid-template-columns:max-content 1fr;gap:.2rem 1rem}
      dd{margin:0;overflow-wrap:anywhere}
      svg{max-width:100%;height:auto}
      @media print{.new-page{break-before:page}tr{break-inside:avoid}}
      """;

  private HtmlWriter() {}

  /** The document as a whole page. */
  public static String write(Document document) {
    String title = Escaped.of(document.title());
    return "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\""
        + " content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
        + ("<title>" + title + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n")
        + ("<main>\n<h1>" + title + "</h1>\n")
        + (document.subtitle().isBlank() ? "" : "<p>" + Escaped.of(document.subtitle()) + "</p>\n")
        + fragment(document)
        + "</main>\n</body>\n</html>\n";
  }

  /** The document's blocks alone, to stand inside another page; without its title. */
  public static String fragment(Document document) {
    var writer = new HtmlWriter();
    var html = new StringBuilder();
    document.blocks().forEach(block -> html.append(block.fold(writer)));
    return html.toString();
  }

  @Override
  public String heading(Block.Heading heading) {
    String tag = heading.level() <= 2 ? "h2" : "h3";
    return element(tag, Escaped.of(heading.text()));
  }

  @Override
  public String paragraph(Block.Paragraph paragraph) {
    return element("p", broken(paragraph.text()));
  }

  @Override
  public String caution(Block.Caution caution) {
    return "<p class=\"caution\">⚠ Caution: " + broken(caution.text()) + "</p>\n";
  }

  @Override
  public String facts(Block.Facts facts) {
    var html = new StringBuilder("<dl>\n");
    facts
        .facts()
        .forEach(
            fact ->
                html.append("<dt>")
                    .append(Escaped.of(fact.name()))
                    .append("</dt><dd>")
                    .append(broken(fact.text()))
                    .append("</dd>\n"));
    return html.append("</dl>\n").toString();
  }

  @Override
  public String table(Block.Table table) {
    var html = new StringBuilder("<div class=\"scroll\"><table>\n");
    if (!table.caption().isBlank()) {
      html.append(element("caption", Escaped.of(table.caption())));
    }
    html.append("<thead><tr>");
    for (Block.Table.Column column : table.columns()) {
      html.append("<th scope=\"col\"").append(aligned(column)).append('>');
      html.append(Escaped.of(column.header())).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (Block.Table.Row row : table.rows()) {
      html.append("<tr>");
      for (int column = 0; column < row.cells().size(); column++) {
        html.append("<td").append(aligned(table.columns().get(column))).append('>');
        html.append(cell(row.cells().get(column))).append("</td>");
      }
      html.append("</tr>\n");
    }
    return html.append("</tbody>\n</table></div>\n").toString();
  }

  private static String aligned(Block.Table.Column column) {
    return column.align() == Block.Table.Align.END ? " class=\"end\"" : "";
  }

  private static String cell(Block.Cell cell) {
    String text = broken(cell.text());
    String picture = cell.drawing().map(SvgWriter::write).orElse("");
    String gap = picture.isEmpty() || text.isEmpty() ? "" : "<br>";
    return switch (cell.entry()) {
      case NONE -> picture + gap + text;
      case BOX -> "<span role=\"img\" aria-label=\"not ticked\">☐</span>";
      case BOX_TICKED -> "<span role=\"img\" aria-label=\"ticked\">☑</span>";
      case FIELD -> "<span class=\"field\">" + (text.isEmpty() ? "&nbsp;" : text) + "</span>";
    };
  }

  @Override
  public String figure(Block.Figure figure) {
    return "<figure>\n"
        + SvgWriter.write(figure.drawing())
        + element("figcaption", Escaped.of(figure.caption()))
        + "</figure>\n";
  }

  @Override
  public String newPage(Block.NewPage newPage) {
    return "<div class=\"new-page\"></div>\n";
  }

  private static String element(String tag, String content) {
    return "<" + tag + ">" + content + "</" + tag + ">\n";
  }

  private static String broken(String text) {
    return Escaped.of(text).replace("\n", "<br>");
  }
}

package org.setpower.generator;

import java.util.List;
import java.util.stream.Collectors;

/**
 * How the parts of a page are written. Arguments are text in this markup already, but for titles.
 */
interface Markup {
  String ending();

  String text(String plain);

  String title(String plain);

  String heading(String plain, String anchor);

  String paragraph(String text);

  String code(String plain);

  default String entry(String word, String text) {
    return entries(word, List.of(text));
  }

  /** What a word stands for, several times. */
  String entries(String word, List<String> texts);

  String link(String plain, String page, String anchor);

  String table(List<String> head, List<List<String>> rows);

  /** Markdown, for people who read the repository. */
  final class Markdown implements Markup {
    @Override
    public String ending() {
      return ".md";
    }

    @Override
    public String text(String plain) {
      return plain
          .replace("\\", "\\\\")
          .replace("|", "\\|")
          .replace("*", "\\*")
          .replace("_", "\\_")
          .replace("<", "&lt;");
    }

    @Override
    public String title(String plain) {
      return "# " + text(plain) + "\n\n";
    }

    @Override
    public String heading(String plain, String anchor) {
      return "## " + text(plain) + "\n\n";
    }

    @Override
    public String paragraph(String text) {
      return text + "\n\n";
    }

    @Override
    public String code(String plain) {
      return "```\n" + plain + "\n```\n\n";
    }

    @Override
    public String entries(String word, List<String> texts) {
      return texts.size() == 1
          ? "**" + word + "**: " + texts.get(0) + "\n\n"
          : "**" + word + "**:\n\n- " + String.join("\n- ", texts) + "\n\n";
    }

    @Override
    public String link(String plain, String page, String anchor) {
      return "[" + plain + "](" + page + ".md" + (anchor.isEmpty() ? "" : "#" + anchor) + ")";
    }

    @Override
    public String table(List<String> head, List<List<String>> rows) {
      StringBuilder table = new StringBuilder();
      table.append("| ").append(String.join(" | ", head)).append(" |\n");
      table.append("|").append(" --- |".repeat(head.size())).append("\n");
      rows.forEach(r -> table.append("| ").append(String.join(" | ", r)).append(" |\n"));
      return table.append("\n").toString();
    }
  }

  /** HTML, for the handbook in the extension. */
  final class Html implements Markup {
    @Override
    public String ending() {
      return ".html";
    }

    @Override
    public String text(String plain) {
      return PageTemplate.escaped(plain);
    }

    @Override
    public String title(String plain) {
      return "<h1>" + text(plain) + "</h1>\n";
    }

    @Override
    public String heading(String plain, String anchor) {
      return "<h2 id=\"" + anchor + "\">" + text(plain) + "</h2>\n";
    }

    @Override
    public String paragraph(String text) {
      return "<p>" + text + "</p>\n";
    }

    @Override
    public String code(String plain) {
      return "<pre>" + text(plain) + "</pre>\n";
    }

    @Override
    public String entries(String word, List<String> texts) {
      return "<dl><dt>"
          + text(word)
          + "</dt>"
          + texts.stream().map(t -> "<dd>" + t + "</dd>").collect(Collectors.joining())
          + "</dl>\n";
    }

    @Override
    public String link(String plain, String page, String anchor) {
      return "<a href=\""
          + page
          + ".html"
          + (anchor.isEmpty() ? "" : "#" + anchor)
          + "\">"
          + text(plain)
          + "</a>";
    }

    @Override
    public String table(List<String> head, List<List<String>> rows) {
      return "<table>\n<tr>"
          + head.stream().map(h -> "<th>" + h + "</th>").collect(Collectors.joining())
          + "</tr>\n"
          + rows.stream()
              .map(
                  r ->
                      "<tr>"
                          + r.stream().map(c -> "<td>" + c + "</td>").collect(Collectors.joining())
                          + "</tr>\n")
              .collect(Collectors.joining())
          + "</table>\n";
    }
  }
}

package org.setpower.generator;

import java.util.List;
import java.util.stream.Collectors;

/** How the parts of a page are written. Arguments are text in this markup already, but for titles. */
interface Markup {
  String ending();

  String page(String title, String body);

  String text(String plain);

  String title(String plain);

  String heading(String plain, String anchor);

  String paragraph(String text);

  String code(String plain);

  String entry(String word, String text);

  String link(String plain, String page, String anchor);

  String table(List<String> head, List<List<String>> rows);

  /** Markdown, for people who read the repository. */
  final class Markdown implements Markup {
    @Override
    public String ending() {
      return ".md";
    }

    @Override
    public String page(String title, String body) {
      return "<!-- Written by the build from the catalogue of functions: do not edit. -->\n" + body;
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
    public String entry(String word, String text) {
      return "**" + word + "**: " + text + "\n\n";
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

  /** HTML without script or outside file, for the handbook in the extension. */
  final class Html implements Markup {
    private static final String STYLE =
        """
        body{font:16px/1.5 "Liberation Sans",Arial,sans-serif;color:#1E2A2F;background:#fff;\
        max-width:60em;margin:2em auto;padding:0 1em}
        h1,h2{color:#1F5F6B;font-weight:600}h1{font-size:1.6em}
        h2{font-size:1.2em;margin-top:2em;border-top:1px solid #D5DCDE;padding-top:1em}
        table{border-collapse:collapse;width:100%;margin:.8em 0}
        th{background:#E6EFF1;text-align:left}
        td,th{padding:.3em .6em;border-bottom:1px solid #D5DCDE;vertical-align:top}
        pre{background:#F4F7F8;padding:.6em;overflow-x:auto}a{color:#1F5F6B}
        dt{font-weight:600;color:#5A6B70}dl{margin:.3em 0}dd{margin:0 0 0 1.5em}
        @media (prefers-color-scheme:dark){body{background:#14191B;color:#E4EAEC}\
        h1,h2,a{color:#8CC7D1}th,pre{background:#1F2A2E}td,th,h2{border-color:#3A474C}\
        dt{color:#A9B8BD}}
        @media print{body{margin:0;max-width:none;font-size:11pt}h2{break-after:avoid}}
        """;

    @Override
    public String ending() {
      return ".html";
    }

    @Override
    public String page(String title, String body) {
      return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>"
          + text(title)
          + "</title>\n<style>\n"
          + STYLE
          + "</style>\n</head>\n<body>\n"
          + body
          + "</body>\n</html>\n";
    }

    @Override
    public String text(String plain) {
      return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
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
    public String entry(String word, String text) {
      return "<dl><dt>" + text(word) + "</dt><dd>" + text + "</dd></dl>\n";
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
                          + r.stream()
                              .map(c -> "<td>" + c + "</td>")
                              .collect(Collectors.joining())
                          + "</tr>\n")
              .collect(Collectors.joining())
          + "</table>\n";
    }
  }
}

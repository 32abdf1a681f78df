package org.setpower.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Collator;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * The handbook: hand-written pages in the order in which {@code index.md} names them, the function
 * reference, an index of words, and all of it once more on one page for printing and searching.
 */
final class HandbookWriter {
  private final PageTemplate frame;
  private final Map<String, HandbookChapter> chapters;

  /** Reads the pages ({@code *.md}) and the style ({@code style.css}) of a folder. */
  HandbookWriter(Path folder, String version) throws IOException {
    frame = new PageTemplate(Files.readString(folder.resolve("style.css")), version);
    Map<String, HandbookChapter> read = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
        String name = file.getFileName().toString().replaceFirst("\\.md$", "");
        read.put(name, new HandbookChapter(name, Files.readString(file)));
      }
    }
    chapters = new LinkedHashMap<>();
    Stream.concat(Stream.of("index"), read.get("index").links().stream())
        .distinct()
        .forEach(name -> chapters.put(name, present(read, name)));
    Set<String> forgotten = new LinkedHashSet<>(read.keySet());
    forgotten.removeAll(chapters.keySet());
    if (!forgotten.isEmpty()) {
      throw new IllegalStateException("index.md does not link to " + forgotten);
    }
  }

  private static HandbookChapter present(Map<String, HandbookChapter> all, String name) {
    HandbookChapter chapter = all.get(name);
    if (chapter == null) {
      throw new IllegalStateException("index.md links to " + name + ".md, which is not there");
    }
    return chapter;
  }

  /** File names and texts. */
  Map<String, String> files() {
    Map<String, HandbookPage> bodies = new LinkedHashMap<>();
    chapters.forEach((name, chapter) -> bodies.put(name + ".html", chapter.page()));
    HandbookPage contents = bodies.get("index.html");
    bodies.put(
        "index.html",
        new HandbookPage(
            contents.title(), contents.body().replace("<p>{{functions}}</p>", functionGroups())));
    Map<FunctionSpec, List<HandbookChapter.Place>> dangers = dangers();
    FunctionReference.pages(new Markup.Html(), dangers, explained())
        .forEach((name, page) -> bodies.put("functions/" + name + ".html", page));
    bodies.put("words.html", words());

    Map<String, String> files = new LinkedHashMap<>();
    List<String> order = chapters.keySet().stream().map(name -> name + ".html").toList();
    bodies.forEach(
        (name, page) ->
            files.put(
                name,
                frame.page(
                    name.contains("/") ? "../" : "",
                    page,
                    order.contains(name) ? turn(order, name, bodies) : "")));
    files.put("all.html", frame.page("", onOnePage(bodies), ""));
    return files;
  }

  private static String turn(List<String> order, String name, Map<String, HandbookPage> pages) {
    int at = order.indexOf(name);
    StringBuilder turn = new StringBuilder("<nav class=\"turn\">");
    turn.append("<span>");
    if (at > 0) {
      String before = order.get(at - 1);
      turn.append("← ").append(PageTemplate.link(before, pages.get(before).title()));
    }
    turn.append("</span><span>");
    if (at + 1 < order.size()) {
      String next = order.get(at + 1);
      turn.append(PageTemplate.link(next, pages.get(next).title())).append(" →");
    }
    return turn.append("</span></nav>\n").toString();
  }

  private static String functionGroups() {
    StringBuilder table = new StringBuilder("<table>\n<tr><th>Group</th><th>Functions</th></tr>\n");
    for (FunctionRegistry entry : FunctionRegistry.values()) {
      FunctionGroup group = entry.group();
      if (!group.functions().isEmpty()) {
        table
            .append("<tr><td>")
            .append(PageTemplate.link("functions/" + group.prefix() + ".html", group.prefix()))
            .append("<br/>")
            .append(PageTemplate.escaped(group.title()))
            .append("</td><td>")
            .append(
                group.functions().stream()
                    .map(
                        f ->
                            PageTemplate.link(HandbookChapter.address(f), f.name().split("\\.")[1]))
                    .collect(Collectors.joining(" · ")))
            .append("</td></tr>\n");
      }
    }
    return table.append("</table>").toString();
  }

  /** What could hurt somebody, function by function. */
  private Map<FunctionSpec, List<HandbookChapter.Place>> dangers() {
    Map<FunctionSpec, List<HandbookChapter.Place>> dangers = new LinkedHashMap<>();
    for (HandbookChapter chapter : chapters.values()) {
      chapter
          .concerns()
          .forEach(
              (place, functions) ->
                  functions.forEach(
                      f -> dangers.computeIfAbsent(f, key -> new ArrayList<>()).add(place)));
    }
    return dangers;
  }

  /** The page that explains how a group's numbers are worked out. */
  private Map<String, HandbookChapter.Place> explained() {
    Map<String, HandbookChapter.Place> explained = new LinkedHashMap<>();
    for (HandbookChapter chapter : chapters.values()) {
      chapter
          .groups()
          .forEach(
              group ->
                  explained.put(
                      group,
                      new HandbookChapter.Place(chapter.name(), "", chapter.page().title())));
    }
    return explained;
  }

  /** Where a word leads: a text for the link and its address. */
  private record Lead(String text, String address) {}

  private HandbookPage words() {
    Collator order = Collator.getInstance(Locale.ENGLISH);
    Map<String, Set<Lead>> words = new TreeMap<>(order);
    for (HandbookChapter chapter : chapters.values()) {
      String title = chapter.page().title().replaceFirst(":.*", "");
      chapter
          .words()
          .forEach(
              (place, those) -> {
                String text = place.anchor().isEmpty() ? title : title + " ▸ " + place.heading();
                Lead lead = new Lead(text, place.address());
                those.forEach(
                    word -> words.computeIfAbsent(word, w -> new LinkedHashSet<>()).add(lead));
              });
    }
    for (FunctionSpec f : FunctionRegistry.all()) {
      Lead lead = new Lead(f.name(), HandbookChapter.address(f));
      words.computeIfAbsent(f.name(), w -> new LinkedHashSet<>()).add(lead);
      for (Parameter<?> p : f.parameters()) {
        words.computeIfAbsent(p.name() + " (argument)", w -> new LinkedHashSet<>()).add(lead);
      }
    }
    Map<String, StringBuilder> letters = new TreeMap<>();
    words.forEach(
        (word, leads) ->
            letters
                .computeIfAbsent(letter(word), l -> new StringBuilder())
                .append("<li>" + entry(word, leads) + "</li>\n"));
    StringBuilder body = new StringBuilder("<h1>Words A–Z</h1>\n");
    body.append("<p class=\"letters\">");
    letters.keySet().forEach(l -> body.append(PageTemplate.link("#" + l, l)).append(' '));
    body.append("</p>\n<p>To search for any word, open ")
        .append(PageTemplate.link("all.html", "all on one page"))
        .append(" and use the browser's own search (Ctrl+F).</p>\n");
    letters.forEach(
        (letter, list) ->
            body.append("<h2 id=\"" + letter + "\">" + letter + "</h2>\n<ul class=\"words\">\n")
                .append(list)
                .append("</ul>\n"));
    return new HandbookPage("Words A–Z", body.toString());
  }

  /** The word with its links; a word that leads to its own entry is the link. */
  private static String entry(String word, Set<Lead> leads) {
    String links =
        leads.stream()
            .map(l -> PageTemplate.link(l.address(), l.text()))
            .collect(Collectors.joining(", "));
    boolean own = leads.size() == 1 && leads.iterator().next().text().equals(word);
    return own ? links : PageTemplate.escaped(word) + ": " + links;
  }

  private static String letter(String word) {
    String first = word.substring(0, 1).toUpperCase(Locale.ROOT);
    return Character.isLetter(first.charAt(0)) ? first : "0";
  }

  private static final Pattern ADDRESS = Pattern.compile("href=\"([^\"#]*)(?:#([^\"]*))?\"");
  private static final Pattern ANCHOR = Pattern.compile(" id=\"([^\"]*)\"");

  /** Every page as a section; what leads to another page leads to its section. */
  private static HandbookPage onOnePage(Map<String, HandbookPage> pages) {
    Map<String, HandbookPage> shown = new LinkedHashMap<>(pages);
    shown.remove("words.html");
    StringBuilder body = new StringBuilder();
    shown.forEach(
        (name, page) -> {
          String here = section(name);
          String text =
              ANCHOR
                  .matcher(page.body())
                  .replaceAll(m -> " id=\"" + here + "-" + m.group(1) + "\"");
          text =
              ADDRESS
                  .matcher(text)
                  .replaceAll(m -> "href=\"" + within(shown.keySet(), name, m) + "\"");
          body.append("<section id=\"" + here + "\">\n").append(text).append("</section>\n");
        });
    return new HandbookPage("Set Power Sheets: the handbook", body.toString());
  }

  /** Where a link of a page leads on the one page. */
  private static String within(Set<String> shown, String from, MatchResult link) {
    String to =
        link.group(1).isEmpty()
            ? from
            : Path.of(from).resolveSibling(link.group(1)).normalize().toString().replace('\\', '/');
    String anchor = link.group(2);
    if (!shown.contains(to)) {
      return to + (anchor == null ? "" : "#" + anchor);
    }
    return "#" + section(to) + (anchor == null ? "" : "-" + anchor);
  }

  private static String section(String file) {
    return file.replace(".html", "").replace('/', '-');
  }
}

package org.setpower.generator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * A hand-written page: Markdown with tables, raw HTML where a figure needs it, and three kinds of
 * line of our own, each a paragraph that ends with an empty line:
 *
 * <ul>
 *   <li>{@code Index: word; other word} – where these words lead to the heading above
 *   <li>{@code Concerns: CABLE.DROP, FLIGHT.*} – functions that point to the heading above
 *   <li>{@code Groups: CABLE, LOAD} – groups of functions that point to this page
 * </ul>
 *
 * A function's name in code becomes a link; a link to {@code other.md} leads to its HTML page.
 */
final class HandbookChapter {
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder()
          .extensions(List.of(TablesExtension.create()))
          .attributeProviderFactory(
              context ->
                  (node, tag, attributes) -> {
                    if (node instanceof Heading h && h.getLevel() > 1) {
                      attributes.put("id", anchor(h));
                    }
                    if (node instanceof Paragraph p && plain(p).startsWith("Concerns: ")) {
                      attributes.put("class", "concerns");
                    }
                  })
          .build();

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile(
          "(\\d) (%|°C|[kKm]?[VAWΩ]\\b|VA\\b|k?VA\\b|k?Wh\\b|Ah\\b|mm²|m\\b|h\\b|kg\\b|L\\b)");

  private final String name;
  private final Node document;
  private String title = "";
  private final Map<Place, List<String>> words = new LinkedHashMap<>();
  private final Map<Place, List<FunctionSpec>> concerns = new LinkedHashMap<>();
  private final List<String> groups = new ArrayList<>();
  private final List<String> links = new ArrayList<>();

  /** A heading of this page. */
  record Place(String page, String anchor, String heading) {
    String address() {
      return page + ".html" + (anchor.isEmpty() ? "" : "#" + anchor);
    }
  }

  HandbookChapter(String name, String markdown) {
    this.name = name;
    this.document = PARSER.parse(markdown);
    Place place = new Place(name, "", "");
    for (Node node = document.getFirstChild(); node != null; ) {
      Node next = node.getNext();
      if (node instanceof Heading heading) {
        if (heading.getLevel() == 1) {
          title = plain(heading);
        }
        place = new Place(name, heading.getLevel() == 1 ? "" : anchor(heading), plain(heading));
      } else if (node instanceof Paragraph paragraph) {
        take(paragraph, place);
      }
      node = next;
    }
    document.accept(new Linker());
  }

  private void take(Paragraph paragraph, Place place) {
    String text = plain(paragraph);
    if (text.startsWith("Index: ")) {
      words.computeIfAbsent(place, p -> new ArrayList<>()).addAll(list(text, ";"));
      paragraph.unlink();
    } else if (text.startsWith("Groups: ")) {
      groups.addAll(list(text, ","));
      paragraph.unlink();
    } else if (text.startsWith("Concerns: ")) {
      List<FunctionSpec> functions =
          list(text, ",").stream().flatMap(HandbookChapter::named).toList();
      concerns.put(place, functions);
      for (Node old = paragraph.getFirstChild(); old != null; old = paragraph.getFirstChild()) {
        old.unlink();
      }
      paragraph.appendChild(new Text("Concerns: "));
      for (String each : list(text, ",")) {
        paragraph.appendChild(new Code(each));
        paragraph.appendChild(new Text(" "));
      }
    }
  }

  /** {@code CABLE.DROP}, or {@code CABLE.*} for all of a group. */
  private static java.util.stream.Stream<FunctionSpec> named(String pattern) {
    if (pattern.endsWith(".*")) {
      return FunctionRegistry.valueOf(pattern.substring(0, pattern.length() - 2))
          .group()
          .functions()
          .stream();
    }
    return java.util.stream.Stream.of(
        FunctionRegistry.find(pattern)
            .orElseThrow(() -> new IllegalStateException("the handbook names " + pattern)));
  }

  private static List<String> list(String text, String separator) {
    return Arrays.stream(text.substring(text.indexOf(':') + 1).split(separator))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .toList();
  }

  /** The address of a function's entry, seen from the handbook's folder. */
  static String address(FunctionSpec f) {
    return "functions/" + f.group().prefix() + ".html#" + FunctionReference.anchor(f);
  }

  private static String anchor(Heading heading) {
    return plain(heading)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", "-")
        .replaceAll("^-|-$", "");
  }

  private static String plain(Node node) {
    StringBuilder text = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text t) {
            text.append(t.getLiteral());
          }

          @Override
          public void visit(Code c) {
            text.append(c.getLiteral());
          }

          @Override
          public void visit(org.commonmark.node.SoftLineBreak b) {
            text.append(' ');
          }
        });
    return text.toString();
  }

  String name() {
    return name;
  }

  HandbookPage page() {
    return new HandbookPage(title, RENDERER.render(document));
  }

  /** Words of the index by the heading they lead to. */
  Map<Place, List<String>> words() {
    return words;
  }

  /** Functions by the heading that speaks of them. */
  Map<Place, List<FunctionSpec>> concerns() {
    return concerns;
  }

  /** Groups of functions that this page explains. */
  List<String> groups() {
    return groups;
  }

  /** Names of the hand-written pages this page links to, in order. */
  List<String> links() {
    return links;
  }

  /** Turns names of functions into links, links to sources into links to pages. */
  private final class Linker extends AbstractVisitor {
    /** A number stays with its unit. */
    @Override
    public void visit(Text text) {
      text.setLiteral(NUMBER_AND_UNIT.matcher(text.getLiteral()).replaceAll("$1\u00a0$2"));
    }

    @Override
    public void visit(Code code) {
      String text = code.getLiteral();
      String address = "";
      if (text.matches("[A-Z]+\\.[A-Z]+")) {
        address = FunctionRegistry.find(text).map(HandbookChapter::address).orElse("");
      } else if (text.matches("[A-Z]+\\.\\*")) {
        address = "functions/" + text.substring(0, text.length() - 2) + ".html";
      }
      if (!address.isEmpty() && !(code.getParent() instanceof Link)) {
        Link link = new Link(address, null);
        code.insertBefore(link);
        link.appendChild(code);
      }
    }

    @Override
    public void visit(Link link) {
      String to = link.getDestination();
      if (to.matches("[^/:]+\\.md(#.*)?")) {
        links.add(to.replaceFirst("\\.md.*", ""));
        link.setDestination(to.replaceFirst("\\.md", ".html"));
      }
      visitChildren(link);
    }
  }
}

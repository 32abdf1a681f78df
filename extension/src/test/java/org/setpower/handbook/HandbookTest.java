package org.setpower.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.templates.TemplateRegistry;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The handbook as the build wrote it: whole, true, and without anything from elsewhere. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandbookTest {
  private static final List<String> TEMPLATES =
      List.of(
          "Lighting power plan",
          "Battery plan",
          "Power budget",
          "Rental quote",
          "Battery register",
          "Battery travel list");
  private static final Path FOLDER = Path.of("target/generated/handbook");

  private final Map<Path, Document> pages = new TreeMap<>();
  private final Map<Path, String> texts = new TreeMap<>();

  @BeforeAll
  void read() throws Exception {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
        pages.put(
            file, DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile()));
        texts.put(file, Files.readString(file).replace('\u00a0', ' '));
      }
    }
  }

  @Test
  void every_link_leads_somewhere() {
    Map<Path, Set<String>> anchors = new TreeMap<>();
    pages.forEach((file, page) -> anchors.put(file, anchors(page)));
    List<String> dead = new ArrayList<>();
    for (Map.Entry<Path, Document> page : pages.entrySet()) {
      for (Element a : elements(page.getValue(), "a")) {
        String[] to = a.getAttribute("href").split("#", 2);
        Path file =
            to[0].isEmpty() ? page.getKey() : page.getKey().resolveSibling(to[0]).normalize();
        if (!pages.containsKey(file) || (to.length > 1 && !anchors.get(file).contains(to[1]))) {
          dead.add(page.getKey() + ": " + a.getAttribute("href"));
        }
      }
    }
    assertThat(dead).isEmpty();
  }

  @Test
  void an_anchor_is_there_once() {
    pages.forEach(
        (file, page) -> {
          List<String> all =
              elements(page, "*").stream()
                  .map(e -> e.getAttribute("id"))
                  .filter(id -> !id.isEmpty())
                  .toList();
          assertThat(all).as(file.toString()).doesNotHaveDuplicates();
        });
  }

  @Test
  void no_script_runs_and_nothing_is_loaded_from_elsewhere() {
    pages.forEach(
        (file, page) -> {
          for (String tag : List.of("script", "link", "iframe", "object", "embed", "img", "base")) {
            assertThat(elements(page, tag)).as(file + " " + tag).isEmpty();
          }
          for (Element e : elements(page, "*")) {
            for (int i = 0; i < e.getAttributes().getLength(); i++) {
              String name = e.getAttributes().item(i).getNodeName();
              assertThat(name).as(file.toString()).doesNotStartWith("on").isNotEqualTo("src");
            }
          }
          assertThat(texts.get(file)).doesNotContain("@import", "url(", "http:", "https:");
        });
  }

  @Test
  void every_function_is_described_and_can_be_found() {
    String words = texts.get(FOLDER.resolve("words.html"));
    for (FunctionSpec f : FunctionRegistry.all()) {
      Path file = FOLDER.resolve("functions/" + f.group().prefix() + ".html");
      String anchor = f.name().toLowerCase(java.util.Locale.ROOT).replace(".", "");
      assertThat(anchors(pages.get(file))).as(f.name()).contains(anchor);
      assertThat(words).contains(">" + f.name() + "</a>");
    }
  }

  private static Stream<String> shipped() {
    return TemplateRegistry.plans().stream().map(w -> w.workbook().title());
  }

  @Test
  void every_template_has_its_page() {
    String contents = texts.get(FOLDER.resolve("index.html"));
    for (String title : Stream.concat(TEMPLATES.stream(), shipped()).toList()) {
      assertThat(contents).contains(">" + title + "</a>");
    }
  }

  @Test
  void a_sheet_is_called_missing_only_while_it_is() {
    List<String> shipped = shipped().toList();
    for (String title : TEMPLATES) {
      boolean missing =
          texts.values().stream()
              .anyMatch(t -> t.contains("<em>" + title + "</em> is not in this version"));
      assertThat(missing)
          .as("the handbook's page says that " + title + " is not in this version")
          .isEqualTo(!shipped.contains(title));
    }
  }

  @Test
  void hand_written_pages_name_only_functions_that_exist() {
    Pattern name = Pattern.compile("\\b([A-Z]+)\\.[A-Z]+\\b");
    Set<String> groups = new HashSet<>();
    for (FunctionRegistry entry : FunctionRegistry.values()) {
      groups.add(entry.name());
    }
    List<String> unknown = new ArrayList<>();
    texts.forEach(
        (file, text) -> {
          Matcher m = name.matcher(text.substring(text.indexOf("<body>")));
          while (m.find()) {
            if (groups.contains(m.group(1)) && FunctionRegistry.find(m.group()).isEmpty()) {
              unknown.add(file.getFileName() + ": " + m.group());
            }
          }
        });
    assertThat(unknown).isEmpty();
  }

  @Test
  void what_counts_when_an_argument_is_left_out_stands_in_one_table() throws Exception {
    String page = Files.readString(Path.of("src/main/handbook/writing-formulas.md"));
    String section = page.substring(page.indexOf("## What a blank cell does"));
    String table = section.substring(0, section.indexOf("## ", 3));
    for (FunctionSpec function : FunctionRegistry.all()) {
      for (Parameter<?> parameter : function.parameters()) {
        if (parameter.isOptional()) {
          assertThat(table).as(function.name()).contains("`" + parameter.name() + "`");
        }
      }
    }
  }

  @Test
  void who_could_be_hurt_is_warned_at_the_function() {
    String danger = texts.get(FOLDER.resolve("what-could-hurt.html"));
    Matcher concerned =
        Pattern.compile("functions/[A-Z]+\\.html#[a-z]+\"><code>([A-Z.]+)<").matcher(danger);
    Set<String> names = new HashSet<>();
    while (concerned.find()) {
      names.add(concerned.group(1));
    }
    assertThat(names).isNotEmpty();
    assertThat(
            names.stream().filter(n -> FunctionRegistry.find(n).orElseThrow().caution().isEmpty()))
        .as("named in what-could-hurt.md, without a caution of their own")
        .isEmpty();
  }

  private static Set<String> anchors(Document page) {
    Set<String> anchors = new HashSet<>();
    elements(page, "*").forEach(e -> anchors.add(e.getAttribute("id")));
    return anchors;
  }

  private static List<Element> elements(Document page, String tag) {
    NodeList nodes = page.getElementsByTagName(tag);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }
}

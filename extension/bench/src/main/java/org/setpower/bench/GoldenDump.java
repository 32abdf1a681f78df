package org.setpower.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.SAXException;

/**
 * Writes everything that a drawn sheet holds as lines of text, so that two builds can be compared
 * with diff: see extension/bin/golden. Runs from its source file alone, without a build.
 *
 * <p>Names that the office makes up (automatic styles, validations) are replaced by a digest of
 * what they stand for. Cells below each other with the same relative formula are one line. All
 * texts stand in double quotes.
 */
public final class GoldenDump {
  private static final Pattern REFERENCE = Pattern.compile("\\[[^\\]]*\\]");
  private static final Pattern TEXT = Pattern.compile("\"(?:[^\"]|\"\")*+\"");
  private static final Pattern CELL = Pattern.compile("\\.(\\$?)([A-Z]{1,3})(\\$?)([0-9]+)");

  /** The parts of a cell that have a place of their own in its line. */
  private static final Set<String> CELL_ATTRIBUTES =
      Set.of(
          "table:style-name",
          "table:content-validation-name",
          "table:formula",
          "table:number-columns-repeated",
          "office:value-type",
          "calcext:value-type",
          "office:value",
          "office:string-value",
          "office:boolean-value",
          "office:date-value",
          "office:time-value",
          "office:currency");

  /** Times of the build, and what belongs to the machine. */
  private static final Set<String> VOLATILE =
      Set.of("meta:creation-date", "dc:date", "meta:editing-duration", "meta:generator");

  private static final Set<String> MACHINE = Set.of("PrinterSetup", "PrinterName");

  private final Map<String, Element> styles = new HashMap<>();
  private final Map<String, Element> validations = new HashMap<>();
  private final Map<Element, String> digests = new HashMap<>();
  private final Map<String, String> digested = new TreeMap<>();
  private final List<String> lines = new ArrayList<>();
  private final List<String> values = new ArrayList<>();

  private final boolean withTexts;

  private GoldenDump(boolean withTexts) {
    this.withTexts = withTexts;
  }

  /** Arguments: texts or no-texts (… in the place of each), a folder to write to, files. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[1]));
    for (int i = 2; i < arguments.length; i++) {
      GoldenDump dump = new GoldenDump(arguments[0].equals("texts"));
      Path file = Path.of(arguments[i]);
      dump.file(file);
      Files.write(folder.resolve(file.getFileName() + ".txt"), dump.shown(dump.lines));
      Files.write(folder.resolve(file.getFileName() + ".values.txt"), dump.shown(dump.values));
    }
  }

  private List<String> shown(List<String> all) {
    return all.stream().map(this::shown).toList();
  }

  private String shown(String line) {
    return withTexts ? line : TEXT.matcher(line).replaceAll("\"…\"");
  }

  private void file(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      TreeSet<String> names = new TreeSet<>();
      zip.stream().map(ZipEntry::getName).forEach(names::add);
      Map<String, Element> parts = new LinkedHashMap<>();
      for (String name : names) {
        lines.add("part " + quoted(name));
        if (name.endsWith(".xml") && !name.startsWith("META-INF/")) {
          parts.put(name, parse(zip, name));
        }
      }
      Element content = parts.remove("content.xml");
      Element common = parts.remove("styles.xml");
      keep(content);
      keep(common);
      content(content);
      for (Element part : children(common)) {
        if (!part.getTagName().equals("office:automatic-styles")) {
          tree("styles", part);
        }
      }
      digested.forEach((digest, what) -> lines.add("means " + digest + " " + what));
      for (Map.Entry<String, Element> part : parts.entrySet()) {
        other(part.getKey(), part.getValue());
      }
    }
  }

  private static Element parse(ZipFile zip, String name) throws IOException {
    try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(in).getDocumentElement();
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(zip.getName() + ", " + name, e);
    }
  }

  /** A part with names of its own, such as a chart. */
  private void other(String name, Element root) {
    GoldenDump part = new GoldenDump(withTexts);
    part.keep(root);
    for (Element child : children(root)) {
      if (!child.getTagName().equals("office:automatic-styles")) {
        part.tree(name, child);
      }
    }
    lines.addAll(part.lines);
    part.digested.forEach((digest, what) -> lines.add(name + " means " + digest + " " + what));
  }

  /** Keeps what has a name that the office made up. */
  private void keep(Element root) {
    for (Element group : children(root)) {
      boolean automatic = group.getTagName().equals("office:automatic-styles");
      if (automatic || group.getTagName().equals("office:styles")) {
        for (Element style : children(group)) {
          if (automatic || isFormat(style)) {
            styles.put(style.getAttribute("style:name"), style);
          }
        }
      }
    }
  }

  private static boolean isFormat(Element style) {
    return style.getTagName().startsWith("number:");
  }

  // ---- the cells ----

  private void content(Element root) {
    for (Element group : children(root)) {
      if (group.getTagName().equals("office:automatic-styles")) {
        continue;
      }
      if (!group.getTagName().equals("office:body")) {
        tree("content", group);
        continue;
      }
      for (Element part : children(children(group).get(0))) {
        switch (part.getTagName()) {
          case "table:content-validations" -> {
            for (Element one : children(part)) {
              validations.put(one.getAttribute("table:name"), one);
            }
          }
          case "table:table" -> table(part);
          default -> tree("content", part);
        }
      }
    }
  }

  private void table(Element table) {
    String name = table.getAttribute("table:name");
    lines.add(name + " " + attributes(table, Set.of("table:name")));
    List<Element> columns = new ArrayList<>();
    List<String> columnWords = new ArrayList<>();
    List<Element> rows = new ArrayList<>();
    List<String> rowWords = new ArrayList<>();
    for (Element child : children(table)) {
      if (child.getTagName().startsWith("table:table-column")
          || child.getTagName().equals("table:table-header-columns")) {
        collect(child, "", "table:table-column", columns, columnWords);
      } else if (child.getTagName().startsWith("table:table-row")
          || child.getTagName().equals("table:table-header-rows")) {
        collect(child, "", "table:table-row", rows, rowWords);
      } else {
        tree(name, child);
      }
    }
    List<String> defaults = new ArrayList<>();
    Bands bands = new Bands(name + ".column ");
    for (int i = 0; i < columns.size(); i++) {
      Element column = columns.get(i);
      int repeated = number(column, "table:number-columns-repeated");
      String style = column.getAttribute("table:default-cell-style-name");
      bands.add(
          repeated,
          columnWords.get(i) + attributes(column, Set.of("table:number-columns-repeated")));
      defaults.addAll(Collections.nCopies(Math.min(repeated, 1024), style));
    }
    bands.write(GoldenDump::letters);
    bands = new Bands(name + ".row ");
    TreeMap<Integer, List<Run>> cells = new TreeMap<>();
    for (int i = 0; i < rows.size(); i++) {
      Element row = rows.get(i);
      int repeated = number(row, "table:number-rows-repeated");
      row(row, bands.end, repeated, defaults, cells);
      bands.add(repeated, rowWords.get(i) + attributes(row, Set.of("table:number-rows-repeated")));
    }
    bands.write(row -> String.valueOf(row + 1));
    cells.forEach((column, runs) -> runs.forEach(run -> run.write(name, column)));
  }

  /** Columns or rows beside each other that are the same. */
  private final class Bands {
    private final String head;
    private final TreeMap<Integer, String> starts = new TreeMap<>();
    private int end;

    Bands(String head) {
      this.head = head;
    }

    void add(int count, String what) {
      if (starts.isEmpty() || !starts.lastEntry().getValue().equals(what)) {
        starts.put(end, what);
      }
      end += count;
    }

    void write(IntFunction<String> label) {
      starts.forEach(
          (start, what) -> {
            Integer next = starts.higherKey(start);
            String last = label.apply((next == null ? end : next) - 1);
            lines.add(head + range(label.apply(start), last) + what);
          });
    }
  }

  /** Columns or rows, also where they stand in groups or repeat as headings. */
  private static void collect(
      Element from, String words, String tag, List<Element> found, List<String> foundWords) {
    if (from.getTagName().equals(tag)) {
      found.add(from);
      foundWords.add(words);
      return;
    }
    for (Element child : children(from)) {
      String inside = words + " in " + from.getTagName() + plainAttributes(from);
      collect(child, inside, tag, found, foundWords);
    }
  }

  private void row(
      Element row, int at, int repeated, List<String> defaults, TreeMap<Integer, List<Run>> cells) {
    int column = 0;
    for (Element cell : children(row)) {
      int wide = number(cell, "table:number-columns-repeated");
      for (int i = column; i < column + wide && i < defaults.size(); i++) {
        String style = cell.getAttribute("table:style-name");
        if (style.isEmpty()) {
          style = row.getAttribute("table:default-cell-style-name");
        }
        if (style.isEmpty()) {
          style = defaults.get(i);
        }
        List<Run> runs = cells.computeIfAbsent(i, c -> new ArrayList<>());
        Run run = run(cell, style, i, at, at + repeated - 1);
        if (runs.isEmpty() || !runs.get(runs.size() - 1).takes(run)) {
          runs.add(run);
        }
      }
      column += wide;
    }
  }

  private Run run(Element cell, String style, int column, int first, int last) {
    StringBuilder what = new StringBuilder();
    if (cell.getTagName().equals("table:covered-table-cell")) {
      what.append(" covered");
    }
    what.append(attributes(cell, CELL_ATTRIBUTES));
    if (!style.isEmpty() && !style.equals("Default")) {
      what.append(" style=").append(styleName(style));
    }
    String validation = cell.getAttribute("table:content-validation-name");
    if (!validation.isEmpty()) {
      what.append(" valid=").append(digest(validations.get(validation)));
    }
    String formula = cell.getAttribute("table:formula");
    String value = value(cell);
    if (formula.isEmpty()) {
      return new Run(first, last, what + value, what + value, "");
    }
    return new Run(
        first, last, what + " " + relative(formula, column, first), what + " " + formula, value);
  }

  private String value(Element cell) {
    StringBuilder value = new StringBuilder();
    for (String name :
        List.of(
            "office:value-type",
            "calcext:value-type",
            "office:value",
            "office:boolean-value",
            "office:date-value",
            "office:time-value",
            "office:currency")) {
      String one = cell.getAttribute(name);
      if (!one.isEmpty() && !one.equals("string")) {
        value.append(' ').append(name.substring(name.indexOf(':') + 1)).append('=').append(one);
      }
    }
    for (Element child : children(cell)) {
      boolean plain = child.getTagName().equals("text:p") && children(child).isEmpty();
      value.append(' ').append(plain ? quoted(child.getTextContent()) : flat(child));
    }
    return value.toString();
  }

  /** The formula with every reference that moves along told from its cell. */
  private static String relative(String formula, int column, int row) {
    return REFERENCE
        .matcher(formula)
        .replaceAll(
            reference ->
                Matcher.quoteReplacement(
                    CELL.matcher(reference.group())
                        .replaceAll(
                            cell -> Matcher.quoteReplacement(relative(cell, column, row)))));
  }

  private static String relative(MatchResult cell, int column, int row) {
    String across =
        cell.group(1).isEmpty() ? "<" + (index(cell.group(2)) - column) + ">" : cell.group(2);
    String down =
        cell.group(3).isEmpty()
            ? "<" + (Integer.parseInt(cell.group(4)) - 1 - row) + ">"
            : cell.group(4);
    return ".C" + across + "R" + down;
  }

  /** Cells of one column below each other that hold the same. */
  private final class Run {
    private final int first;
    private int last;
    private final String key;
    private final String shown;
    private final List<String> results = new ArrayList<>();

    Run(int first, int last, String key, String shown, String result) {
      this.first = first;
      this.last = last;
      this.key = key;
      this.shown = shown;
      results.add(result);
    }

    boolean takes(Run next) {
      if (next.first != last + 1 || !next.key.equals(key)) {
        return false;
      }
      last = next.last;
      results.addAll(next.results);
      return true;
    }

    void write(String table, int column) {
      if (key.isEmpty()) {
        return;
      }
      String from = letters(column) + (first + 1);
      lines.add(table + "!" + range(from, letters(column) + (last + 1)) + shown);
      for (int i = 0; i < results.size(); i++) {
        if (!results.get(i).isEmpty()) {
          values.add(table + "!" + letters(column) + (first + i + 1) + results.get(i));
        }
      }
    }
  }

  // ---- everything else ----

  /** An element and all in it, one a line, each behind the way to it. */
  private void tree(String way, Element element) {
    if (VOLATILE.contains(element.getTagName())
        || MACHINE.contains(element.getAttribute("config:name"))
        || isFormat(element)) {
      return;
    }
    String here = way + " " + element.getTagName();
    String name = element.getAttribute("table:name") + element.getAttribute("style:name");
    name += element.getAttribute("config:name");
    lines.add(here + attributes(element, Set.of()) + text(element));
    for (Element child : children(element)) {
      tree(name.isEmpty() ? here : here + " " + name, child);
    }
  }

  private static String text(Element element) {
    StringBuilder text = new StringBuilder();
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Text t && !t.getData().isBlank()) {
        text.append(t.getData());
      }
    }
    return text.isEmpty() ? "" : " " + quoted(text.toString());
  }

  /** An element and all in it on one line. */
  private String flat(Element element) {
    StringBuilder all = new StringBuilder("<" + element.getTagName());
    all.append(attributes(element, Set.of("style:name", "table:name"))).append(text(element));
    children(element).forEach(child -> all.append(flat(child)));
    return all.append('>').toString();
  }

  private String styleName(String name) {
    Element style = styles.get(name);
    return style == null ? name.replace(' ', '_') : digest(style);
  }

  private String digest(Element element) {
    String known = digests.get(element);
    if (known == null) {
      String what = shown(flat(element));
      known = sha256(what);
      digests.put(element, known);
      digested.put(known, what);
    }
    return known;
  }

  private String attributes(Element element, Set<String> without) {
    TreeMap<String, String> found = new TreeMap<>();
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      String name = all.item(i).getNodeName();
      String value = all.item(i).getNodeValue();
      if (without.contains(name) || name.startsWith("xmlns") || name.equals("office:version")) {
        continue;
      }
      if (name.endsWith("style-name") || name.equals("style:page-layout-name")) {
        value = styleName(value);
      } else if (isText(name)) {
        value = quoted(value);
      }
      found.put(name, value);
    }
    StringBuilder words = new StringBuilder();
    found.forEach((name, value) -> words.append(' ').append(name).append('=').append(value));
    return words.toString();
  }

  private static boolean isText(String attribute) {
    return attribute.equals("table:title") || attribute.equals("xlink:title");
  }

  private static String plainAttributes(Element element) {
    StringBuilder words = new StringBuilder();
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      words.append(' ').append(all.item(i).getNodeName());
      words.append('=').append(all.item(i).getNodeValue());
    }
    return words.toString();
  }

  private static List<Element> children(Element element) {
    List<Element> found = new ArrayList<>();
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element e) {
        found.add(e);
      }
    }
    return found;
  }

  private static int number(Element element, String attribute) {
    String text = element.getAttribute(attribute);
    return text.isEmpty() ? 1 : Integer.parseInt(text);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"").replace("\n", "\\n") + '"';
  }

  private static String range(String first, String last) {
    return first.equals(last) ? first : first + ":" + last;
  }

  private static String letters(int column) {
    String letter = String.valueOf((char) ('A' + column % 26));
    return column < 26 ? letter : letters(column / 26 - 1) + letter;
  }

  private static int index(String letters) {
    int index = 0;
    for (char letter : letters.toCharArray()) {
      index = 26 * index + letter - 'A' + 1;
    }
    return index - 1;
  }

  private static String sha256(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "~" + HexFormat.of().formatHex(digest).substring(0, 10);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}

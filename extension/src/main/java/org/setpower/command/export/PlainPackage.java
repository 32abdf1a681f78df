package org.setpower.command.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.command.message.UserMessageException;

/**
 * A stored spreadsheet document without its formulas, scripts and input rules: every result stands
 * in the file beside its formula, so nothing is calculated again and no figure can change.
 */
final class PlainPackage {
  private static final String DATA_OF_THE_DOCUMENT = " xlink:href=\"\\.\\.\"";
  private static final String DATA_OF_ITS_OWN = " xlink:href=\".\"";
  private static final String FORMAT_OF_THE_CELLS = "chart:link-data-style-to-source=\"true\"";
  private static final String FORMAT_OF_ITS_OWN = "chart:link-data-style-to-source=\"false\"";
  private static final Pattern SCRIPTS = Pattern.compile("(?:Basic|Scripts|Dialogs|Thumbnails)/.*");
  private static final Pattern MANIFEST_ENTRY =
      Pattern.compile("<manifest:file-entry [^>]*manifest:full-path=\"([^\"]*)\"[^>]*/>");
  private static final Pattern CATEGORIES =
      Pattern.compile("<chart:categories table:cell-range-address=\"([^\"]*)\"");
  private static final Pattern LABEL =
      Pattern.compile("(<table:table-row><table:table-cell(?: [^>]*[^/])?>)(<text:p/>)?");

  private final Set<String> wanted;
  private final PlainContent cells;
  private final Function<String, List<String>> labels;
  private final PlainContent styles = new PlainContent(Set.of());
  private FrozenPanes panes;

  /**
   * A stored document.
   *
   * @param wanted the names of the sheets that stay
   * @param labels what the cells of a range show, such as Data.A2:Data.A9
   */
  PlainPackage(Set<String> wanted, Function<String, List<String>> labels) {
    this.wanted = wanted;
    this.labels = labels;
    cells = new PlainContent(wanted);
  }

  /** How many cells that stay had a formula. */
  int formulas() {
    return cells.formulas();
  }

  /** What stays in view, as the document was stored. */
  FrozenPanes panes() {
    return panes;
  }

  /** The bytes of the .ods without them. */
  byte[] of(byte[] ods) throws IOException {
    Map<String, byte[]> entries = ZipEntries.read(ods);
    panes = new FrozenPanes(text(entries.getOrDefault("settings.xml", new byte[0])), wanted);
    // what the sheets have of charts and drawings decides what becomes of these
    entries.computeIfPresent("content.xml", (name, content) -> plain(cells, content));
    entries.computeIfPresent("styles.xml", (name, content) -> plain(styles, content));
    Set<String> dropped = new HashSet<>(entries.keySet());
    dropped.removeIf(name -> !isDropped(name, entries.keySet()));
    entries.keySet().removeAll(dropped);
    entries.computeIfPresent("META-INF/manifest.xml", (name, xml) -> without(dropped, xml));
    entries.replaceAll(this::changed);
    return ZipEntries.write(entries);
  }

  /** Whether an entry is a script, or belongs to a chart or drawing that is on no sheet. */
  private boolean isDropped(String name, Set<String> all) {
    int slash = name.indexOf('/');
    String folder = name.substring(0, Math.max(0, slash));
    boolean isDrawing =
        folder.equals("Pictures")
            || folder.equals("ObjectReplacements")
            || all.contains(folder + "/content.xml");
    return SCRIPTS.matcher(name).matches()
        || isDrawing && !isPlace(name) && !isPlace(folder) && slash < name.length() - 1;
  }

  private boolean isPlace(String name) {
    return cells.places().contains(name) || styles.places().contains(name);
  }

  private static byte[] without(Set<String> dropped, byte[] manifest) {
    return bytes(
        MANIFEST_ENTRY
            .matcher(text(manifest))
            .replaceAll(
                entry -> {
                  String name = XmlTokens.unescape(entry.group(1));
                  return dropped.contains(name) || dropped.contains(name + "content.xml")
                      ? ""
                      : Matcher.quoteReplacement(entry.group());
                }));
  }

  private byte[] changed(String name, byte[] content) {
    if (name.endsWith("/content.xml")
        && cells.ownData().contains(name.substring(0, name.lastIndexOf('/')))) {
      return bytes(
          withLabels(text(content))
              .replaceFirst(DATA_OF_THE_DOCUMENT, DATA_OF_ITS_OWN)
              .replace(FORMAT_OF_THE_CELLS, FORMAT_OF_ITS_OWN));
    }
    return content;
  }

  /** Times and dates along an axis are stored as empty labels, to be read from the cells. */
  private String withLabels(String chart) {
    Matcher categories = CATEGORIES.matcher(chart);
    int rows = chart.indexOf("<table:table-rows>");
    if (rows < 0 || !categories.find()) {
      return chart;
    }
    Iterator<String> texts = labels.apply(XmlTokens.unescape(categories.group(1))).iterator();
    return chart.substring(0, rows)
        + LABEL
            .matcher(chart.substring(rows))
            .replaceAll(
                label -> {
                  String text = texts.hasNext() ? texts.next() : "";
                  return Matcher.quoteReplacement(
                      label.group(2) == null || text.isEmpty()
                          ? label.group()
                          : label.group(1) + "<text:p>" + escape(text) + "</text:p>");
                });
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static byte[] plain(PlainContent plain, byte[] content) {
    try {
      return plain.of(content);
    } catch (IllegalArgumentException e) {
      throw new UserMessageException("The office could not open its own copy of the document.")
          .because(e);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String text(byte[] content) {
    return new String(content, StandardCharsets.UTF_8);
  }
}

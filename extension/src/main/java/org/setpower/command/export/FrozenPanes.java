package org.setpower.command.export;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.command.document.CalcDocument;

/**
 * The rows and columns that stay in view. The office keeps them with a window, and a copy has none:
 * so they are taken from the stored document and put into the files.
 */
final class FrozenPanes {
  /** The line on top of each sheet moves what is frozen there. */
  private static final int ROWS_ON_TOP = 1;

  private static final String SETTINGS = "settings.xml";
  private static final String FROZEN = "2";
  private static final Pattern VIEWS =
      Pattern.compile(
          "(?s)<config:config-item-set config:name=\"ooo:view-settings\">.*?"
              + "</config:config-item-set>");
  private static final Pattern SHEET =
      Pattern.compile(
          "(?s)<config:config-item-map-entry config:name=\"([^\"]*)\">.*?"
              + "</config:config-item-map-entry>");
  private static final Pattern ITEM =
      Pattern.compile("(<config:config-item config:name=\"(\\w+)\"[^>]*>)([^<]*)");
  private static final Pattern SHEET_VIEW =
      Pattern.compile("(?s)(<sheetView [^>]*?)/?>(?:.*?</sheetView>)?");

  private record Pane(int columns, int rows) {}

  private final Map<String, Pane> panes = new HashMap<>();
  private final String views;

  /**
   * Those of a stored document.
   *
   * @param wanted the names of the sheets that stay
   */
  FrozenPanes(String settings, Set<String> wanted) {
    Matcher all = VIEWS.matcher(settings);
    views =
        all.find()
            ? SHEET
                .matcher(all.group())
                .replaceAll(
                    sheet ->
                        wanted.contains(XmlTokens.unescape(sheet.group(1)))
                            ? Matcher.quoteReplacement(lowered(sheet.group(), sheet.group(1)))
                            : "")
            : "";
  }

  private String lowered(String sheet, String name) {
    Map<String, String> items = new HashMap<>();
    ITEM.matcher(sheet).results().forEach(item -> items.put(item.group(2), item.group(3)));
    boolean isBelow = FROZEN.equals(items.get("VerticalSplitMode"));
    boolean isBeside = FROZEN.equals(items.get("HorizontalSplitMode"));
    panes.put(
        XmlTokens.unescape(name),
        new Pane(
            isBeside ? Integer.parseInt(items.get("HorizontalSplitPosition")) : 0,
            isBelow ? Integer.parseInt(items.get("VerticalSplitPosition")) + ROWS_ON_TOP : 0));
    return isBelow ? ITEM.matcher(sheet).replaceAll(FrozenPanes::lowered) : sheet;
  }

  private static String lowered(MatchResult item) {
    boolean isRow =
        item.group(2).equals("VerticalSplitPosition") || item.group(2).equals("PositionBottom");
    String value =
        isRow ? String.valueOf(Integer.parseInt(item.group(3)) + ROWS_ON_TOP) : item.group(3);
    return Matcher.quoteReplacement(item.group(1) + value);
  }

  /** Puts them into the entries of an .ods. */
  void intoOds(Map<String, byte[]> entries) {
    entries.computeIfPresent(
        SETTINGS,
        (name, content) -> {
          String settings = VIEWS.matcher(text(content)).replaceAll("");
          String begin = "<office:settings>";
          return settings.replace(begin, begin + views).getBytes(StandardCharsets.UTF_8);
        });
  }

  /**
   * Puts them into the entries of an .xlsx.
   *
   * @param sheets the names of its sheets, in their order
   */
  void intoXlsx(Map<String, byte[]> entries, List<String> sheets) {
    for (int i = 0; i < sheets.size(); i++) {
      String pane = pane(panes.getOrDefault(sheets.get(i), new Pane(0, 0)));
      entries.computeIfPresent(
          "xl/worksheets/sheet" + (i + 1) + ".xml",
          (name, content) ->
              SHEET_VIEW
                  .matcher(text(content))
                  .replaceFirst("$1>" + pane + "</sheetView>")
                  .getBytes(StandardCharsets.UTF_8));
    }
  }

  private static String pane(Pane pane) {
    if (pane.columns == 0 && pane.rows == 0) {
      return "";
    }
    String cell = CalcDocument.address(pane.columns, pane.rows);
    String active = pane.columns == 0 ? "bottomLeft" : pane.rows == 0 ? "topRight" : "bottomRight";
    return "<pane"
        + split("xSplit", pane.columns)
        + split("ySplit", pane.rows)
        + " topLeftCell=\"%s\" activePane=\"%s\" state=\"frozen\"/>".formatted(cell, active);
  }

  private static String split(String attribute, int at) {
    return at == 0 ? "" : " %s=\"%d\"".formatted(attribute, at);
  }

  private static String text(byte[] content) {
    return new String(content, StandardCharsets.UTF_8);
  }
}

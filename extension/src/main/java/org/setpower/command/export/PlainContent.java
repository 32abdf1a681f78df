package org.setpower.command.export;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The cells and styles of a stored document, without what calculates, links, checks or notes. */
final class PlainContent {
  private static final Set<String> DROPPED =
      Set.of(
          "table:content-validations",
          "table:named-expression",
          "table:data-pilot-tables",
          "table:consolidation",
          "table:dde-links",
          "table:tracked-changes",
          "table:label-ranges",
          "table:scenario",
          "table:table-source",
          "table:cell-range-source",
          "table:detective",
          "office:annotation",
          "office:scripts",
          "office:event-listeners",
          "office:forms",
          "draw:control");

  private static final Set<String> UNWRAPPED = Set.of("text:a", "draw:a");

  private static final Set<String> DROPPED_ATTRIBUTES =
      Set.of(
          "table:formula",
          "table:number-matrix-columns-spanned",
          "table:number-matrix-rows-spanned",
          "table:content-validation-name",
          "table:protected",
          "table:structure-protected");

  private static final Set<String> CELLS = Set.of("table:table-cell", "table:covered-table-cell");
  private static final String FORMAT = "calcext:conditional-format";
  private static final Pattern COLUMN = Pattern.compile("\\.\\$?([A-Z]{1,3})(?=\\$?\\d|[:\\]])");
  private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");
  private static final Pattern CELL_REFERENCE = Pattern.compile("\\[[^]]*]");
  private static final Pattern OTHER_SHEET = Pattern.compile("\\[[^].]|:[^].]");
  private static final Pattern NAME = Pattern.compile("\\p{L}\\w*[._][\\w.]*");

  /** Conditions without a formula of their own: duplicate, above-average, top-elements(3) … */
  private static final Pattern KIND = Pattern.compile("(?!formula-is)[a-z-]+(?:\\(\\d*\\))?");

  private static final Pattern LONE_WORD = Pattern.compile("(?<![\\w.])\\p{L}[\\w.]*(?![\\w.(-])");
  private static final Set<String> WORDS = Set.of("TRUE", "FALSE", "AND", "OR");

  private final StringBuilder out = new StringBuilder();
  private final BitSet hidden = new BitSet();
  private int column;
  private int formulas;
  private int formatAt;
  private int conditions;
  private int skipping;

  /** How many cells had a formula. */
  int formulas() {
    return formulas;
  }

  byte[] of(byte[] xml) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    XMLStreamReader in = factory.createXMLStreamReader(new ByteArrayInputStream(xml));
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    while (in.hasNext()) {
      switch (in.next()) {
        case XMLStreamConstants.START_ELEMENT -> start(in, name(in));
        case XMLStreamConstants.END_ELEMENT -> end(name(in));
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.SPACE -> {
          if (skipping == 0) {
            escape(in.getText());
          }
        }
        default -> {
          // comments and instructions mean nothing to the office
        }
      }
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String name(XMLStreamReader in) {
    String prefix = in.getPrefix();
    return prefix == null || prefix.isEmpty()
        ? in.getLocalName()
        : prefix + ":" + in.getLocalName();
  }

  private void start(XMLStreamReader in, String name) {
    if (skipping > 0 || isDropped(in, name)) {
      skipping++;
      return;
    }
    if (UNWRAPPED.contains(name)) {
      return;
    }
    if (name.equals("table:table")) {
      if (value(in, "protection-key") != null) {
        throw FormulaToValueConverter.locked(value(in, "name"));
      }
      hidden.clear();
      column = 0;
    } else if (name.equals("table:table-column")) {
      int many = repeated(in);
      hidden.set(column, column + many, value(in, "visibility") != null);
      column += many;
    } else if (name.equals(FORMAT)) {
      formatAt = out.length();
      conditions = 0;
    } else if (name.startsWith("calcext:")) {
      conditions++;
    }
    boolean wasFormula = CELLS.contains(name) && value(in, "formula") != null;
    formulas += wasFormula ? repeated(in) : 0;
    out.append('<').append(name);
    for (int i = 0; i < in.getNamespaceCount(); i++) {
      String prefix = in.getNamespacePrefix(i);
      attribute(prefix == null ? "xmlns" : "xmlns:" + prefix, in.getNamespaceURI(i));
    }
    boolean isError = isError(in);
    boolean isBlank = wasFormula && !isError && "".equals(value(in, "string-value"));
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String attribute = in.getAttributeLocalName(i);
      boolean isValue = "office".equals(in.getAttributePrefix(i));
      if (!(isValue && (isBlank || isError && attribute.equals("string-value")))) {
        attribute(in, i);
      }
    }
    out.append('>');
  }

  private static boolean isError(XMLStreamReader in) {
    for (int i = 0; i < in.getAttributeCount(); i++) {
      if (in.getAttributeLocalName(i).equals("value-type")
          && in.getAttributeValue(i).equals("error")) {
        return true;
      }
    }
    return false;
  }

  private void attribute(XMLStreamReader in, int i) {
    String prefix = in.getAttributePrefix(i);
    String name =
        prefix == null || prefix.isEmpty()
            ? in.getAttributeLocalName(i)
            : prefix + ":" + in.getAttributeLocalName(i);
    String value = in.getAttributeValue(i);
    if (DROPPED_ATTRIBUTES.contains(name)
        || name.startsWith("table:protection-key")
        || name.equals("calcext:value-type")) {
      return;
    }
    // a cell is locked, and its value may be read
    attribute(name, name.equals("style:cell-protect") ? "protected" : value);
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"");
    escape(value);
    out.append('"');
  }

  private void end(String name) {
    if (skipping > 0) {
      skipping--;
      return;
    }
    if (UNWRAPPED.contains(name)) {
      return;
    }
    out.append("</").append(name).append('>');
    if (name.equals(FORMAT) && conditions == 0) {
      out.setLength(formatAt);
    }
  }

  private boolean isDropped(XMLStreamReader in, String name) {
    return DROPPED.contains(name)
        || name.equals("calcext:condition") && readsMore(value(in, "value"))
        || name.equals("style:map") && isOldFormat(value(in, "condition"));
  }

  /** Conditional formats are stored a second time for old offices. */
  private static boolean isOldFormat(String condition) {
    return condition != null
        && (condition.startsWith("is-true-formula") || condition.startsWith("cell-content"));
  }

  /** Whether a condition reads what the copy has not: other sheets, names, hidden columns. */
  private boolean readsMore(String condition) {
    String plain = TEXT.matcher(condition == null ? "" : condition).replaceAll("0");
    Matcher columns = COLUMN.matcher(plain);
    while (columns.find()) {
      if (hidden.get(number(columns.group(1)))) {
        return true;
      }
    }
    Matcher references = CELL_REFERENCE.matcher(plain);
    while (references.find()) {
      if (OTHER_SHEET.matcher(references.group()).find()) {
        return true;
      }
    }
    String rest = references.replaceAll("0");
    if (KIND.matcher(rest).matches()) {
      return false;
    }
    return NAME.matcher(rest).find()
        || LONE_WORD
            .matcher(rest)
            .results()
            .anyMatch(word -> !WORDS.contains(word.group().toUpperCase(Locale.ROOT)));
  }

  private static int number(String letters) {
    int number = 0;
    for (char letter : letters.toCharArray()) {
      number = number * 26 + letter - 'A' + 1;
    }
    return number - 1;
  }

  private static int repeated(XMLStreamReader in) {
    String many = value(in, "number-columns-repeated");
    return many == null ? 1 : Integer.parseInt(many);
  }

  private static String value(XMLStreamReader in, String local) {
    for (int i = 0; i < in.getAttributeCount(); i++) {
      if (in.getAttributeLocalName(i).equals(local)) {
        return in.getAttributeValue(i);
      }
    }
    return null;
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\n' -> out.append("&#10;");
        case '\t' -> out.append("&#9;");
        default -> out.append(c);
      }
    }
  }
}

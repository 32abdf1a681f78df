package org.setpower.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * The texts of one context in a PO file of GNU gettext ("The Format of PO Files" in its manual). An
 * own reader, because it is short, reads text files without a compiled form beside them, and every
 * library in the extension costs time whenever the office starts.
 */
final class PoFile {
  private static final List<String> KEYWORDS = List.of("msgctxt", "msgid", "msgid_plural");
  private static final String ID = KEYWORDS.get(1);
  private static final String PLURAL = KEYWORDS.get(2);
  private static final String STRING = "msgstr";
  private static final Pattern NUMBERED = Pattern.compile("msgstr\\[\\d]");
  private static final String RULE = "Plural-Forms:";

  private final String context;
  private final Map<String, List<String>> texts = new TreeMap<>();
  private final Map<String, StringBuilder> fields = new LinkedHashMap<>();
  private StringBuilder open;
  private boolean fuzzy;
  private PluralForms plurals = PluralForms.OF_ENGLISH;
  private int line;

  private PoFile(String context) {
    this.context = context;
  }

  /** Reads and closes it; texts of other contexts are left out. */
  static PoFile read(InputStream in, String context) {
    PoFile file = new PoFile(context);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String text = reader.readLine(); text != null; text = reader.readLine()) {
        file.line++;
        file.take(text.strip());
      }
      file.finish();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file;
  }

  /** The forms of each translated text, by the English one; one form where it has no plural. */
  Map<String, List<String>> texts() {
    return texts;
  }

  PluralForms plurals() {
    return plurals;
  }

  private void take(String text) {
    if (text.startsWith("#,") && text.contains("fuzzy")) {
      finish();
      fuzzy = true; // gettext takes a doubtful translation for none
    }
    if (text.isEmpty() || text.startsWith("#")) {
      return;
    }
    int quote = text.indexOf('"');
    if (quote < 0 || quote == text.length() - 1 || !text.endsWith("\"")) {
      throw fault("a text in quotation marks is missing");
    }
    if (quote > 0) {
      begin(text.substring(0, quote).strip());
    }
    if (open == null) {
      throw fault("a text belongs to nothing");
    }
    open.append(unescaped(text.substring(quote + 1, text.length() - 1)));
  }

  private void begin(String keyword) {
    boolean first =
        keyword.equals(KEYWORDS.get(0)) || (keyword.equals(ID) && fields.containsKey(ID));
    if (first && !fields.isEmpty()) {
      finish();
    }
    boolean known =
        KEYWORDS.contains(keyword) || keyword.equals(STRING) || NUMBERED.matcher(keyword).matches();
    open = new StringBuilder();
    if (!known || fields.put(keyword, open) != null) {
      throw fault("“" + keyword + "” is not expected here");
    }
  }

  private String unescaped(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) == '"') {
        throw fault("a quotation mark needs a \\ before it");
      }
      at += text.charAt(at) == '\\' ? 1 : 0;
    }
    return text.indexOf('\\') < 0 ? text : text.translateEscapes();
  }

  /** Takes the entry that ends here. */
  private void finish() {
    if (fields.isEmpty()) {
      return;
    }
    StringBuilder id = fields.get(ID);
    List<String> forms = new ArrayList<>();
    fields.forEach((key, text) -> addForm(key, text.toString(), forms));
    if (id == null || forms.isEmpty()) {
      throw fault("an entry needs msgid and msgstr");
    }
    StringBuilder of = fields.get(KEYWORDS.get(0));
    if (of == null && id.isEmpty()) {
      forms.get(0).lines().filter(l -> l.startsWith(RULE)).forEach(this::rule);
    } else if (of != null && of.toString().equals(context)) {
      put(id.toString(), forms);
    }
    fields.clear();
    open = null;
    fuzzy = false;
  }

  private static void addForm(String key, String text, List<String> forms) {
    if (key.startsWith(STRING)) {
      forms.add(text);
    }
  }

  private void rule(String header) {
    plurals = PluralForms.of(header.substring(RULE.length()));
  }

  private void put(String id, List<String> forms) {
    int needed = fields.containsKey(PLURAL) ? plurals.count() : 1;
    if (forms.size() != needed) {
      throw fault("“" + id + "” has " + forms.size() + " forms and needs " + needed);
    }
    boolean translated = !fuzzy && forms.stream().noneMatch(String::isEmpty);
    if (translated && texts.put(id, List.copyOf(forms)) != null) {
      throw fault("translated twice: “" + id + "”");
    }
  }

  private IllegalStateException fault(String what) {
    return new IllegalStateException("PO file, line " + line + ": " + what);
  }
}

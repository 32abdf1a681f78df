package org.setpower.entry;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.RuntimeException;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * The words of the commands in the language of the office, for a Java that cannot load
 * org.setpower.text.MessageCatalog. Of a PO file's rules it knows what its two texts need.
 */
final class EntryMessages {
  private static final String ID = "msgid";
  private static final String IS = "msgstr";

  private final Map<String, String> texts;

  private EntryMessages(Map<String, String> texts) {
    this.texts = texts;
  }

  static EntryMessages english() {
    return new EntryMessages(new HashMap<String, String>());
  }

  /** English where the language cannot be told or has no words. */
  static EntryMessages of(XComponentContext context) {
    EntryMessages words = english();
    try {
      words.read("/org/setpower/text/" + language(context) + ".po");
    } catch (Exception | IOException | RuntimeException noOtherLanguage) {
      // then what is read so far serves
    }
    return words;
  }

  private static String language(XComponentContext context) throws Exception {
    XMultiServiceFactory provider =
        UnoRuntime.queryInterface(
            XMultiServiceFactory.class,
            context
                .getServiceManager()
                .createInstanceWithContext(
                    "com.sun.star.configuration.ConfigurationProvider", context));
    PropertyValue where = new PropertyValue();
    where.Name = "nodepath";
    where.Value = "/org.openoffice.Setup/L10N";
    Object node =
        provider.createInstanceWithArguments(
            "com.sun.star.configuration.ConfigurationAccess", new Object[] {where});
    Object locale =
        UnoRuntime.queryInterface(XPropertySet.class, node).getPropertyValue("ooLocale");
    return String.valueOf(locale).replaceFirst("-.*", "");
  }

  private void read(String file) throws IOException {
    InputStream in = EntryMessages.class.getResourceAsStream(file);
    if (in == null) {
      return;
    }
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      String english = "";
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith(ID)) {
          english = text(line, ID);
        } else if (line.startsWith(IS) && !text(line, IS).isEmpty()) {
          texts.put(english, text(line, IS));
        }
      }
    }
  }

  private static String text(String line, String keyword) {
    int quote = line.indexOf("\"", keyword.length());
    return line.substring(quote + 1, Math.max(quote + 1, line.length() - 1))
        .replace("\\n", "\n")
        .replace("\\\"", "\"");
  }

  /** A text with values in the place of each {}. */
  String say(String english, String... values) {
    String text = texts.getOrDefault(english, english);
    for (String value : values) {
      int at = text.indexOf("{}");
      text = text.substring(0, at) + value + text.substring(at + 2);
    }
    return text;
  }
}

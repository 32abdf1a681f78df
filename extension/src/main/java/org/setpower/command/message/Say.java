package org.setpower.command.message;

import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import org.setpower.text.Translation;
import org.setpower.text.Words;
import org.setpower.uno.Uno;

/** What users read, in the language of the office; an office has one, and so has this class. */
public final class Say {
  private static volatile Words words = Words.english();
  private static volatile Translation functions;

  private Say() {}

  /** Takes the language of the office. */
  public static void as(XComponentContext context) {
    String language = language(context);
    if (!language.equals(words.language())) {
      words = Words.in(language, Say.class);
      functions = words.isEnglish() ? null : Translation.into(language);
    }
  }

  /** The ISO 639 code of the office's language; English where it cannot be told. */
  private static String language(XComponentContext context) {
    try {
      Object provider =
          context
              .getServiceManager()
              .createInstanceWithContext(
                  "com.sun.star.configuration.ConfigurationProvider", context);
      Object node =
          Uno.as(XMultiServiceFactory.class, provider)
              .createInstanceWithArguments(
                  "com.sun.star.configuration.ConfigurationAccess",
                  new Object[] {Uno.property("nodepath", "/org.openoffice.Setup/L10N")});
      return String.valueOf(Uno.get(node, "ooLocale")).replaceFirst("-.*", "");
    } catch (Exception | com.sun.star.uno.RuntimeException e) {
      return Words.ENGLISH;
    }
  }

  /** The language, where we have words for it; else English. */
  public static String language() {
    return words.language();
  }

  /** A text, with values in the place of each {}. */
  public static String say(String english, Object... values) {
    return words.say(english, values);
  }

  /** The words of the functions. */
  public static FunctionWords functions() {
    return new FunctionWords(functions);
  }
}

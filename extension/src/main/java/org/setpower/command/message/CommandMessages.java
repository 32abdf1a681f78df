package org.setpower.command.message;

import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import org.setpower.text.FunctionTexts;
import org.setpower.text.Translations;
import org.setpower.uno.Uno;

/** What users read, in the language of the office; an office has one, and so has this class. */
public final class CommandMessages {
  private static volatile Translations words = Translations.english();
  private static volatile FunctionTexts functions;

  private CommandMessages() {}

  /** Takes the language of the office. */
  public static void as(XComponentContext context) {
    String language = language(context);
    if (!language.equals(words.language())) {
      words = Translations.in(language, CommandMessages.class);
      functions = words.isEnglish() ? null : FunctionTexts.into(language);
    }
  }

  /** The ISO 639 code of the office's language; English where it is not known. */
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
      return Translations.ENGLISH;
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

  /** Texts in the language of a document; that of the office where it is empty. */
  public static Translations in(String language) {
    return language.isEmpty() || language.equals(words.language())
        ? words
        : Translations.in(language, CommandMessages.class);
  }

  /** The words of the functions. */
  public static LocalizedFunctionTexts functions() {
    return new LocalizedFunctionTexts(functions);
  }
}

package org.setpower.command.message;

import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import org.setpower.registry.text.FunctionTexts;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/** What users read, in the language of the office; an office has one, and so has this class. */
public final class CommandMessages {
  private static volatile String locale = MessageCatalog.ENGLISH;
  private static volatile MessageCatalog words = MessageCatalog.english();

  private CommandMessages() {}

  /** Takes the language of the office. */
  public static void as(XComponentContext context) {
    String now = locale(context);
    if (!now.equals(locale)) {
      words = MessageCatalog.in(now, MessageCatalog.Speaker.COMMANDS);
      locale = now;
    }
  }

  /** The office's language with its country, as de-AT; English where it is not known. */
  private static String locale(XComponentContext context) {
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
      return String.valueOf(Uno.get(node, "ooLocale"));
    } catch (Exception | com.sun.star.uno.RuntimeException e) {
      return MessageCatalog.ENGLISH;
    }
  }

  /** The language, where we have words for it; else English. */
  public static String language() {
    return words.language();
  }

  /** The same with the country, where it has words of its own: en-US. */
  public static String tag() {
    return words.tag();
  }

  /** A text, with values in the place of each {}. */
  public static String say(String english, Object... values) {
    return words.say(english, values);
  }

  /** Texts in the language of a document; that of the office where it is empty. */
  public static MessageCatalog in(String language) {
    return language.isEmpty() || language.equals(words.tag())
        ? words
        : MessageCatalog.in(language, MessageCatalog.Speaker.COMMANDS);
  }

  /** A text about a count, which is its first value: in the form that the language has for it. */
  public static String plural(String one, String many, long count, Object... values) {
    return words.plural(one, many, count, values);
  }

  /** The words of the functions. */
  public static FunctionTexts functions() {
    return FunctionTexts.into(locale);
  }
}

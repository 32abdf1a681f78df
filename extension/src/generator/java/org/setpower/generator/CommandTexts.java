package org.setpower.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.setpower.text.MessageCatalog;

/**
 * What users of the menu read: the texts in the code of the commands, and the titles in the
 * configuration.
 */
final class CommandTexts {
  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

  /** Said by a call, the name of a sheet, or words with a space or a letter for the keyboard. */
  private static final Pattern SAID =
      Pattern.compile(
          "(?:(?:\\bsay|\\bplural|UserMessageException|explanation\\.add)\\(|\\bSHEET =)\\s*$");

  /** The second text of a plural belongs to the first one's entry. */
  private static final Pattern MANY =
      Pattern.compile("\\bplural\\(\\s*\"(?:[^\"\\\\]|\\\\.)*\",\\s*$");

  private static final Pattern READ = Pattern.compile("(?s)(?=.*\\p{L}{2}).*(?: |~).*");

  /** Names and codes that look like words. */
  private static final Set<String> NOT_READ =
      Set.of(
          "Calc MS Excel 2007 XML",
          "Liberation Sans",
          "Set Power Sheets ",
          "Seed of a Set Power diagram",
          "Set Power diagram",
          "Set Power template",
          "d MMM uuuu",
          "ods, xlsx, pdf",
          "cannot be read at character ",
          "row \\d+",
          "yyyy-MM-dd HH:mm");

  /** Pieces of XML, which nobody reads. */
  private static final Pattern XML = Pattern.compile("(?s)[(?=:s)]*<.*|.*=\".*");

  private static final String ENGLISH = "<value xml:lang=\"en-US\">";
  private static final Pattern TITLE = Pattern.compile(ENGLISH + "([^<]*)</value>");

  private static final MessageCatalog AMERICAN =
      MessageCatalog.in("en-US", MessageCatalog.Speaker.COMMANDS);

  private CommandTexts() {}

  /** Asks these words for all texts in the code of a folder. */
  static void ask(Path folder, MessageCatalog words) throws IOException {
    Set<String> texts = new TreeSet<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        String code = Files.readString(file).replaceAll("(?m)^\\s*(?://|\\*|/\\*).*$", "");
        collect(JOINED.matcher(code).replaceAll(""), texts);
      }
    }
    texts.forEach(words::of);
  }

  private static void collect(String code, Set<String> texts) {
    Matcher text = TEXT.matcher(code);
    while (text.find()) {
      String words = text.group(1).translateEscapes();
      String before = code.substring(Math.max(0, text.start() - 400), text.start());
      if (!NOT_READ.contains(words)
          && !XML.matcher(words).matches()
          && !MANY.matcher(before).find()
          && (SAID.matcher(before).find() || READ.matcher(words).matches())) {
        texts.add(words);
      }
    }
  }

  /** A configuration file with the titles in all languages. */
  static String titles(String configuration, Iterable<MessageCatalog> languages) {
    return TITLE
        .matcher(configuration)
        .replaceAll(
            m -> {
              String american = AMERICAN.of(m.group(1));
              StringBuilder values = new StringBuilder(ENGLISH + american + "</value>");
              if (!american.equals(m.group(1))) {
                values.append("<value xml:lang=\"en-GB\">").append(m.group(1)).append("</value>");
              }
              for (MessageCatalog words : languages) {
                values.append("<value xml:lang=\"" + words.language() + "\">");
                values.append(words.of(m.group(1))).append("</value>");
              }
              return Matcher.quoteReplacement(values.toString());
            });
  }
}

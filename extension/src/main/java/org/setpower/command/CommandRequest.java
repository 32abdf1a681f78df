package org.setpower.command;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.setpower.command.message.UserMessageException;

/**
 * What is asked for: a command and its options, as they stand behind the question mark of {@code
 * service:org.setpower.Commands?copy&quiet&formats=ods,pdf}. A quiet request asks nothing and shows
 * no window.
 */
public record CommandRequest(String command, Map<String, Object> options) {
  public static CommandRequest of(String words) {
    String[] parts = words.split("&");
    Map<String, Object> options = new LinkedHashMap<>();
    for (int i = 1; i < parts.length; i++) {
      int is = parts[i].indexOf('=');
      String name = is < 0 ? parts[i] : parts[i].substring(0, is);
      String value = is < 0 ? "yes" : parts[i].substring(is + 1);
      options.put(name, URLDecoder.decode(value, StandardCharsets.UTF_8));
    }
    return new CommandRequest(parts[0], options);
  }

  public boolean isQuiet() {
    return has("quiet");
  }

  public boolean has(String option) {
    return options.containsKey(option);
  }

  /** A required text. */
  public String text(String option) {
    if (!(options.get(option) instanceof String text)) {
      throw new UserMessageException("The command “{}” needs the option “{}”.", command, option);
    }
    return text;
  }

  public String text(String option, String otherwise) {
    return has(option) ? text(option) : otherwise;
  }
}

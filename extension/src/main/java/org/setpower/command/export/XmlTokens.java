package org.setpower.command.export;

import java.util.Arrays;

/**
 * The tags and texts of XML as the office stores it, one after the other, with names and values as
 * they are written. Whatever declares or includes something else is refused: nothing outside the
 * text is ever read.
 */
final class XmlTokens {
  /** What there is to read. */
  enum Kind {
    START,
    END,
    TEXT,
    NONE
  }

  private static final int START_SIZE = 32;
  private static final char QUOTE = 0x22;

  private final String xml;
  private int at;
  private String name = "";
  private boolean isEndNext;
  private int from;
  private int attributes;
  private String[] names = new String[START_SIZE];
  private String[] values = new String[START_SIZE];

  XmlTokens(String xml) {
    this.xml = xml;
  }

  /** Goes to the next one. A tag that is its own end gives both. */
  Kind next() {
    if (isEndNext) {
      isEndNext = false;
      return Kind.END;
    }
    while (at < xml.length()) {
      from = at;
      if (xml.charAt(at) != '<') {
        int end = xml.indexOf('<', at);
        at = end < 0 ? xml.length() : end;
        return Kind.TEXT;
      }
      if (xml.startsWith("<?", at)) {
        at = after("?>");
      } else if (xml.startsWith("<!--", at)) {
        at = after("-->");
      } else if (xml.startsWith("</", at)) {
        at = after(">");
        name = xml.substring(from + 2, at - 1).strip();
        return Kind.END;
      } else {
        start();
        return Kind.START;
      }
    }
    return Kind.NONE;
  }

  private int after(String end) {
    int there = xml.indexOf(end, at);
    if (there < 0) {
      throw unreadable();
    }
    return there + end.length();
  }

  private void start() {
    at++;
    name = word();
    if (name.isEmpty() || name.charAt(0) == '!') {
      throw unreadable();
    }
    attributes = 0;
    for (char c = skipped(); c != '>'; c = skipped()) {
      if (c == '/') {
        isEndNext = true;
        at++;
      } else {
        attribute();
      }
    }
    at++;
  }

  private void attribute() {
    if (attributes == names.length) {
      names = Arrays.copyOf(names, 2 * attributes);
      values = Arrays.copyOf(values, 2 * attributes);
    }
    names[attributes] = word();
    if (skipped() != '=') {
      throw unreadable();
    }
    at++;
    char quote = skipped();
    if (quote != '\'' && quote != QUOTE) {
      throw unreadable();
    }
    at++;
    int end = xml.indexOf(quote, at);
    if (end < 0) {
      throw unreadable();
    }
    values[attributes++] = xml.substring(at, end);
    at = end + 1;
  }

  /** The first character that is no space. */
  private char skipped() {
    while (at < xml.length() && xml.charAt(at) <= ' ') {
      at++;
    }
    if (at == xml.length()) {
      throw unreadable();
    }
    return xml.charAt(at);
  }

  private String word() {
    int begin = at;
    while (at < xml.length() && !isEndOfWord(xml.charAt(at))) {
      at++;
    }
    return xml.substring(begin, at);
  }

  private static boolean isEndOfWord(char c) {
    return c <= ' ' || c == '=' || c == '>' || c == '/';
  }

  private IllegalArgumentException unreadable() {
    return new IllegalArgumentException("cannot be read at character " + from);
  }

  /** The name of the tag, with its prefix. */
  String name() {
    return name;
  }

  /** The text, as it is written. */
  CharSequence text() {
    return xml.subSequence(from, at);
  }

  int attributes() {
    return attributes;
  }

  String attribute(int i) {
    return names[i];
  }

  /** The value as it is written. */
  String written(int i) {
    return values[i];
  }

  /** What a value says; null where the tag has no such attribute. */
  String value(String attribute) {
    for (int i = 0; i < attributes; i++) {
      if (names[i].equals(attribute)) {
        return unescape(values[i]);
      }
    }
    return null;
  }

  boolean has(String attribute) {
    for (int i = 0; i < attributes; i++) {
      if (names[i].equals(attribute)) {
        return true;
      }
    }
    return false;
  }

  /** What a written value or text says. */
  static String unescape(String written) {
    return written.indexOf('&') < 0
        ? written
        : written
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&apos;", "'")
            .replace("&#10;", "\n")
            .replace("&#9;", "\t")
            .replace("&amp;", "&");
  }
}

package org.setpower.command;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.ucb.XSimpleFileAccess3;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.setpower.command.message.UserMessageException;

/** Files by their address, as the office reaches them. */
public final class FileStore {
  private final XSimpleFileAccess3 files;

  public FileStore(CommandContext desk) throws Exception {
    this(desk.service(XSimpleFileAccess3.class, "com.sun.star.ucb.SimpleFileAccess"));
  }

  FileStore(XSimpleFileAccess3 files) {
    this.files = files;
  }

  public XSimpleFileAccess3 access() {
    return files;
  }

  public boolean exists(String url) throws Exception {
    return files.exists(url);
  }

  /** A name beside a file, under which it is written before it takes its place. */
  public static String part(String url) {
    return url + "." + UUID.randomUUID() + ".part";
  }

  public byte[] read(String url) throws Exception {
    byte[][] bytes = new byte[1][];
    var stream = files.openFileRead(url);
    try {
      stream.readBytes(bytes, files.getSize(url));
    } finally {
      stream.closeInput();
    }
    return bytes[0];
  }

  /** Writes a file completely or leaves the old one. */
  public void write(String url, byte[] bytes) throws Exception {
    String part = part(url);
    try {
      var stream = files.openFileWrite(part);
      try {
        stream.writeBytes(bytes);
      } finally {
        stream.closeOutput();
      }
      files.move(part, url);
    } catch (Exception e) {
      throw unwritable(say("file"), e);
    } finally {
      remove(part);
    }
  }

  /**
   * Puts files in the place of others, all of them or none.
   *
   * @param places where each file goes, by where it is
   */
  public void moveAll(Map<String, String> places) throws Exception {
    Map<String, String> replaced = new LinkedHashMap<>();
    List<String> moved = new ArrayList<>();
    try {
      for (String place : places.values()) {
        if (files.exists(place)) {
          String aside = part(place);
          files.move(place, aside);
          replaced.put(aside, place);
        }
      }
      for (Map.Entry<String, String> move : places.entrySet()) {
        files.move(move.getKey(), move.getValue());
        moved.add(move.getValue());
      }
    } catch (Exception e) {
      for (String place : moved) {
        remove(place);
      }
      for (Map.Entry<String, String> back : replaced.entrySet()) {
        files.move(back.getKey(), back.getValue());
      }
      throw unwritable(say("file"), e);
    }
    for (String aside : replaced.keySet()) {
      remove(aside);
    }
  }

  /** The message for a file that cannot be written. */
  public static UserMessageException unwritable(String file, Throwable cause) {
    return new UserMessageException(
            "The {} could not be written. Is the folder there, may you write into it, is there"
                + " room? Nothing was changed.",
            file)
        .because(cause);
  }

  public void remove(String url) throws Exception {
    if (files.exists(url)) {
      files.kill(url);
    }
  }
}

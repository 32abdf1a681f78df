package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.ucb.XSimpleFileAccess3;
import com.sun.star.uno.Exception;
import java.util.UUID;

/** Files by their address, as the office reaches them. */
final class FileStore {
  private final XSimpleFileAccess3 files;

  FileStore(Desk desk) throws Exception {
    this(desk.service(XSimpleFileAccess3.class, "com.sun.star.ucb.SimpleFileAccess"));
  }

  FileStore(XSimpleFileAccess3 files) {
    this.files = files;
  }

  XSimpleFileAccess3 access() {
    return files;
  }

  boolean exists(String url) throws Exception {
    return files.exists(url);
  }

  /** A name beside a file, under which it is written before it takes its place. */
  static String part(String url) {
    return url + "." + UUID.randomUUID() + ".part";
  }

  byte[] read(String url) throws Exception {
    byte[][] bytes = new byte[1][];
    var stream = files.openFileRead(url);
    try {
      stream.readBytes(bytes, files.getSize(url));
    } finally {
      stream.closeInput();
    }
    return bytes[0];
  }

  /** Writes a file; whoever looks sees the old one or the new one, never half of it. */
  void write(String url, byte[] bytes) throws Exception {
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

  /** What a user is told when a file cannot be written. */
  static Sorry unwritable(String file, Exception cause) {
    return new Sorry(
            "The {} could not be written. Is the folder there, may you write into it, is there room?"
                + " Nothing was changed.",
            file)
        .because(cause);
  }

  void remove(String url) throws Exception {
    if (files.exists(url)) {
      files.kill(url);
    }
  }
}

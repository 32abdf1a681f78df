package org.setpower.command.newfile;

import com.sun.star.document.XDocumentProperties;
import com.sun.star.ucb.XSimpleFileAccess3;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.setpower.command.CommandContext;
import org.setpower.command.FileStore;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/** The sheets that ship with the extension. */
public final class ShippedTemplates {
  /**
   * One of them.
   *
   * @param title the name under which it is offered
   * @param purpose what it is for
   * @param isEmpty whether it is a template to fill, not an example
   */
  record Item(String title, String purpose, String url, boolean isEmpty) {}

  private final CommandContext desk;
  private final XSimpleFileAccess3 files;
  private final List<Item> items = new ArrayList<>();

  private ShippedTemplates(CommandContext desk) throws Exception {
    this.desk = desk;
    files = new FileStore(desk).access();
  }

  /** The templates, then the examples, by title. */
  static List<Item> of(CommandContext desk) throws Exception {
    return of(desk, CommandMessages.tag());
  }

  /** As {@link #of(CommandContext)}, with the templates in a language. */
  static List<Item> of(CommandContext desk, String tag) throws Exception {
    ShippedTemplates shelf = new ShippedTemplates(desk);
    shelf.collect(desk.shipped("templates/" + tag));
    if (shelf.items.isEmpty()) { // built without this language
      shelf.collect(desk.shipped("templates/" + MessageCatalog.ENGLISH));
    }
    shelf.collect(desk.shipped("examples"));
    shelf.items.sort(Comparator.comparing((Item i) -> !i.isEmpty()).thenComparing(Item::title));
    if (shelf.items.isEmpty()) {
      throw new UserMessageException(
          "This copy of the extension contains no templates: reinstall it.");
    }
    return shelf.items;
  }

  /** The address of the template with this file name; empty if it is not installed. */
  public static String template(CommandContext desk, String language, String file)
      throws Exception {
    return new ShippedTemplates(desk)
        .urls(desk.shipped("templates/" + language)).stream()
            .filter(u -> u.endsWith("/" + file))
            .findFirst()
            .orElse("");
  }

  private void collect(String folder) throws Exception {
    for (String url : urls(folder)) {
      if (url.endsWith(".ots") || url.endsWith(".ods")) {
        items.add(item(url));
      }
    }
  }

  /** Every file in a folder and the folders in it. */
  private List<String> urls(String folder) throws Exception {
    List<String> urls = new ArrayList<>();
    if (files.isFolder(folder)) {
      for (String url : files.getFolderContents(folder, true)) {
        if (files.isFolder(url)) {
          urls.addAll(urls(url));
        } else {
          urls.add(url);
        }
      }
    }
    return urls;
  }

  private Item item(String url) throws Exception {
    XDocumentProperties properties =
        desk.service(XDocumentProperties.class, "com.sun.star.document.DocumentProperties");
    String name = url.replaceFirst(".*/", "").replaceFirst("\\.\\w+$", "");
    boolean isEmpty = url.endsWith(".ots");
    try {
      properties.loadFromMedium(url, Uno.properties());
    } catch (Exception | com.sun.star.uno.RuntimeException damaged) {
      return new Item(name, "", url, isEmpty); // opening it shows the error
    }
    String title = properties.getTitle().isBlank() ? name : properties.getTitle();
    return new Item(title, properties.getDescription(), url, isEmpty);
  }
}

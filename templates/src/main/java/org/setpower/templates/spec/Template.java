package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A file with its tabs. */
public final class Template {
  private final String fileName;
  private final String title;
  private final int version;
  private final List<Tab> tabs = new ArrayList<>();
  private Formula stamp = Formula.of("");

  private Template(String fileName, String title, int version) {
    this.fileName = fileName;
    this.title = title;
    this.version = version;
  }

  /**
   * A template.
   *
   * @param fileName the file name without its ending
   * @param title the name shown where new files are chosen
   * @param version grows when cells move or change their meaning
   */
  public static Template of(String fileName, String title, int version) {
    return new Template(fileName, title, version);
  }

  /** A line below the title of every tab, that names the job and its revision. */
  public Template stamped(Formula line) {
    stamp = line;
    return this;
  }

  public Template with(Tab... added) {
    tabs.addAll(List.of(added));
    return this;
  }

  public String fileName() {
    return fileName;
  }

  public String title() {
    return title;
  }

  public int version() {
    return version;
  }

  public List<Tab> tabs() {
    return List.copyOf(tabs);
  }

  /** All tabs so far, and one that comes later. */
  public List<Tab> tabs(Tab later) {
    return Stream.concat(tabs.stream(), Stream.of(later)).toList();
  }

  public Formula stamp() {
    return stamp;
  }

  public Stream<Block> blocks() {
    return tabs.stream().flatMap(t -> t.blocks().stream());
  }

  /** All single cells. */
  public List<Field> fields() {
    return blocks()
        .filter(Fields.class::isInstance)
        .flatMap(b -> ((Fields) b).fields().stream())
        .toList();
  }

  /** All tables and array results. */
  public List<Rows> tables() {
    return blocks().filter(Rows.class::isInstance).map(Rows.class::cast).toList();
  }

  /** All headline figures. */
  public List<Figure> figures() {
    return blocks()
        .filter(Figures.class::isInstance)
        .flatMap(b -> ((Figures) b).figures().stream())
        .toList();
  }
}

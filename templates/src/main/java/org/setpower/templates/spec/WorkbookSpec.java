package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A file with its tabs. */
public final class WorkbookSpec {
  private final String fileName;
  private final String title;
  private final int version;
  private final List<SheetSpec> tabs = new ArrayList<>();
  private Formula stamp = Formula.of("");

  private WorkbookSpec(String fileName, String title, int version) {
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
  public static WorkbookSpec of(String fileName, String title, int version) {
    return new WorkbookSpec(fileName, title, version);
  }

  /** A line below the title of every tab, that names the job and its revision. */
  public WorkbookSpec stamped(Formula line) {
    stamp = line;
    return this;
  }

  public WorkbookSpec with(SheetSpec... added) {
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

  public List<SheetSpec> tabs() {
    return List.copyOf(tabs);
  }

  /** All tabs so far, and one that comes later. */
  public List<SheetSpec> tabs(SheetSpec later) {
    return Stream.concat(tabs.stream(), Stream.of(later)).toList();
  }

  public Formula stamp() {
    return stamp;
  }

  public Stream<Block> blocks() {
    return tabs.stream().flatMap(t -> t.blocks().stream());
  }

  /** All single cells. */
  public List<FieldSpec> fields() {
    return blocks()
        .filter(FieldBlock.class::isInstance)
        .flatMap(b -> ((FieldBlock) b).fields().stream())
        .toList();
  }

  /** All tables and array results. */
  public List<TableBase> tables() {
    return blocks().filter(TableBase.class::isInstance).map(TableBase.class::cast).toList();
  }

  /** All headline figures. */
  public List<KeyFigure> figures() {
    return blocks()
        .filter(KeyFigures.class::isInstance)
        .flatMap(b -> ((KeyFigures) b).figures().stream())
        .toList();
  }
}

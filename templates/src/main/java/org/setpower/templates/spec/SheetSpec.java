package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.List;

/** A tab of a file: title, one line that says what to do, then its blocks. */
public final class SheetSpec {
  private final String name;
  private final String lead;
  private final List<Block> blocks = new ArrayList<>();
  private final List<Block> pages = new ArrayList<>();
  private final List<Frames> frames = new ArrayList<>();
  private Block printsFrom;
  private String title;
  private int gridColumns;
  private int gridWidth;
  private boolean portrait;
  private boolean onePage;
  private boolean hidden;
  private int ink = CellStyle.Ink.NONE;

  private SheetSpec(String name, String lead) {
    this.name = name;
    this.title = name;
    this.lead = lead;
  }

  /** A tab; {@code lead} says in one line what it is for and what to fill first. */
  public static SheetSpec of(String name, String lead) {
    return new SheetSpec(name, lead);
  }

  /** A hidden tab for matrices and lists. */
  public static SheetSpec working(String name) {
    SheetSpec tab = new SheetSpec(name, "Working figures; nothing to fill here.");
    tab.hidden = true;
    return tab;
  }

  /** The result page: upright, half a page of figures first. */
  public static SheetSpec result(String lead) {
    SheetSpec tab = of("Result", lead).grid(12, 16).portrait();
    tab.ink = CellStyle.Ink.INK;
    return tab;
  }

  /** The last tab: how it is reckoned, what is left out, where the figures come from. */
  public static SheetSpec notes(Block... blocks) {
    return of("Notes", "What was assumed, what is left out, and where the figures come from.")
        .grid(12, 21)
        .with(blocks);
  }

  /** The title, where it is not the name. */
  public SheetSpec titled(String words) {
    title = words;
    return this;
  }

  /**
   * Equal columns, so that blocks of different make stand below each other; a column of a table
   * then takes as many of them as it needs.
   */
  public SheetSpec grid(int columns, int millimetresEach) {
    gridColumns = columns;
    gridWidth = millimetresEach;
    return this;
  }

  /** Printed upright. */
  public SheetSpec portrait() {
    portrait = true;
    return this;
  }

  /** Printed upright on one page, smaller where it must. */
  public SheetSpec onePage() {
    onePage = true;
    return portrait();
  }

  /** The tab to fill first: its tab is coloured. */
  public SheetSpec first() {
    ink = CellStyle.Ink.ACCENT;
    return this;
  }

  /** The result page: its tab is coloured. */
  public SheetSpec result() {
    ink = CellStyle.Ink.INK;
    return this;
  }

  /** Begins a new printed page with this block, which is added too. */
  public SheetSpec newPage(Block block) {
    pages.add(block);
    return with(block);
  }

  /**
   * Frames.
   *
   * @param across how many stand beside each other over the width of the tab
   * @param first the block at their top
   * @param last the block at their bottom
   */
  public record Frames(int across, Block first, Block last) {}

  /** Draws frames side by side around what stands from one block to another. */
  public SheetSpec framed(int across, Block first, Block last) {
    frames.add(new Frames(across, first, last));
    return this;
  }

  public List<Frames> frames() {
    return List.copyOf(frames);
  }

  /** What stands above this block is not printed. */
  public SheetSpec printsFrom(Block first) {
    printsFrom = first;
    return this;
  }

  public Block printsFrom() {
    return printsFrom;
  }

  public List<Block> pages() {
    return List.copyOf(pages);
  }

  /** Adds blocks. */
  public SheetSpec with(Block... added) {
    blocks.addAll(List.of(added));
    return this;
  }

  public String name() {
    return name;
  }

  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  public String title() {
    return title;
  }

  public String lead() {
    return lead;
  }

  public boolean isGrid() {
    return gridColumns > 0;
  }

  public int gridColumns() {
    return gridColumns;
  }

  public int gridWidth() {
    return gridWidth;
  }

  public boolean isPortrait() {
    return portrait;
  }

  public boolean isOnePage() {
    return onePage;
  }

  public boolean isHidden() {
    return hidden;
  }

  /** Whether it is a result page: title, the line below it and the job then head each page. */
  public boolean isResult() {
    return ink == CellStyle.Ink.INK;
  }

  public int ink() {
    return ink;
  }

  public List<TableBase> tables() {
    return blocks.stream().filter(TableBase.class::isInstance).map(TableBase.class::cast).toList();
  }
}

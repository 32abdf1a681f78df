package org.setpower.plan.lighting.diagram;

import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.diagram.Element.Line;
import org.setpower.plan.lighting.diagram.Element.Rect;
import org.setpower.plan.lighting.diagram.Element.Text;

/** What stands at the foot of every page: job, day, counts, colours of the cores, cautions. */
final class TitleBlock {
  private static final double POINTS = DiagramLayout.SMALLEST;
  private static final int PAD = 80;
  private static final int SWATCH = 260;
  private static final int COLOURS = 2700;
  private static final int COUNTS = 5400;
  private static final int ROOM_ABOVE = 150;

  /** Lines in which peaks of several sources stand. */
  private static final int PEAK_LINES = 2;

  private final DiagramPlan plan;
  private final DiagramTexts texts;
  private final String job;
  private final String revision;
  private final int width;
  private final List<CoreColour> cores;
  private final List<List<String>> cells;
  private final int height;

  TitleBlock(DiagramPlan plan, DiagramTexts texts, String job, String revision, int width) {
    this.plan = plan;
    this.texts = texts;
    this.job = job;
    this.revision = revision;
    this.width = width;
    cores = CoreColour.of(plan);
    cells = List.of(job(99, 99), counts(), cautions());
    int lines = Math.max(cores.size(), cells.stream().mapToInt(List::size).max().orElse(1));
    height = lines * line() + 2 * PAD;
  }

  private static int line() {
    return Font.height(POINTS);
  }

  /** Its height, with the room above it. */
  int height() {
    return height + ROOM_ABOVE;
  }

  private int share(int cell) {
    int rest = width - COLOURS - COUNTS;
    return switch (cell) {
      case 0 -> rest * 45 / 100;
      case 1 -> COUNTS;
      default -> rest - rest * 45 / 100;
    };
  }

  private List<String> wrapped(int cell, List<String> sentences) {
    List<String> lines = new ArrayList<>();
    for (String sentence : sentences) {
      boolean bold = cell == 0 && lines.isEmpty();
      lines.addAll(Font.wrap(sentence, POINTS, bold, share(cell) - 2 * PAD));
    }
    return lines;
  }

  private List<String> job(int page, int pages) {
    String version = revision.isBlank() ? "" : texts.say(DiagramWord.REVISION, revision);
    String name = DiagramTexts.fit(job, POINTS, share(0) - 2 * PAD);
    return wrapped(
        0,
        List.of(
                name.isBlank() ? texts.say(DiagramWord.TITLE) : name,
                DiagramTexts.join(
                    List.of(
                        name.isBlank() ? "" : texts.say(DiagramWord.TITLE),
                        DiagramTexts.fit(version, POINTS, share(0) / 3))),
                plan.day() == null
                    ? texts.say(DiagramWord.ALL_DAYS)
                    : texts.say(DiagramWord.DAY, texts.date(plan.day())),
                DiagramTexts.fit(peaks(), POINTS, PEAK_LINES * (share(0) - 2 * PAD)),
                texts.say(DiagramWord.PAGE, page, pages))
            .stream()
            .filter(l -> !l.isBlank())
            .toList());
  }

  /** When each source has its peak. */
  private String peaks() {
    List<String> peaks = new ArrayList<>();
    for (DiagramNode root : plan.roots()) {
      if (root.supply() != null && root.supply().isSource() && !root.supply().peakAt().isEmpty()) {
        String on = root.supply().peakOn() == null ? "" : texts.date(root.supply().peakOn()) + " ";
        peaks.add(root.name() + " " + on + root.supply().peakAt());
      }
    }
    return peaks.isEmpty() ? "" : texts.say(DiagramWord.PEAKS, String.join("; ", peaks));
  }

  private List<String> counts() {
    return wrapped(
        1,
        List.of(
            counted(DiagramWord.PLACES, plan.places()),
            counted(DiagramWord.RUNS, plan.runs()),
            counted(DiagramWord.LOADS, plan.loads()),
            texts.say(DiagramWord.UNMARKED)));
  }

  private String counted(DiagramWord word, java.util.Map<Verdict, Integer> counts) {
    return texts.say(
        word,
        counts.getOrDefault(Verdict.OK, 0),
        counts.getOrDefault(Verdict.CHECK, 0),
        counts.getOrDefault(Verdict.STOP, 0));
  }

  private List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    cautions.add(texts.say(DiagramWord.STOPS));
    if (plan.singles()) {
      cautions.add(texts.say(DiagramWord.SINGLES));
    }
    cautions.add(texts.say(DiagramWord.COMPETENT));
    if (!cores.isEmpty()) {
      cautions.add(texts.say(DiagramWord.COLOURS, cores.get(0).standard()));
    }
    return wrapped(2, cautions);
  }

  /** Draws it with its foot here. */
  void draw(int bottom, int page, int pages, List<Element> onto) {
    int top = bottom - height;
    onto.add(new Rect(0, top, width, height, Ink.SOFT, null));
    int x = 0;
    List<List<String>> shown = List.of(job(page, pages), cells.get(1), cells.get(2));
    for (int c = 0; c < shown.size(); c++) {
      int y = top + PAD;
      for (int i = 0; i < shown.get(c).size(); i++) {
        String words = shown.get(c).get(i);
        boolean bold = c == 0 && i == 0;
        Ink ink = c == 2 && i == 0 ? Ink.STOP : bold ? Ink.ACCENT : Ink.PLAIN;
        onto.add(text(words, x + PAD, y, bold, ink));
        y += line();
      }
      x += share(c);
      onto.add(new Line(x, top, x, bottom, Ink.SOFT, Symbols.THIN, false));
    }
    colours(x, top, onto);
  }

  private void colours(int x, int top, List<Element> onto) {
    int y = top + PAD;
    for (CoreColour core : cores) {
      int middle = y + line() / 2;
      onto.add(new Rect(x + PAD, middle - 70, SWATCH / 2, 140, null, core.ground()));
      onto.add(new Rect(x + PAD + SWATCH / 2, middle - 70, SWATCH / 2, 140, null, core.second()));
      onto.add(new Rect(x + PAD, middle - 70, SWATCH, 140, Ink.SOFT, null));
      String words = core.letter() + " " + texts.say(core.colour());
      int room = COLOURS - 3 * PAD - SWATCH;
      onto.add(
          text(DiagramTexts.fit(words, POINTS, room), x + 2 * PAD + SWATCH, y, false, Ink.PLAIN));
      y += line();
    }
  }

  private static Text text(String words, int x, int y, boolean bold, Ink ink) {
    int wide = Font.width(words, POINTS, bold);
    return new Text(x, y, wide, POINTS, bold, ink, words, null);
  }
}

package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.plural;
import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.transfer.BroughtRow;
import org.setpower.plan.transfer.BroughtTable;
import org.setpower.plan.transfer.ThreeWayMerge;
import org.setpower.plan.transfer.ThreeWayMerge.Merged;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.plan.transfer.TransferChange.Kind;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferTarget;
import org.setpower.plan.transfer.TransferWay;

/** One comparison of a document with a file, and what is written of it. */
final class BringIn {
  /** The name of the command, in the list of undo steps and of its windows. */
  static final String TITLE = "Bring in rows";

  private static final int NAMED = 5;

  private final CalcDocument book;
  private final String replaced;
  private final String file;
  private final String revision;
  private final TransferWay way;
  private final PlanFile target;
  private final SourceFile source;
  private final TransferSource read;
  private final TransferOptions options;
  private final ItemList items;
  private final List<BroughtTable> remembered;
  private final List<Part> parts = new ArrayList<>();
  private final List<Difference> differences = new ArrayList<>();
  private String head;

  /** A table, and what is done with it. */
  private record Part(TransferTarget target, TargetTable table, ThreeWayMerge merge) {}

  /**
   * Compares; nothing is written.
   *
   * @param replaced name of the file whose rows these are, as it was called last time
   */
  BringIn(PlanFile target, SourceFile source, TransferOptions options, String replaced)
      throws Exception {
    this.replaced = replaced;
    book = target.book();
    file = source.name();
    revision = source.revision();
    way = source.way(target);
    remembered = BroughtSheet.read(book);
    read = source.source();
    this.options = options;
    this.target = target;
    this.source = source;
    items = new ItemList(target, way);
    compare();
  }

  /** Names of another file that are none of the list of items. */
  List<String> unknown() {
    return items.items().isEmpty()
        ? List.of()
        : differences.stream()
            .filter(d -> d.change().kind() == Kind.UNKNOWN)
            .map(d -> d.change().name())
            .toList();
  }

  ItemList items() {
    return items;
  }

  /** Compares again, by the names that are known now. */
  void compare() throws Exception {
    parts.clear();
    differences.clear();
    List<String> withheld = new ArrayList<>();
    for (TransferBatch batch : way.batches(read, options.with(items::of))) {
      TargetTable table = new TargetTable(target, batch.target());
      List<BroughtRow> last = new ArrayList<>();
      Set<Integer> ofOthers = new HashSet<>();
      for (BroughtTable brought : remembered) {
        if (brought.isOf(way, replaced, batch.target())) {
          last.addAll(brought.rows());
        }
      }
      for (BroughtTable brought : remembered) {
        if (brought.target() == batch.target() && !brought.isOf(way, replaced, batch.target())) {
          ofOthers.addAll(
              new ThreeWayMerge(batch.target(), table.compared(ofOthers), brought.rows(), List.of())
                  .places());
        }
      }
      ThreeWayMerge merge =
          new ThreeWayMerge(batch.target(), table.compared(ofOthers), last, batch.rows());
      parts.add(new Part(batch.target(), table, merge));
      withheld.addAll(batch.withheld());
      for (TransferChange change : merge.changes()) {
        differences.add(Difference.of(change, table, merge.written(change.key())));
      }
    }
    head = source.head(read, withheld);
  }

  /** Files of a way that a document has brought in, the latest last. */
  static List<String> files(CalcDocument book, TransferWay way) throws Exception {
    Set<String> files = new LinkedHashSet<>();
    for (BroughtTable table : BroughtSheet.read(book)) {
      if (table.way() == way) {
        files.remove(table.file());
        files.add(table.file());
      }
    }
    return List.copyOf(files);
  }

  /** What is said of the source. */
  String head() {
    return head;
  }

  List<Difference> differences() {
    return List.copyOf(differences);
  }

  /** Whether there is something to decide or to know. */
  boolean hasDifferences() {
    return differences.stream().anyMatch(d -> d.change().isDifference());
  }

  /** Whether it is the first time: then also what does not differ is remembered. */
  private boolean isFirst() {
    return remembered.stream().noneMatch(t -> t.way() == way && t.file().equals(replaced));
  }

  /** Writes what is accepted, in one step, and says what was done. */
  String write(Set<TransferChange> accepted) throws Exception {
    List<Merged> merged = new ArrayList<>();
    int cells = 0;
    int added = 0;
    for (Part part : parts) {
      Set<TransferChange> own = new LinkedHashSet<>(part.merge().changes());
      own.retainAll(accepted);
      List<Integer> free = part.table().free(part.merge().added(own));
      Merged done = part.merge().merged(own, free);
      added += free.size();
      cells += (int) done.writes().stream().filter(w -> !free.contains(w.row())).count();
      merged.add(done);
    }
    boolean isNews = cells + added > 0 || isFirst() || hasDifferences() || items.hasSaid();
    if (isNews) {
      UndoStep.allOrNothing(
          book,
          TITLE,
          () ->
              UndoStep.withoutCalculation(
                  book,
                  TITLE,
                  () -> {
                    for (int i = 0; i < parts.size(); i++) {
                      parts.get(i).table().write(merged.get(i).writes());
                    }
                    items.write();
                    BroughtSheet.write(book, remembered(merged));
                  }));
    }
    return said(added, cells);
  }

  private List<BroughtTable> remembered(List<Merged> merged) {
    List<BroughtTable> tables = new ArrayList<>(remembered);
    tables.removeIf(t -> t.way() == way && t.file().equals(replaced));
    String today = LocalDate.now().toString();
    for (int i = 0; i < parts.size(); i++) {
      tables.add(
          new BroughtTable(
              way, file, revision, today, parts.get(i).target(), merged.get(i).brought()));
    }
    return tables;
  }

  private String said(int added, int cells) {
    List<String> lines = new ArrayList<>();
    lines.add(head);
    if (added + cells == 0) {
      lines.add(
          hasDifferences()
              ? say("No cell was changed.")
              : say("Nothing differs from it. No cell was changed."));
    } else {
      lines.add(
          plural("{} row added", "{} rows added", added)
              + ", "
              + plural("{} cell changed.", "{} cells changed.", cells));
    }
    named(lines, Kind.GONE, say("Not there any more, to be checked"));
    named(lines, Kind.UNKNOWN, say("Not on a list of this file"));
    return String.join("\n", lines);
  }

  private void named(List<String> lines, Kind kind, String what) {
    List<String> names =
        differences.stream()
            .filter(d -> d.change().kind() == kind)
            .map(d -> d.change().name())
            .toList();
    if (!names.isEmpty()) {
      lines.add(
          what
              + ": "
              + String.join("; ", names.subList(0, Math.min(NAMED, names.size())))
              + (names.size() > NAMED ? "; …" : "."));
    }
  }

  /** The target's plan; refuses one that nothing can be brought into. */
  static PlanFile target(CalcDocument book) throws Exception {
    PlanFile plan =
        PlanFile.of(book)
            .filter(p -> !TransferWay.into(p.model()).isEmpty())
            .orElseThrow(
                () ->
                    new UserMessageException(
                        "Nothing can be brought into this file. Open a rental quote, a power"
                            + " budget, a battery plan or a battery travel list of Set Power"
                            + " first."));
    if (!plan.isOfThisLayout()) {
      throw new UserMessageException(
          "This file has the layout of another version of Set Power. Use Set Power ▸ Update file…"
              + " first. Nothing was changed.");
    }
    return plan;
  }
}

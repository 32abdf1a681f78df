package org.setpower.templates.example;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.setpower.base.ReferenceTable;
import org.setpower.plan.budget.BudgetApproval;
import org.setpower.plan.budget.BudgetPlan;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.quote.QuotePlan;
import org.setpower.plan.transfer.TargetReader;
import org.setpower.plan.transfer.ThreeWayMerge;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferTarget;
import org.setpower.plan.transfer.TransferWay;

/** The tables of an example as its plan reads them, from the files of its folder. */
public final class ExampleTables {
  private static final String FOLDER = "/org/setpower/templates/example/";
  private static final double SECONDS_A_DAY = 86_400;

  /** Stands for what a line is planned to cost: its order, its approved budget. */
  private static final String PLANNED = "planned";

  /** Plans whose examples take figures from those of others. */
  private static final Set<PlanModel> LINKED = Set.of(QuotePlan.MODEL, BudgetPlan.MODEL);

  private static final Map<PlanModel, TransferSource> SOURCES = new ConcurrentHashMap<>();

  private final PlanModel model;
  private final Map<String, Map<String, String>> cells = new LinkedHashMap<>();

  public ExampleTables(PlanModel model) {
    this.model = model;
    for (CSVRecord line : read("cells")) {
      cells.put(line.get("cell"), line.toMap());
    }
  }

  /**
   * The lines of a table by column, with what the examples of other plans have for it: such a
   * figure stands in one file only. None where there is no file.
   */
  public List<Map<String, String>> lines(String table) {
    List<Map<String, String>> lines = new ArrayList<>();
    read(table).forEach(r -> lines.add(new LinkedHashMap<>(r.toMap())));
    if (LINKED.contains(model)) {
      Set<Integer> ofOthers = new HashSet<>();
      for (TransferWay way : TransferWay.into(model)) {
        ofOthers.addAll(link(way, table, lines, ofOthers));
      }
    }
    if (lines.stream().anyMatch(l -> l.containsValue(PLANNED))) {
      approve(table, lines);
    }
    return lines;
  }

  /** Writes what a line is planned to cost where its file says so, as Approve budget does. */
  private void approve(String table, List<Map<String, String>> lines) {
    for (BudgetApproval.Amount amount :
        BudgetPlan.approval(ranges(t -> t.key().equals(table) ? lines : lines(t.key())))
            .amounts()) {
      String planned = amount.planned().toPlainString();
      lines
          .get(amount.row() - 1)
          .replaceAll((column, text) -> PLANNED.equals(text) ? planned : text);
    }
  }

  /** What a plan's example takes from those of others, as a text; empty where it takes nothing. */
  public static String linked(PlanModel model) {
    ExampleTables tables = new ExampleTables(model);
    return LINKED.contains(model)
        ? model.inputs().stream().map(t -> tables.lines(t.key()).toString()).toList().toString()
        : "";
  }

  /** Fills blank cells as Bring in does; gives the rows that the source has filled. */
  private Set<Integer> link(
      TransferWay way, String table, List<Map<String, String>> lines, Set<Integer> ofOthers) {
    Set<Integer> places = new HashSet<>();
    List<TransferTarget> targets =
        Arrays.stream(TransferTarget.values()).filter(t -> t.table().equals(table)).toList();
    if (targets.isEmpty()) {
      return places;
    }
    List<Object> ranges = ranges(t -> t.key().equals(table) ? lines : plain(t));
    TransferSource source = source(way.from());
    for (TransferBatch batch : batches(way, source, ranges)) {
      if (targets.contains(batch.target())) {
        ThreeWayMerge merge =
            new ThreeWayMerge(
                batch.target(),
                new TargetReader(model, ranges, batch.target()).compared(Map.of(), ofOthers),
                List.of(),
                batch.rows());
        merge.changes().forEach(c -> refuse(way, c));
        Set<TransferChange> all = new LinkedHashSet<>(merge.changes());
        all.removeIf(c -> c.kind() == TransferChange.Kind.UNKNOWN);
        List<Integer> free = new ArrayList<>();
        for (int i = 0; i < merge.added(all); i++) {
          lines.add(new LinkedHashMap<>());
          free.add(lines.size());
        }
        for (ThreeWayMerge.Write write : merge.merged(all, free).writes()) {
          lines.get(write.row() - 1).put(write.column(), String.valueOf(write.value()));
        }
        places.addAll(merge.places());
      }
    }
    return places;
  }

  /** A plan of its example; it does not change and is asked for by each table of others. */
  private static TransferSource source(PlanModel from) {
    TransferSource source = SOURCES.get(from);
    if (source == null) {
      source = TransferSource.of(from, new ExampleTables(from).ranges());
      SOURCES.put(from, source);
    }
    return source;
  }

  /** What a source has for a plan, by the names of its items. */
  static List<TransferBatch> batches(TransferWay way, TransferSource source, List<Object> into) {
    TransferTarget target = way.batches(source, TransferOptions.USUAL).get(0).target();
    TargetReader reader = new TargetReader(way.into(), into, target);
    return way.batches(source, TransferOptions.USUAL.with(reader.items()::of));
  }

  private List<Map<String, String>> plain(InputTable<?> table) {
    return read(table.key()).stream().map(CSVRecord::toMap).toList();
  }

  /** A figure that stands in two files would be typed twice; counts alone come without a line. */
  private static void refuse(TransferWay way, TransferChange change) {
    boolean isCount = way == TransferWay.LIGHTING_TO_BUDGET;
    if (change.kind() == TransferChange.Kind.CONFLICT
        || change.kind() == TransferChange.Kind.ADDED && !isCount) {
      throw new IllegalStateException("the examples of " + way + " differ: " + change);
    }
  }

  private List<CSVRecord> read(String table) {
    String resource = FOLDER + model.name() + "/" + table + ".csv";
    try (InputStream in = ExampleTables.class.getResourceAsStream(resource)) {
      if (in == null) {
        return List.of();
      }
      try (CSVParser parser =
          ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        return parser.getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  /** The ranges in the order of the plan's tables. */
  public List<Object> ranges() {
    return ranges(t -> lines(t.key()));
  }

  private List<Object> ranges(Function<InputTable<?>, List<Map<String, String>>> lines) {
    List<Object> ranges = new ArrayList<>();
    for (InputTable<?> table : model.inputs()) {
      ranges.add(table.isUpright() ? upright(table) : rows(table, lines.apply(table)));
    }
    return ranges;
  }

  private Object[][] upright(InputTable<?> table) {
    List<InputColumn> columns = table.columns();
    Object[][] range = new Object[columns.size() + 1][2];
    for (int i = 0; i < columns.size(); i++) {
      InputColumn column = columns.get(i);
      Map<String, String> line =
          cells.getOrDefault(column.path(), cells.getOrDefault(column.key(), Map.of()));
      range[i] = new Object[] {column.key(), value(column, line.getOrDefault("value", ""))};
    }
    range[columns.size()] = new Object[] {InputTable.END, ""};
    return range;
  }

  /** Rows of a table as its plan reads them. */
  public static Object[][] rows(InputTable<?> table, List<Map<String, String>> lines) {
    List<InputColumn> columns = table.columns();
    Object[][] range = new Object[lines.size() + 2][columns.size()];
    for (int c = 0; c < columns.size(); c++) {
      range[0][c] = columns.get(c).key();
      for (int r = 0; r < lines.size(); r++) {
        range[r + 1][c] =
            value(columns.get(c), lines.get(r).getOrDefault(columns.get(c).key(), ""));
      }
      range[lines.size() + 1][c] = c == 0 ? InputTable.END : "";
    }
    return range;
  }

  private static Object value(InputColumn column, String text) {
    if (text.isEmpty() || text.equals(PLANNED)) {
      return "";
    }
    if (column.type() == LocalDate.class) {
      return InputColumn.serial(LocalDate.parse(text));
    }
    if (column.type() == LocalTime.class || text.matches("\\d\\d:\\d\\d")) {
      return LocalTime.parse(text).toSecondOfDay() / SECONDS_A_DAY;
    }
    return column.type() == Double.class ? (Object) Double.valueOf(text) : text;
  }
}

package org.setpower.command.bringin;

import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.ItemNames;
import org.setpower.plan.transfer.TargetReader;
import org.setpower.plan.transfer.TransferTarget;
import org.setpower.plan.transfer.TransferWay;
import org.setpower.uno.Uno;

/** The items of a price list, and what other files call them. */
final class ItemList {
  private final PlanFile plan;
  private final InputTable<?> table;
  private final List<ItemNames.Item> rows;
  private final ItemNames names;

  /** Names that the user has just said to be those of items, by name as it is compared. */
  private final Map<String, ItemNames.Item> said = new LinkedHashMap<>();

  /** The list of the file into which rows are brought; empty where rows need none. */
  ItemList(PlanFile plan, TransferWay way) throws Exception {
    this.plan = plan;
    boolean hasList = way.hasStock();
    TargetReader reader =
        hasList ? new TargetReader(plan.model(), plan.read(), TransferTarget.QUOTE_ITEMS) : null;
    table = hasList ? reader.known() : null;
    rows = hasList ? reader.listed() : List.of();
    names = new ItemNames(rows);
  }

  /** The items by name. */
  List<String> items() {
    return rows.stream().map(ItemNames.Item::name).filter(n -> n != null).toList();
  }

  /** The item that another file calls so; the name itself where it is none of the list. */
  String of(String name) {
    ItemNames.Item item = said.get(Identity.of(name));
    return item == null ? names.of(name) : item.name();
  }

  /** Remembers that another file calls an item so. */
  void say(String name, String item) {
    ItemNames.Item named =
        rows.stream()
            .filter(r -> Identity.of(r.name()).equals(Identity.of(item)))
            .findFirst()
            .orElseThrow(
                () ->
                    new UserMessageException(
                        "“{}” is not on {}. Nothing was changed.", item, heading()));
    said.put(Identity.of(name), new ItemNames.Item(named.name(), name));
  }

  boolean hasSaid() {
    return !said.isEmpty();
  }

  /** The list as its heading calls it. */
  String heading() {
    return table == null ? "" : Messages.in(CommandMessages.language()).text(table.heading());
  }

  /** Types the new names beside their items. */
  void write() throws Exception {
    for (ItemNames.Item named : said.values()) {
      for (int r = 0; r < rows.size(); r++) {
        if (named.name().equals(rows.get(r).name())) {
          XText cell =
              Uno.as(XText.class, plan.typed(table, TargetReader.ALSO).getCellByPosition(0, r));
          cell.setString(ItemNames.with(cell.getString(), named.also()));
          break;
        }
      }
    }
  }
}

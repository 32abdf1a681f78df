package org.setpower.command.menu;

import com.sun.star.beans.NamedValue;
import com.sun.star.lang.XComponent;
import com.sun.star.task.XJob;
import com.sun.star.task.XJobExecutor;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.setpower.command.Command;
import org.setpower.command.Desk;
import org.setpower.command.Order;
import org.setpower.command.csv.KitList;
import org.setpower.command.export.Copy;
import org.setpower.command.help.About;
import org.setpower.command.help.Handbook;
import org.setpower.command.issues.Look;
import org.setpower.command.message.Say;
import org.setpower.command.message.Sorry;
import org.setpower.command.newfile.NewSheet;
import org.setpower.command.print.FitPrint;
import org.setpower.command.repair.Mend;
import org.setpower.command.rows.AddRows;
import org.setpower.command.rows.RemoveRows;
import org.setpower.command.settings.ChangeSettings;
import org.setpower.command.trace.Explain;
import org.setpower.ui.Safely;
import org.setpower.uno.Service;
import org.setpower.uno.Uno;

/**
 * What menus, buttons and scripts call: {@code service:org.setpower.Commands?explain}. Scripts and
 * tests may also call {@link #execute} with the arguments {@code Command}, {@code Document} and the
 * options of a quiet order; it gives as text what a window would show, and throws what went wrong.
 */
public final class Commands extends Service implements XJobExecutor, XJob {
  private static final String SERVICE = "org.setpower.Commands";

  /** The commands by the name they have in the menu. */
  static final Map<String, Supplier<Command>> KNOWN =
      Map.ofEntries(
          Map.entry("explain", Explain::new),
          Map.entry("look", Look::new),
          Map.entry("copy", Copy::new),
          Map.entry("new", NewSheet::new),
          Map.entry("kit", KitList::new),
          Map.entry("add", AddRows::new),
          Map.entry("remove", RemoveRows::new),
          Map.entry("mend", Mend::new),
          Map.entry("fit", FitPrint::new),
          Map.entry("settings", ChangeSettings::new),
          Map.entry("handbook", Handbook::new),
          Map.entry("about", About::new));

  private final XComponentContext context;

  /** Created by the office. */
  public Commands(XComponentContext context) {
    super(SERVICE);
    this.context = context;
    Say.as(context);
  }

  /** The services this class answers for. */
  public static String[] services() {
    return new String[] {SERVICE};
  }

  @Override
  public void trigger(String words) {
    Desk nowhere = new Desk(context, null);
    Safely.run(
        nowhere,
        () -> {
          Order order = Order.of(words);
          Desk desk = Desk.inFront(context);
          if (order.isQuiet()) {
            command(order).quietly(desk, order);
          } else {
            command(order).openly(desk);
          }
        });
  }

  @Override
  public Object execute(NamedValue[] arguments) throws Exception {
    Map<String, Object> options = new LinkedHashMap<>();
    for (NamedValue argument : arguments) {
      options.put(argument.Name, argument.Value);
    }
    XComponent document = Uno.as(XComponent.class, options.get("Document"));
    Order order = new Order(String.valueOf(options.get("Command")), options);
    try {
      Desk desk = document == null ? Desk.inFront(context) : new Desk(context, document);
      return command(order).quietly(desk, order);
    } catch (Sorry sorry) {
      throw new com.sun.star.uno.RuntimeException(sorry.getMessage(), this);
    }
  }

  private static Command command(Order order) {
    Supplier<Command> known = KNOWN.get(order.command());
    if (known == null) {
      throw new Sorry("Set power knows no command “{}”.", order.command());
    }
    return known.get();
  }
}

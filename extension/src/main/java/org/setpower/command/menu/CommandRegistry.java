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
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.approve.ApproveBudgetCommand;
import org.setpower.command.bringin.BringInCommand;
import org.setpower.command.diagram.DrawDiagramCommand;
import org.setpower.command.distro.AddDistroCommand;
import org.setpower.command.export.ExportClientQuoteCommand;
import org.setpower.command.export.ExportValuesCommand;
import org.setpower.command.help.AboutCommand;
import org.setpower.command.help.HandbookCommand;
import org.setpower.command.inspect.MarkInspectedCommand;
import org.setpower.command.issues.ListIssuesCommand;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.newfile.NewFileCommand;
import org.setpower.command.print.FitPrintCommand;
import org.setpower.command.repair.RepairFormulasCommand;
import org.setpower.command.rows.AddRowsCommand;
import org.setpower.command.rows.RemoveRowsCommand;
import org.setpower.command.settings.SettingsCommand;
import org.setpower.command.tabs.ShowTabsCommand;
import org.setpower.command.trace.TraceCommand;
import org.setpower.command.update.UpdateFileCommand;
import org.setpower.ui.ErrorReporting;
import org.setpower.uno.Uno;
import org.setpower.uno.UnoService;

/**
 * What menus, buttons and scripts call: {@code service:org.setpower.Commands?explain}. Scripts and
 * tests may also call {@link #execute} with the arguments {@code Command}, {@code Document} and the
 * options of a request without a window; it returns the text that a window would show, and throws
 * errors.
 */
public final class CommandRegistry extends UnoService implements XJobExecutor, XJob {
  private static final String SERVICE = "org.setpower.Commands";

  /** The commands by the name they have in the menu. */
  static final Map<String, Supplier<Command>> KNOWN =
      Map.ofEntries(
          Map.entry("explain", TraceCommand::new),
          Map.entry("look", ListIssuesCommand::new),
          Map.entry("copy", ExportValuesCommand::new),
          Map.entry("client", ExportClientQuoteCommand::new),
          Map.entry("new", NewFileCommand::new),
          Map.entry("add", AddRowsCommand::new),
          Map.entry("remove", RemoveRowsCommand::new),
          Map.entry("mend", RepairFormulasCommand::new),
          Map.entry("inspect", MarkInspectedCommand::new),
          Map.entry("approve", ApproveBudgetCommand::new),
          Map.entry("bring", BringInCommand::new),
          Map.entry("update", UpdateFileCommand::new),
          Map.entry("fit", FitPrintCommand::new),
          Map.entry("diagram", DrawDiagramCommand::new),
          Map.entry("distro", AddDistroCommand::new),
          Map.entry("tabs", ShowTabsCommand::new),
          Map.entry("settings", SettingsCommand::new),
          Map.entry("handbook", HandbookCommand::new),
          Map.entry("about", AboutCommand::new));

  private final XComponentContext context;

  /** Created by the office. */
  public CommandRegistry(XComponentContext context) {
    super(SERVICE);
    this.context = context;
    CommandMessages.as(context);
  }

  /** The services this class answers for. */
  public static String[] services() {
    return new String[] {SERVICE};
  }

  @Override
  public void trigger(String words) {
    CommandContext nowhere = new CommandContext(context, null);
    ErrorReporting.run(
        nowhere,
        () -> {
          CommandRequest order = CommandRequest.of(words);
          CommandContext desk = CommandContext.inFront(context);
          if (order.isQuiet()) {
            command(order).runHeadless(desk, order);
          } else {
            command(order).runInteractive(desk);
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
    CommandRequest order = new CommandRequest(String.valueOf(options.get("Command")), options);
    try {
      CommandContext desk =
          document == null
              ? CommandContext.inFront(context)
              : new CommandContext(context, document);
      return command(order).runHeadless(desk, order);
    } catch (UserMessageException sorry) {
      throw new com.sun.star.uno.RuntimeException(sorry.getMessage(), this);
    }
  }

  private static Command command(CommandRequest order) {
    Supplier<Command> known = KNOWN.get(order.command());
    if (known == null) {
      throw new UserMessageException("Set Power knows no command “{}”.", order.command());
    }
    return known.get();
  }
}

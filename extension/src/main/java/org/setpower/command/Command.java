package org.setpower.command;

import com.sun.star.uno.Exception;

/** One entry of the menu. */
public interface Command {
  /** With windows: asks what it needs to know and shows what came of it. */
  void runInteractive(CommandContext desk) throws Exception;

  /** Whether menus and toolbars offer it now; its entry in Addons.xcu calls org.setpower:name. */
  default boolean isEnabled(CommandContext desk) throws Exception {
    return true;
  }

  /** Without a window: everything is in the order; gives what would have been shown. */
  String runHeadless(CommandContext desk, CommandRequest order) throws Exception;
}

package org.setpower.command;

import com.sun.star.uno.Exception;

/** One entry of the menu. */
public interface Command {
  /** With windows: asks for what it needs and shows the result. */
  void runInteractive(CommandContext desk) throws Exception;

  /** Whether menus and toolbars offer it now; its entry in Addons.xcu calls org.setpower:name. */
  default boolean isEnabled(CommandContext desk) throws Exception {
    return true;
  }

  /** Without a window: takes everything from the request; returns what would have been shown. */
  String runHeadless(CommandContext desk, CommandRequest order) throws Exception;
}

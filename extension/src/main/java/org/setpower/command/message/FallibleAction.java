package org.setpower.command.message;

import com.sun.star.uno.Exception;

/** Something that may fail. */
@FunctionalInterface
public interface FallibleAction {
  void run() throws Exception;
}

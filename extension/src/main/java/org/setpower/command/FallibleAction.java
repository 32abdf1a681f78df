package org.setpower.command;

import com.sun.star.uno.Exception;

/** Something that may fail. */
@FunctionalInterface
interface FallibleAction {
  void run() throws Exception;
}

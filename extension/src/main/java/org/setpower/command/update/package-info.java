/** A filled file of an older version, brought to the layout of this one. */
package org.setpower.command.update;

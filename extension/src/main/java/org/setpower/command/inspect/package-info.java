/** Marks batteries of a register as inspected. */
package org.setpower.command.inspect;

/** Approves the budget of a power budget as it is planned. */
package org.setpower.command.approve;

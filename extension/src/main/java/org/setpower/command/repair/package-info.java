/** Restores the formulas of the template where they differ. */
package org.setpower.command.repair;

/** Puts the formulas of the template back where they differ. */
package org.setpower.command.repair;

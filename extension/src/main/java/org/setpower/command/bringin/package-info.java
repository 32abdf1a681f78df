/** Brings rows of another file in: what differs is shown and decided, then typed in one step. */
package org.setpower.command.bringin;

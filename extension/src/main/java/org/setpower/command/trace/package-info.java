/** How the number in a cell was calculated. */
package org.setpower.command.trace;

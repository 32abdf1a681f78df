/** Adds a distro with its outlets and its cable run to a lighting power plan. */
package org.setpower.command.distro;

/** The single-line diagram of a lighting power plan, drawn with shapes of the office. */
package org.setpower.command.diagram;

/** The handbook and what this extension is. */
package org.setpower.command.help;

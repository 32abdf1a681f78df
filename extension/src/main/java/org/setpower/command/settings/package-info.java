/** What the user wants in every new file. */
package org.setpower.command.settings;

/** What menus, toolbars and scripts call: the commands by name, and whether each is enabled. */
package org.setpower.command.menu;

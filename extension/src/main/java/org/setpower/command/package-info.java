/**
 * The commands of the menu "Set power": show a calculation, list open issues, export values-only
 * copies, new files, equipment lists, the user guide, settings. They use the registry and write
 * into documents; no physics, law or money is calculated here.
 */
package org.setpower.command;

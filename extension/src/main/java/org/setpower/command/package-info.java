/**
 * The commands of the menu "Set Power": how a number came about, open issues, copies without
 * formulas, new sheets, the kit list, the handbook, settings. They ask the catalogue and write into
 * documents; no physics, law or money is worked out here.
 */
package org.setpower.command;

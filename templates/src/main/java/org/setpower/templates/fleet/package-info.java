/** The fleet register of a rental house: its packs, their tests, what to do with them. */
package org.setpower.templates.fleet;

/** The lighting power plan: supplies, loads, runs of cable and packs of a gaffer's days. */
package org.setpower.templates.lighting;

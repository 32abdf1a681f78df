/**
 * What every room needs: refusals with their reasons, steps of a working, text with units, tables
 * of facts. Imports no room.
 */
package org.setpower.base;

/** Adds and removes rows of a table. */
package org.setpower.command.rows;

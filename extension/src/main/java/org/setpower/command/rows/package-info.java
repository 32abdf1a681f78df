/** Inserts and deletes rows of a table. */
package org.setpower.command.rows;

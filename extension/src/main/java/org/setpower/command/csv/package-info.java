/** Lists of equipment, to and from CSV. */
package org.setpower.command.csv;

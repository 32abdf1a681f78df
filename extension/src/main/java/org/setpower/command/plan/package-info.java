/** Documents that a plan's function calculates: their tables, figures and headings. */
package org.setpower.command.plan;

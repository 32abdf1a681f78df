/** Who carries what: an integer programme that knows pieces, limits and loads, but no rule. */
package org.setpower.plan.travel.packing;

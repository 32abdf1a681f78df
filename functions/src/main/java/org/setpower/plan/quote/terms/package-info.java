/** Words by which a rental house says how it charges: what is typed into the cells of its terms. */
package org.setpower.plan.quote.terms;

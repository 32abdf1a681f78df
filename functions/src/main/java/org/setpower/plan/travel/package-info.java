/**
 * The model of the battery travel list: who carries what on which flight, what goes by freight or
 * road, and papers that state only what was written or ticked.
 */
package org.setpower.plan.travel;

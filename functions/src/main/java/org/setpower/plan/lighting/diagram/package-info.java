/**
 * The single-line diagram: what it shows of a plan, and where each line and word stands on its
 * pages. Lengths are in 1/100 mm, from the upper left corner of a page.
 */
package org.setpower.plan.lighting.diagram;

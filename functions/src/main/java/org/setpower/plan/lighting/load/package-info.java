/** What is plugged in, when it is on, and what flows through each place of the distribution. */
package org.setpower.plan.lighting.load;

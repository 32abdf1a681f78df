/** Lights on batteries: days run by the model of the battery plan. */
package org.setpower.plan.lighting.battery;

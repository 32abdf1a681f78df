/** Whether breakers, RCDs and cables protect: ratings as laid, overload, earth faults, voltage. */
package org.setpower.plan.lighting.protection;

/** What a lighting power plan hands out: order list, load balance, diagram. */
package org.setpower.plan.lighting.paper;

/** Words of the results of a battery day. */
package org.setpower.plan.batteryday.word;

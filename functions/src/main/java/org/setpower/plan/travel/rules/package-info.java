/**
 * What the rules of carriage say of batteries on a day: by air with their owner, as freight, by
 * road.
 */
package org.setpower.plan.travel.rules;

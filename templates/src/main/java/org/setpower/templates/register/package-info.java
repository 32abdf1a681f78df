/** The battery register of a rental house: its batteries, their tests, what to do with them. */
package org.setpower.templates.register;

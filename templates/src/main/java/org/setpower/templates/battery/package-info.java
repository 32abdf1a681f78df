/** Template 2: a battery day of camera, sound and video. */
package org.setpower.templates.battery;

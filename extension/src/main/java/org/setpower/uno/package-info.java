/** Short calls into the office. */
package org.setpower.uno;

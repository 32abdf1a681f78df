/** What users read, in their language, and the exceptions that carry it. */
package org.setpower.command.message;

/** Windows: forms, messages, progress, texts. */
package org.setpower.ui;

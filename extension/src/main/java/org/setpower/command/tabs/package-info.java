/** Tabs of a document that are hidden because few people need them. */
package org.setpower.command.tabs;

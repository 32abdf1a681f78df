package org.setpower.templates.spec;

import org.setpower.text.MessageCatalog;

/**
 * Where a formula stands.
 *
 * @param layout the addresses
 * @param rows the table it stands in; {@code null} outside of tables
 * @param row its row on the tab
 * @param inName whether it stands in a name, which means the same wherever it is used
 */
public record CellContext(Addresses layout, TableBase rows, int row, boolean inName) {
  MessageCatalog words() {
    return layout.words();
  }
}

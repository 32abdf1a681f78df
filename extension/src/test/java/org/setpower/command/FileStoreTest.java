package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.io.IOException;
import com.sun.star.io.XOutputStream;
import com.sun.star.ucb.XSimpleFileAccess3;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.command.message.UserMessageException;

/** A file that cannot be written to its end; a real full disk is in TroubleIT. */
class FileStoreTest {
  private final List<String> calls = new ArrayList<>();

  private <T> T fake(Class<T> type, Object opened) {
    return type.cast(
        Proxy.newProxyInstance(
            FileStoreTest.class.getClassLoader(),
            new Class<?>[] {type},
            (proxy, method, arguments) -> {
              calls.add(method.getName());
              return switch (method.getName()) {
                case "writeBytes" -> throw new IOException("no room");
                case "openFileWrite" -> opened;
                case "exists" -> true;
                default -> null;
              };
            }));
  }

  @Test
  void a_stream_that_cannot_be_written_is_closed_before_its_file_is_removed() {
    XOutputStream stream = fake(XOutputStream.class, null);
    FileStore store = new FileStore(fake(XSimpleFileAccess3.class, stream));
    assertThatThrownBy(() -> store.write("file:///list.csv", new byte[10]))
        .isInstanceOf(UserMessageException.class)
        .hasMessageContaining("could not be written");
    assertThat(calls)
        .containsExactly("openFileWrite", "writeBytes", "closeOutput", "exists", "kill");
  }
}

package org.setpower.generator;

/**
 * What stands around every HTML page of the handbook: its one style and the way to the other pages.
 * A page is one file, without script and without anything loaded from elsewhere.
 */
record PageTemplate(String style, String version) {
  /**
   * @param up the way from the page's folder to the handbook's, "" or "../"
   * @param after what stands below the text
   */
  String page(String up, HandbookPage page, String after) {
    return """
    <!DOCTYPE html>
    <html lang="en">
    <head>
    <meta charset="utf-8"/>
    <meta name="viewport" content="width=device-width"/>
    <title>%s</title>
    <style>
    %s</style>
    </head>
    <body>
    <nav><b>Set Power Sheets %s</b>
    <a href="%5$sindex.html">Contents</a>
    <a href="%5$sfunctions/index.html">Functions</a>
    <a href="%5$swords.html">Words A–Z</a>
    <a href="%5$sall.html">All on one page</a></nav>
    %4$s%6$s</body>
    </html>
    """
        .formatted(escaped(page.title()), style, version, page.body(), up, after);
  }

  static String escaped(String plain) {
    return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  static String link(String address, String plain) {
    return "<a href=\"" + address + "\">" + escaped(plain) + "</a>";
  }
}

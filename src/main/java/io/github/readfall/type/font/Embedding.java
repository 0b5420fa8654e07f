package io.github.readfall.type.font;

/**
 * The permission of a font file to be embedded in a document: the {@code fsType} field of its OS/2
 * table (OpenType specification, "OS/2"). It is advice to programs; the licence decides.
 *
 * @param permission the level
 * @param subsetting true if a subset of the letters may be embedded
 * @param outlines true if outlines, and not only bitmaps, may be embedded
 */
public record Embedding(Permission permission, boolean subsetting, boolean outlines) {

  /** Levels, from the freest. */
  public enum Permission {
    INSTALLABLE,
    EDITABLE,
    PREVIEW_AND_PRINT,
    RESTRICTED
  }

  private static final int RESTRICTED_BIT = 0x0002;
  private static final int PREVIEW_BIT = 0x0004;
  private static final int EDITABLE_BIT = 0x0008;
  private static final int NO_SUBSETTING_BIT = 0x0100;
  private static final int BITMAP_ONLY_BIT = 0x0200;

  /**
   * Reads the field. If an old font sets several levels, the least restrictive counts (OpenType
   * specification, OS/2 versions 0 to 2).
   */
  public static Embedding of(int fsType) {
    return new Embedding(
        permission(fsType), (fsType & NO_SUBSETTING_BIT) == 0, (fsType & BITMAP_ONLY_BIT) == 0);
  }

  private static Permission permission(int fsType) {
    if ((fsType & EDITABLE_BIT) != 0) {
      return Permission.EDITABLE;
    }
    if ((fsType & PREVIEW_BIT) != 0) {
      return Permission.PREVIEW_AND_PRINT;
    }
    return (fsType & RESTRICTED_BIT) != 0 ? Permission.RESTRICTED : Permission.INSTALLABLE;
  }

  /** Returns true if a document may carry the outlines at all. */
  public boolean isAllowed() {
    return permission != Permission.RESTRICTED && outlines;
  }
}

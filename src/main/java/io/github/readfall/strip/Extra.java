package io.github.readfall.strip;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keys of layout.json that this version does not know, kept to be written back.
 *
 * @param jsonByKey the value of each key as JSON text, in the order of the file
 */
public record Extra(Map<String, String> jsonByKey) {

  public static final Extra NONE = new Extra(Map.of());

  public Extra {
    jsonByKey = Collections.unmodifiableMap(new LinkedHashMap<>(jsonByKey));
  }
}

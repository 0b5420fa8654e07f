package io.github.readfall.strip;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keys of layout.json that this version does not know, kept to be written back.
 *
 * @param jsonByKey the value of each key as JSON text, in the order of the file
 * @param within unknown keys inside the value of a known one, by that one's name
 */
public record Extra(Map<String, String> jsonByKey, Map<String, Extra> within) {

  public static final Extra NONE = new Extra(Map.of());

  public Extra {
    jsonByKey = Collections.unmodifiableMap(new LinkedHashMap<>(jsonByKey));
    within = Collections.unmodifiableMap(new LinkedHashMap<>(within));
  }

  public Extra(Map<String, String> jsonByKey) {
    this(jsonByKey, Map.of());
  }

  /** The unknown keys inside the value of a known one. */
  public Extra in(String key) {
    return within.getOrDefault(key, NONE);
  }

  public boolean isEmpty() {
    return jsonByKey.isEmpty() && within.isEmpty();
  }
}

package kitwright.document;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.util.Iterator;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Gives templates the entries of maps and nothing else. The library's own collector calls any
 * method of whatever it meets, so that a template could delete a file.
 */
final class MapsOnly implements Mustache.Collector {
  @Override
  public @Nullable Iterator<?> toIterator(Object value) {
    return null;
  }

  @Override
  public Mustache.@Nullable VariableFetcher createFetcher(Object context, String name) {
    return context instanceof Map<?, ?> ? MapsOnly::entry : null;
  }

  @Override
  public <K, V> Map<K, V> createFetcherCache() {
    return new ConcurrentHashMap<>();
  }

  private static @Nullable Object entry(Object context, String name) {
    var map = (Map<?, ?>) context;
    return map.containsKey(name) ? map.get(name) : Template.NO_FETCHER_FOUND;
  }
}

package org.hoopwright.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What can be said of one of the two things that are compared. Confined to one thread. */
final class Facts {

  /** What a fact is about. */
  record Key(Topic topic, String about) {}

  /**
   * A fact.
   *
   * @param value its value
   * @param lead how its clause begins, whatever the value
   * @param rest how its clause goes on
   * @param absent the clause where there is no such fact
   */
  record Fact(String value, String lead, String rest, String absent) {}

  private final Map<Key, Fact> facts = new LinkedHashMap<>();

  /** Adds a fact that every such thing has; its clause is {@code lead rest}. */
  Facts add(Topic topic, String about, Object value, String lead, Object rest) {
    return add(topic, about, value, lead, rest, "it is not so");
  }

  /** Adds a fact that such a thing may lack; then {@code absent} is said. */
  Facts add(Topic topic, String about, Object value, String lead, Object rest, String absent) {
    facts.put(new Key(topic, about), new Fact(value.toString(), lead, rest.toString(), absent));
    return this;
  }

  Map<Key, Fact> all() {
    return facts;
  }

  Optional<Fact> get(Key key) {
    return Optional.ofNullable(facts.get(key));
  }
}

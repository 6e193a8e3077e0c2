/**
 * What was made of a value, kept as long as the value itself is: for sums that many ask for alike. The value must never
 * change, and what is made of it must hang on it alone.
 */
export function rememberBy<K extends object, V>(make: (value: K) => V): (value: K) => V {
  const made = new WeakMap<K, { readonly of: V }>()
  return value => {
    const known = made.get(value)
    if (known) return known.of
    const of = make(value)
    made.set(value, { of })
    return of
  }
}

/** The same for a value and a name. */
export function rememberByName<K extends object, N, V>(make: (value: K, name: N) => V): (value: K, name: N) => V {
  const named = rememberBy((_: K) => new Map<N, V>())
  return (value, name) => {
    const made = named(value)
    const known = made.get(name)
    if (known !== undefined) return known
    const of = make(value, name)
    made.set(name, of)
    return of
  }
}

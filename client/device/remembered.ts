/** Small choices that this phone keeps for itself; losing one does no harm. */
export type RememberedName = 'look' | 'draft' | 'own-code' | `whose-${string}` | `aims-${string}` | `group-${string}`

const keyOf = (name: RememberedName): string => `six-threes.${name}`

/** What was kept, or null; also where the browser keeps nothing. */
export function remembered(name: RememberedName): string | null {
  try {
    return localStorage.getItem(keyOf(name))
  } catch {
    return null
  }
}

/** Keeps it, or forgets it with null. */
export function remember(name: RememberedName, value: string | null): void {
  try {
    if (value === null) localStorage.removeItem(keyOf(name))
    else localStorage.setItem(keyOf(name), value)
  } catch {
    // A browser that keeps nothing asks again next time.
  }
}

/** Forgets every choice whose name begins so. */
export function forgetAll(beginning: 'aims-'): void {
  try {
    const names = Array.from({ length: localStorage.length }, (_, place) => localStorage.key(place) ?? '')
    for (const name of names) if (name.startsWith(keyOf(beginning))) localStorage.removeItem(name)
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}

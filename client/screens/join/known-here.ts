import { outingStore } from '../../state/outing-store.ts'

/** True for a player's own name, and on a phone that only watches: nothing is left to ask. */
export function isKnownHere(label: string): boolean {
  const { outing, me } = outingStore.getState()
  if (!outing || me?.role === 'viewer') return true
  return [...outing.players.values()].some(({ name }) => name === label)
}

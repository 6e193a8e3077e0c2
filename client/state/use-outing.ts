import { useStore } from 'zustand'
import { type OutingStore, outingStore } from './outing-store.ts'

/** Reads from the open outing. A selector returns a primitive or a reference that the store holds. */
export const useOuting = <T>(selector: (outing: OutingStore) => T): T => useStore(outingStore, selector)

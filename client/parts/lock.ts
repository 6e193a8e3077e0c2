import { createStore } from 'zustand/vanilla'

/** True while the page takes no touch but the two corners that open it. */
export const lockStore = createStore<boolean>(() => false)

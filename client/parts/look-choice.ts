import { remember, remembered } from '../device/remembered.ts'

export type Look = 'day' | 'night'

const isLook = (value: string | null): value is Look => value === 'day' || value === 'night'

/** What is shown now: the choice made on this phone, else what the phone itself prefers. */
export function currentLook(): Look {
  const chosen = document.documentElement.dataset.look ?? null
  if (isLook(chosen)) return chosen
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'day'
}

export function chooseLook(look: Look): void {
  document.documentElement.dataset.look = look
  remember('look', look)
}

/** Puts the look back that was chosen on this phone. */
export function restoreLook(): void {
  const look = remembered('look')
  if (isLook(look)) document.documentElement.dataset.look = look
}
